// Two batches or two setups compared, in numbers and codes. The window, the command line and the
// report show this and compute nothing themselves. The texts are made last, from these
// (side_by_side_text.h). The comments name the units.
#pragma once

#include "core/analysis/comparison.h"
#include "core/analysis/distribution.h"
#include "core/analysis/judgement.h"
#include "core/analysis/same_weather.h"
#include "core/analysis/total_cost.h"
#include "core/model/equipment.h"
#include "core/model/weighing.h"
#include "core/results/comparison/batch_figures.h"
#include "core/results/comparison/side_by_side_text.h"
#include "core/results/comparison/side_glance.h"
#include "core/store/logbook_file.h"

#include <optional>
#include <string>
#include <vector>

namespace holdband::results {

/// What to compare, and how.
struct SideBySideRequest {
    std::string a; ///< two batches, or two setups
    std::string b;
    /// For setups: the ended batches to use; if none of a setup's is named, all of them are used.
    std::vector<std::string> only;
    std::optional<std::string> fromStage; ///< for batches: align from that stage, not from pitching
    char decimalSign = '.';
    std::optional<Weighing> weighing; ///< absent: the weights stored in the logbook
};

/// The start of the compared time.
struct Alignment {
    std::optional<std::string> stage; ///< absent: pitching
    std::vector<std::string> offered; ///< labels of stages that both have, in A's order
    double commonHours = 0.0;         ///< elapsed time from there that is metered in both
};

/// Deviation from target over elapsed time, of two batches.
struct DeviationLine {
    analysis::Track track; ///< K; ms from the alignment's start, which may lie after pitching
    std::vector<std::pair<double, double>> settling; ///< ms, from … to: not judged
};

struct DeviationCharts {
    std::optional<DeviationLine> a; ///< for batches only
    std::optional<DeviationLine> b;
    std::optional<analysis::Distribution> spreadA; ///< K, covered hold time; common edges
    std::optional<analysis::Distribution> spreadB;
    double toleranceA = 0.0; ///< K, the widest of the side
    double toleranceB = 0.0;
    std::optional<double> crashA; ///< hours from the alignment's start
    std::optional<double> crashB;
};

/// Energy that a setup used while no batch ran on it.
struct IdleFigures {
    std::string setup;
    double hours = 0.0;                   ///< without a batch, between its first and last reading
    double meteredHours = 0.0;            ///< of these
    std::optional<analysis::Bounded> kwh; ///< of the metered part; absent where there is none
    std::optional<double> meanWatts;      ///< W
    bool metered = false;                 ///< any register of it was read twice
};

/// One side of the same-weather model.
struct SideModel {
    analysis::LiftModel model; ///< its cautions say why it decides nothing
    std::optional<analysis::AtReference> atReference;
    bool hasMeter = true;   ///< there are register readings
    bool hasAmbient = true; ///< there are readings of the room
};

struct SameWeather {
    std::optional<analysis::ReferenceHold> hold; ///< absent where no lift is known
    bool liftIsMean = true;                      ///< not chosen by the user: the mean of both
    bool hoursAreMean = true;
    bool any = false; ///< both sides have a line and there is a reference
    SideModel a;
    SideModel b;
    std::optional<analysis::Ahead> ahead;        ///< absent where a model decides nothing
    std::optional<analysis::Bounded> difference; ///< W, A − B
    std::optional<analysis::Bounded> ratio;
};

/// How a batch's energy is priced.
enum class CostBasis {
    logbookPrices,
    otherPrice,  ///< the user's second price, for all of it
    sameWeather, ///< the reference hold in the same weather, at the mean price that both paid
};

/// Total cost over batches at one price of energy.
struct CostScenario {
    CostBasis basis = CostBasis::logbookPrices;
    std::optional<double> pricePerKwh; ///< absent where it is not one price
    analysis::SideCost a;
    analysis::SideCost b;
    analysis::Crossing crossing;
};

/// Amounts are in the logbook's currency.
struct Money {
    std::optional<double> partsA; ///< sums of the parts lists
    std::optional<double> partsB;
    /// The logbook's price, the user's second price, and the same hold in the same weather if that
    /// decides; each only if it is available.
    std::vector<CostScenario> scenarios;
    int lastBatch = 0;               ///< the last batch in the chart
    std::vector<int> batchesInTable; ///< after how many batches a table shows the totals
    std::optional<double> batchesPerYear;
    /// If the price changes over the day: the mean price that each side paid for a kWh.
    std::optional<double> meanPriceA;
    std::optional<double> meanPriceB;
};

/// What energy is scored by. Its cost is scored by the same, so that they don't contradict each
/// other.
enum class EnergyBasis {
    asUsed,
    perDegreeDay, ///< of lift
    sameWeather   ///< the power drawn in the same weather
};

/// The figure that a measured criterion is scored from.
struct ScoredFigure {
    analysis::Measure measure;
    EnergyBasis basis = EnergyBasis::asUsed;
};

struct Criterion {
    std::string name; ///< the name under which the weights are stored: "temperature", "noise"
    std::optional<ScoredFigure> figure; ///< absent: rated by the user
    bool own = false;                   ///< added by the user
    double weight = 1.0;
    std::optional<double> ratedA; ///< 1 to 5
    std::optional<double> ratedB;
    std::optional<analysis::Scores> scores;

    bool measured() const { return figure.has_value(); }
};

struct Judgement {
    std::vector<Criterion> criteria;
    analysis::JudgedSheet sheet; ///< `turns` has one for each criterion
};

struct SideBySide {
    LogbookSettings settings;
    Weighing weighing;
    std::string a;
    std::string b;
    std::string setupA; ///< the setup itself, or the batch's
    std::string setupB;
    bool ofSetups = false;
    bool hasMeterA = true; ///< the record has a source for its energy
    bool hasMeterB = true;
    std::vector<analysis::Measure> measures;
    std::vector<analysis::FairnessNote> notes;
    Alignment alignment;
    std::vector<analysis::RatioPoint> ratioCurve; ///< for two batches, from the alignment's start
    std::vector<std::string> batchesA;            ///< the compared batches
    std::vector<std::string> batchesB;
    std::vector<std::string> offeredA; ///< for setups: the ended batches that may be ticked
    std::vector<std::string> offeredB;
    std::vector<MeasureBatches> batchFigures; ///< for setups, one for each measure
    DeviationCharts deviations;
    std::vector<IdleFigures> idle; ///< for setups: A's and B's
    SameWeather weather;
    Money money;
    Judgement judgement;
    Work work;
    std::vector<EnergyCurve> energyA; ///< for setups: of each metered batch
    std::vector<EnergyCurve> energyB;
    SideBySideText text; ///< in the user's language and the logbook's units
    PairGlance glance;   ///< in the user's language and the logbook's units
};

class ComparisonCache;

/// Two batches, or two setups over their ended batches. A name that is both is taken as a batch.
/// Problem (data): an unknown name (with suggestions), a batch against a setup, the same name
/// twice, a setup without a finished batch, a stage that is not common to both, a chosen batch that
/// is on neither setup or not ended.
Result<SideBySide> reviewSideBySide(const store::LogbookFile& logbook,
                                    const SideBySideRequest& request,
                                    ComparisonCache* cache = nullptr);

inline Result<SideBySide> reviewSideBySide(const store::LogbookFile& logbook, const std::string& a,
                                           const std::string& b)
{
    SideBySideRequest request;
    request.a = a;
    request.b = b;
    return reviewSideBySide(logbook, request);
}

} // namespace holdband::results
