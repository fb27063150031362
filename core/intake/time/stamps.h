// The times in a log's cells. Layouts: ISO 8601 / RFC 3339 (T or space, seconds and fractions
// optional, offset optional, also without separators), day.month.year and month/day/year in any
// order with - / or . and 2 or 4 digits of year, English month names, AM and PM, Unix time in
// seconds, milliseconds, microseconds or nanoseconds. The order of day and month is not decided
// here: see date_order.h. Two-digit years are 20yy.
#pragma once

#include "core/intake/log/log.h"

#include <array>
#include <cstdint>
#include <optional>
#include <string_view>
#include <tl/expected.hpp>

namespace holdband {

/// A date of three numbers whose order isn't known yet, and the time of day.
struct LooseTime {
    int first = 0;
    int second = 0;
    int third = 0;
    bool shortYear = false;   ///< two digits of year: it may come first or last
    bool yearMayLead = false; ///< of a short year: the first number has two digits
    std::int32_t msOfDay = 0;
    std::optional<Milliseconds> offset = {}; ///< local minus UTC, if the cell says it

    bool operator==(const LooseTime&) const = default;
};

enum class StampKind : std::uint8_t {
    instant, ///< value: milliseconds since 1970 UTC
    local,   ///< value: milliseconds since 1970 of the wall clock
    loose,   ///< value: packed()
};

struct Stamp {
    StampKind kind = StampKind::instant;
    std::int64_t value = 0;

    bool operator==(const Stamp&) const = default;
};

std::int64_t packed(const LooseTime& time);
LooseTime unpacked(std::int64_t value);

/// The wall-clock time with the numbers in this order; absent if that is no date of 1990 … 2100.
std::optional<LocalTime> inOrder(const LooseTime& time, DateOrder order);

/// The time with the numbers in this order: an instant if it has an offset, else local. Absent as
/// for inOrder.
std::optional<Stamp> stampInOrder(const LooseTime& time, DateOrder order);

inline constexpr std::array<DateOrder, 3> allDateOrders{
    DateOrder::yearMonthDay, DateOrder::monthDayYear, DateOrder::dayMonthYear};

/// The full text (ignoring white space at its ends) as one time, or the reason why it is none, in
/// English, for Phrase::tr: "is not a time". Years outside 1990 … 2100 are refused.
tl::expected<Stamp, const char*> scanStamp(std::string_view text);

/// A cell split up: a time, and the zone behind it ("America/Denver", "EST"); empty where there is
/// none. Offsets, Z, UTC and GMT stay with the time, which scanStamp reads.
struct ZonedText {
    std::string_view stamp;
    std::string_view zone;
};
ZonedText zonedText(std::string_view text);

/// Whether the text has a date and a time of day, even if of an impossible year or day.
bool looksLikeTime(std::string_view text);

/// Whether the text is a date alone, or a time of day alone: two columns together are a time.
bool isDateAlone(std::string_view text);
bool isClockAlone(std::string_view text);

} // namespace holdband
