// Two batches or two setups compared: figures from the analysis, and the words for them. The
// window, the command line and the report show this and compute nothing themselves. All texts are
// in the logbook's units; plain numbers are SI as their comments say, for charts.
#pragma once

#include "core/analysis/comparison.h"
#include "core/analysis/distribution.h"
#include "core/analysis/judgement.h"
#include "core/analysis/same_weather.h"
#include "core/analysis/total_cost.h"
#include "core/model/equipment.h"
#include "core/model/weighing.h"
#include "core/store/logbook_file.h"

#include <optional>
#include <string>
#include <vector>

namespace holdband::results {

/// What to compare, and how.
struct SideBySideRequest {
    std::string a; ///< two batches, or two setups
    std::string b;
    /// Of setups: the ended batches to take; a setup of which none is named takes all of its own.
    std::vector<std::string> only;
    std::optional<std::string> fromStage; ///< of batches: align from that stage, not from pitching
    char decimalSign = '.';
    std::optional<Weighing> weighing; ///< absent: what the logbook keeps
};

struct NoteWords {
    std::string note;    ///< "the room was 2.9 °F warmer for A"
    std::string effect;  ///< "A had more heat to move, so its energy says less against it"
    std::string measure; ///< the name of the measure it touches
    std::string title;   ///< that measure as the table calls it
};

/// One line of the table, ready to be shown.
struct MeasureWords {
    std::string title; ///< "Energy, kWh"
    std::string a;
    std::string b;
    std::string difference;
    std::string ratio;   ///< "2.30 (2.21 – 2.39)"
    std::string ahead;   ///< "A", "B", "too close to call", or empty
    std::string remark;  ///< why nobody is ahead, or what was cut off the bounds; may be empty
    double factor = 1.0; ///< from the measure's own unit to the one that the title names
};

/// Where the comparison starts to count.
struct Alignment {
    std::optional<std::string> stage; ///< absent: pitching
    std::string words;                ///< "pitching", "the start of Crash"
    std::vector<std::string> offered; ///< labels of stages that both have, in A's order
    double commonHours = 0.0;         ///< elapsed time from there that is metered in both
    std::string scope; ///< of batches, a sentence: which figures are over which time; may be empty
};

/// One batch's figure of one measure, for the dots.
struct BatchFigure {
    std::string batch;
    double value = 0.0; ///< in the measure's own unit
    std::string text;   ///< as the table writes it
};

/// The mean of several batches as it was computed, before anything impossible was cut off.
struct SetupFigures {
    std::vector<BatchFigure> batches; ///< those that have the measure, in order of pitching
    std::optional<double> mean;
    std::optional<double> low; ///< 95 %, Student t; from three batches on
    std::optional<double> high;
    bool cut =
        false; ///< the shown bounds are narrower: below 0 (or above all of it) nothing can be
};

/// Of setups, one for each measure.
struct MeasureBatches {
    SetupFigures a;
    SetupFigures b;
};

/// Deviation from target over elapsed time, of two batches.
struct DeviationLine {
    analysis::Track track; ///< K; ms from the alignment's start, which may lie after pitching
    std::vector<std::pair<double, double>> settling; ///< ms, from … to: not judged
};

struct DeviationCharts {
    std::optional<DeviationLine> a; ///< of batches only
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
    std::optional<double> meanWatts;
    std::string sentence;
};

/// One side of the same-weather model.
struct ModelWords {
    std::string side;
    analysis::LiftModel model;
    std::optional<analysis::AtReference> atReference;
    std::vector<std::string> figures; ///< "34 times between readings; 12 W and 5.1 W for each °F …"
    std::vector<std::string> cautions; ///< a sentence each; where there is one, it decides nothing
    std::vector<std::string> remarks;  ///< what else is to be known, a sentence each
};

struct SameWeather {
    analysis::ReferenceHold hold;
    bool liftIsMean = true; ///< nobody chose it: the mean of both
    bool hoursAreMean = true;
    bool any = false; ///< both sides have a line and there is a reference
    ModelWords a;
    ModelWords b;
    std::optional<analysis::Ahead> ahead;        ///< absent where a model decides nothing
    std::optional<analysis::Bounded> difference; ///< W, A − B
    std::optional<analysis::Bounded> ratio;
    std::string sentence;
    std::string holdWords;            ///< "7 days with the room 9 °F warmer than the beer (…)"
    std::string energySentence;       ///< the reference hold's kWh of both
    std::vector<std::string> remarks; ///< of both: that successive pairs are not independent
};

/// Total cost over batches at one price of energy.
struct CostScenario {
    std::string name; ///< of the energy of a batch: "at $0.30 for a kWh"
    analysis::SideCost a;
    analysis::SideCost b;
    analysis::Crossing crossing;
    std::string perBatchA; ///< "$1.73 (1.65 – 1.80)"
    std::string perBatchB;
    std::string sentence;
    std::string yearSentence; ///< what the batches of a year cost; may be empty
};

struct MoneyWords {
    std::optional<double> partsA; ///< sums of the parts lists
    std::optional<double> partsB;
    std::string partsTextA; ///< "$412.00", or "no parts listed"
    std::string partsTextB;
    /// The logbook's price, the user's second price, and the same hold in the same weather where
    /// that decides; each only where it can be had.
    std::vector<CostScenario> scenarios;
    int lastBatch = 0; ///< how far the chart goes
    std::optional<double> batchesPerYear;
    std::string timeOfUse; ///< what time of use does to the cost; empty with a flat price
    std::string why;       ///< where there is no scenario: what is missing
};

struct CriterionWords {
    std::string name;  ///< as the weights are kept under: "temperature", "noise"
    std::string title; ///< "Temperature"
    bool measured = false;
    bool own = false; ///< added by the user
    double weight = 1.0;
    std::optional<analysis::Scores> scores;
    std::string textA; ///< "4.2", "–"
    std::string textB;
    std::string how;  ///< how the scores came about
    std::string turn; ///< what this criterion does to the lead; may be empty
};

struct JudgementWords {
    std::vector<CriterionWords> criteria;
    analysis::JudgedSheet sheet;      ///< turns: one for each criterion
    std::string rule;                 ///< how measured criteria are scored
    std::string sentence;             ///< "Cabinet leads 4.0 to 3.1."
    std::vector<std::string> turning; ///< a sentence each; one says so where nothing turns it
};

struct SideBySide {
    LogbookSettings settings;
    Weighing weighing;
    std::string a;
    std::string b;
    std::string setupA; ///< the setup itself, or the batch's
    std::string setupB;
    bool ofSetups = false;
    /// The answer, which every surface begins with: of two setups that the same weather decides
    /// between, that; else what was used.
    std::string headline;
    std::string belowHeadline; ///< the temperature, and what the headline leaves out
    std::string temperatureSentence;
    std::string energySentence;
    std::vector<analysis::Measure> measures;
    std::vector<MeasureWords> lines; ///< one for each measure
    std::vector<NoteWords> notes;
    Alignment alignment;
    std::vector<analysis::RatioPoint> ratioCurve; ///< of two batches, from the alignment's start
    std::vector<std::string> batchesA;            ///< what went in
    std::vector<std::string> batchesB;
    std::vector<std::string> offeredA; ///< of setups: the ended batches that may be ticked
    std::vector<std::string> offeredB;
    std::vector<MeasureBatches> batchFigures; ///< of setups, one for each measure
    DeviationCharts deviations;
    std::vector<IdleFigures> idle; ///< of setups: A's and B's
    SameWeather weather;
    MoneyWords money;
    JudgementWords judgement;
};

/// For people, in their language: a usual criterion's name; another one as it was written.
std::string criterionWord(const std::string& name);

class ComparisonCache;

/// Two batches, or two setups over their ended batches. A name that is both is taken as a batch.
/// Problem (data): an unknown name (near ones listed), a batch against a setup, the same twice, a
/// setup without a finished batch, a stage that is not common to both, a batch to take that is on
/// neither setup or not ended.
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
