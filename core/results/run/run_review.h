// Everything that is shown about one batch, computed once: the command line, the window and the
// report show this and compute nothing themselves.
#pragma once

#include "core/analysis/run.h"
#include "core/model/equipment.h"
#include "core/model/readings.h"
#include "core/results/run/arrival.h"
#include "core/results/run/daily_energy.h"
#include "core/results/run/energy_curve.h"
#include "core/results/run/verdict_text.h"
#include "core/store/logbook_file.h"
#include "core/store/records/causes.h"
#include "core/text/zone.h"

#include <optional>
#include <string>
#include <vector>

namespace holdband::results {

/// A further sensor of the setup, for the chart only.
struct SideSeries {
    std::string sensor;
    SensorKind reads = SensorKind::chamber;
    Series series; ///< °C
    Milliseconds gapLimit{0};
};

struct RunReview {
    LogbookSettings settings;
    char decimalSign = '.'; ///< of the texts
    Zone zone;
    Setup setup;
    int setupIndex = 0; ///< among the logbook's setups; decides its colour
    Sensor beerSensor;
    analysis::RunInput input;
    analysis::RunFigures figures;
    VerdictText words;
    std::optional<ArrivalReview> arrival; ///< of an open batch on its way to a new target
    std::vector<EnergyPoint> energyCurve;
    EnergyRange energyRange;
    std::optional<DailyEnergy> dailyEnergy; ///< absent without a day that was metered whole
    std::vector<SideSeries> sides;          ///< chamber and coolant of the same setup
    std::vector<JournalNote> journal;       ///< of the batch, in order of time
    std::vector<store::StoredCause> causes; ///< of excursions; causes.h matches them
    std::vector<std::string> findings;      ///< sentences about odd data
    std::vector<std::string> cautions;      ///< for the kind of setup

    const Batch& batch() const { return input.batch; }
    bool open() const { return !input.batch.ended; }
};

/// "8 Mar 02:00"; in a run that lasts most of a year or longer, with the year.
std::string timeInRun(const RunReview& review, Instant at);
/// The final gravity given when the batch ended, else the last one measured.
std::optional<Gravity> latestGravity(const RunReview& review);

/// Whether the series of chamber and coolant are read, which are only drawn.
enum class SideCurves { read, leave };

/// Problem (data): no batch of that name (the message has suggestions).
Result<RunReview> reviewRun(const store::LogbookFile& logbook, const std::string& batch,
                            char decimalSign = '.', SideCurves sides = SideCurves::read);

} // namespace holdband::results
