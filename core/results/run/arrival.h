// When the beer of an open batch will reach the band of a new target: the crash or warm-up in
// progress, the past ones of its setup, and what section 8.3 of the method in DEVELOPERS.md makes
// of them. Numbers and codes; arrival_text.h has the words.
#pragma once

#include "core/analysis/arrival_forecast.h"
#include "core/analysis/run.h"
#include "core/store/logbook_file.h"

#include <optional>
#include <string>

namespace holdband::results {

struct Snapshot;

struct ArrivalReview {
    std::size_t stage = 0; ///< index of the judged stage
    std::string label;     ///< of that stage
    analysis::Turned turned = analysis::Turned::down;
    bool crash = false;     ///< the batch's crash (crashStage), not just a lower target
    Temperature target;     ///< of the stage
    Temperature edge;       ///< of its band, where the beer will come in
    Instant turnedAt;       ///< the stage's start
    Instant now;            ///< of the last reading, from which the forecast counts
    Temperature beer;       ///< at that reading
    bool shared = false;    ///< another batch ran on the setup meanwhile
    bool logSilent = false; ///< the last reading is older than the gap limit
    analysis::ArrivalForecast forecast;
    std::optional<Instant> middle;
    std::optional<Instant> low;  ///< of the 90 % interval
    std::optional<Instant> high; ///< of the 90 % interval
    std::string sentence;        ///< "Cold in about 6 h, at about 02:40 (23:50 – 05:10)."
    std::string datedSentence;   ///< the same for paper: with dates, and the last reading
};

/// Absent for a batch that has ended, and where the stage in progress has no new target or the beer
/// came into its band. The sentences are left empty. `figures` are the input's. Reads the readings
/// of the setup's past crashes, or warm-ups, and nothing else.
Result<std::optional<ArrivalReview>> arrivalOf(const store::LogbookFile& logbook,
                                               const Snapshot& snapshot,
                                               const analysis::RunInput& input,
                                               const analysis::RunFigures& figures);

} // namespace holdband::results
