// The past crashes, or warm-ups, of a setup, as a forecast compares them with the one in progress.
// Not for use outside core/results.
#pragma once

#include "core/analysis/arrival_forecast.h"
#include "core/analysis/target.h"
#include "core/quantity/series.h"
#include "core/results/snapshot.h"

#include <optional>
#include <vector>

namespace holdband::results {

/// The readings from the turning on, up to the first hole that is too long to be bridged: longer
/// than the gap limit and than two hours.
std::vector<analysis::TemperatureAt> fallOf(const Series& beer, Span span, Milliseconds gapLimit);

/// Whether another batch ran on the setup of this one in that time.
bool wasShared(const Snapshot& snapshot, const Batch& batch, Span span);

/// The batch's litres, if known.
std::optional<double> litresOf(const Batch& batch);

/// Every time that another batch on this one's setup was turned the same way. Reads their beer from
/// the turning on, two weeks at most.
Result<std::vector<analysis::CrashRecord>> pastFalls(const store::LogbookFile& logbook,
                                                     const Snapshot& snapshot, const Batch& batch,
                                                     analysis::Turned turned);

} // namespace holdband::results
