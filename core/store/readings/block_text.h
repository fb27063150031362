// The text of a block of readings: JSON that any tool can read, and that gives back every bit. Not
// for use outside core/store.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace holdband::store {

/// Readings of one import and sensor, in order of time.
struct BlockText {
    std::int64_t firstAt = 0; ///< ms since 1970
    /// From each reading to the next, in ms; absent if they are not equally far apart.
    std::optional<std::int64_t> step;
    /// "[20.1,20.2]", or without a step "[[0,20.1],[60000,20.2]]" with the ms after `firstAt`.
    std::string json;
};

/// `ms` and `values`: of one length, not empty; finite values.
BlockText blockText(const std::vector<std::int64_t>& ms, const std::vector<double>& values);

/// Appends the readings. False if the text is no such array: it is damaged.
bool readBlockText(std::int64_t firstAt, std::optional<std::int64_t> step, std::string_view json,
                   std::vector<std::int64_t>& ms, std::vector<double>& values);

} // namespace holdband::store
