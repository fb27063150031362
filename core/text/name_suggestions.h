// Help for an unknown name: suggests similar ones. Text is UTF-8.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace holdband {

/// Trims white space, turns runs of it inside into one space, and folds case: two texts that fold
/// to the same are the same name to a person.
std::string folded(std::string_view text);

/// The known name that is meant: the same one, else the only one that folds to the same. Absent if
/// there is none.
std::optional<std::string> meantName(std::string_view wanted,
                                     const std::vector<std::string>& known);

/// The known names most similar to the wanted one, best first, at most `most`: those that differ by
/// case or by few typing slips (insert, drop, change, swap: at most a third of the letters), or
/// that contain it.
std::vector<std::string> suggestedNames(std::string_view wanted,
                                        const std::vector<std::string>& known,
                                        std::size_t most = 3);

/// "A", "A or B", "A or B or C".
std::string alternatives(const std::vector<std::string>& names);

/// "A, B, C"; past `most` names "A, B and 7 more".
std::string joined(const std::vector<std::string>& names, std::size_t most = 20);

/// All of them: "A", "A and B", "A, B and C".
std::string listed(const std::vector<std::string>& names);

/// For a message: "did you mean A, B?"; where none is similar "there are: A, B"; where there are no
/// known names "there are none".
std::string suggestion(std::string_view wanted, const std::vector<std::string>& known);

} // namespace holdband
