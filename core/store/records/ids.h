// Row ids of the store: one type per table, so that a sensor's id can't be used as a meter's.
#pragma once

#include <compare>
#include <cstdint>

namespace holdband::store {

template <typename Table>
struct RowId {
    std::int64_t value = 0;
    auto operator<=>(const RowId&) const = default;
};

using HistoryEntryId = RowId<struct HistoryEntryTable>;
using SetupId = RowId<struct SetupTable>;
using SensorId = RowId<struct SensorTable>;
using MeterId = RowId<struct MeterTable>;
using BatchId = RowId<struct BatchTable>;
using ImportId = RowId<struct ImportTable>;
using MeterReadingId = RowId<struct MeterReadingTable>;
using HandReadingId = RowId<struct HandReadingTable>;
using ExclusionId = RowId<struct ExclusionTable>;
using CauseId = RowId<struct CauseTable>;
using NoteId = RowId<struct NoteTable>;

} // namespace holdband::store
