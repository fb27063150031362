// The names in the rows of a long log.
#pragma once

#include "core/intake/log/read_column.h"

#include <cstddef>
#include <functional>
#include <map>
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <vector>

namespace holdband {

/// Finds the column for each row of a long log.
class NamedRows {
public:
    /// `nameColumn`: in the header.
    NamedRows(std::size_t nameColumn, const std::vector<ReadColumn>& columns);

    std::size_t column() const { return m_column; }
    /// The index of the column for that name; absent: not wanted.
    std::optional<std::size_t> which(std::string_view name);
    std::vector<std::string> ignored() const { return {m_ignored.begin(), m_ignored.end()}; }

private:
    static constexpr std::size_t mostIgnored = 200;

    std::size_t m_column;
    std::map<std::string, std::size_t, std::less<>> m_known; ///< by folded name
    std::string m_lastName;
    std::optional<std::size_t> m_last;
    bool m_any = false;
    std::set<std::string, std::less<>> m_ignored;
};

} // namespace holdband
