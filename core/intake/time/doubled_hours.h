// Converts the rows' local times to instants. Where clocks went back, an hour's local times exist
// twice; the order of the rows shows which one is meant, or else the user is asked.
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
    /// Rows whose local time doesn't exist; their value is not set.
    std::vector<MissingTime> missing;
    std::size_t doubled = 0; ///< rows inside a doubled hour
};

/// Turns every local value into an instant. The rows show which of the two is meant if the log's
/// times otherwise only rise (or only fall) and step back (or up) exactly once inside the doubled
/// hour; in an hourly log, two equal times in a row show it. Problem (data, place: a line): they
/// don't show it.
Result<RowsResolved> resolveRows(RowTimes& rows, const Zone& zone);

} // namespace holdband
