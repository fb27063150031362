// The rows' local times as instants. Where clocks went back, an hour's local times exist twice;
// which one a row means is settled by the order of the rows if they show it, and else asked.
#pragma once

#include "core/intake/time/stamps.h"
#include "core/problem.h"
#include "core/text/zone.h"

#include <cstdint>
#include <vector>

namespace holdband {

/// The rows' times in the file's order; the three have the same length.
struct RowTimes {
    std::vector<std::int64_t> value; ///< by kind: instants or local milliseconds since 1970
    std::vector<StampKind> kind;     ///< instant or local
    std::vector<std::uint32_t> line;
};

struct MissingTime {
    std::size_t row = 0;
    LocalTime wall;

    bool operator==(const MissingTime&) const = default;
};

struct RowsResolved {
    std::vector<MissingTime> missing; ///< rows whose local time doesn't exist; their value is open
    std::size_t doubled = 0;          ///< rows inside a doubled hour
};

/// Turns every local value into an instant. Rows show which of two is meant if the log's times
/// otherwise only rise (or only fall) and step back (or up) exactly once inside the doubled hour;
/// of an hourly log, two equal times in a row do. Problem (data, place: a line): they don't.
Result<RowsResolved> resolveRows(RowTimes& rows, const Zone& zone);

} // namespace holdband
