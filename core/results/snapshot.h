// Everything in a logbook except the bulk readings, read at once, so that reviews need not query
// the store again; and the input of the analysis for one batch. Not for use outside core/results.
#pragma once

#include "core/analysis/run.h"
#include "core/model/batch.h"
#include "core/model/equipment.h"
#include "core/store/logbook_file.h"
#include "core/store/readings/meter_readings.h"
#include "core/store/readings/readings.h"
#include "core/store/records/exclusions.h"
#include "core/text/zone.h"

#include <map>
#include <string>
#include <vector>

namespace holdband::results {

/// How long the energy of an open batch continues after the last reading of its beer.
inline constexpr Milliseconds openBatchMetered = std::chrono::hours(48);

struct Snapshot {
    LogbookSettings settings;
    char decimalSign = '.'; ///< of the texts made from it
    Zone zone;
    std::vector<Setup> setups;
    std::vector<Sensor> sensors;
    std::vector<Meter> meters;
    std::vector<Batch> batches;
    std::vector<store::Exclusion> exclusions;
    std::map<std::string, std::vector<store::StoredReading>> meterReadings; ///< by meter

    /// Pitched to ended; for an open batch to the last reading of its beer, or to the last of a
    /// meter of its setup where that is later, at most openBatchMetered later.
    std::map<std::string, Span> batchSpans;
    std::map<std::string, Instant> beerKnownTo; ///< of open batches; pitching where nothing is

    const Setup* setup(const std::string& name) const;
    /// Its place among the setups; it must be one of them.
    int indexOfSetup(const std::string& name) const;
    const Sensor* sensor(const std::string& name) const;
    const Batch* batch(const std::string& name) const;
};

Result<Snapshot> readSnapshot(const store::LogbookFile& logbook);

/// A sensor's series over the span, with offsets added and exclusions removed, with its gap limit:
/// the batch's own, or by default from its readings inside the span.
struct JudgedSeries {
    Series series;
    Milliseconds gapLimit{0};
};
Result<JudgedSeries> judgedSeries(const store::LogbookFile& logbook, const Snapshot& snapshot,
                                  const Sensor& sensor, Span span,
                                  const std::optional<Milliseconds>& ownGapLimit);

/// The batch's beer in a part of its time, °C, from all the sensors that read it, with offsets
/// added and exclusions removed; only the readings inside the span, its ends included.
Result<Series> beerInside(const store::LogbookFile& logbook, const Snapshot& snapshot,
                          const Batch& batch, Span span);

/// The input for judging one batch: its beer, plan and span. Energy, weather and money are absent.
Result<analysis::RunInput> judgingInputFor(const store::LogbookFile& logbook,
                                           const Snapshot& snapshot, const Batch& batch);

/// The batch's hydrometer readings with corrections, in order of time.
Result<std::vector<analysis::GravityReading>> gravitiesOf(const store::LogbookFile& logbook,
                                                          const Batch& batch);

/// The setup's energy: its meters with all their readings, or, without a meter, its logs of power
/// and of interval energy over the span.
Result<analysis::SetupEnergy> setupEnergyOf(const store::LogbookFile& logbook,
                                            const Snapshot& snapshot, const Setup& setup,
                                            Span span);

/// Adds the batches of its setup and the setup's energy to the batch's input; its span must be set.
Done addEnergyInput(const store::LogbookFile& logbook, const Snapshot& snapshot, const Batch& batch,
                    analysis::RunInput& input);

/// The complete input of the analysis.
Result<analysis::RunInput> runInputFor(const store::LogbookFile& logbook, const Snapshot& snapshot,
                                       const Batch& batch);

} // namespace holdband::results
