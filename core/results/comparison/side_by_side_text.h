// The texts of a comparison, in the logbook's units and with the reader's decimal sign. Window,
// reports and command line show them unchanged.
#pragma once

#include "core/analysis/comparison.h"
#include "core/model/equipment.h"

#include <string>
#include <string_view>
#include <vector>

namespace holdband::results {

/// One line of the table of measures.
struct MeasureText {
    std::string title; ///< "Energy, kWh"
    std::string a;
    std::string b;
    std::string difference;     ///< "6.51 (6.32 – 6.70)"
    std::string differenceOnly; ///< without the bounds: "6.51"
    std::string ratio;          ///< "2.30 (2.21 – 2.39)"
    std::string ahead;          ///< "A", "B", "too close to call", or empty
    std::string remark;         ///< why nobody is ahead, or how the bounds were cut; may be empty
    std::vector<std::string> batchesA; ///< each batch's figure, as in SideBySide::batchFigures
    std::vector<std::string> batchesB;
    double factor = 1.0; ///< from the measure's own unit to the one that the title names
};

struct NoteText {
    std::string note;   ///< "the room was 2.9 °F warmer for A"
    std::string effect; ///< "A had more heat to move, so its energy says less against it"
    std::string title;  ///< the title of the measure that it affects
};

struct SideModelText {
    std::vector<std::string> figures; ///< "34 times between readings; 12 W and 5.1 W for each °F …"
    std::vector<std::string> cautions; ///< sentences; with any of them the model decides nothing
    std::vector<std::string> remarks;  ///< sentences
};

struct SameWeatherText {
    SideModelText a;
    SideModelText b;
    std::string sentence;
    std::string hold; ///< "7 days with the room 9 °F warmer than the beer (…)"; may be empty
    std::string energySentence;       ///< the reference hold's kWh of both; empty if unknown
    std::vector<std::string> remarks; ///< for both: why the ranges are by batch
};

struct CostScenarioText {
    std::string name;      ///< the price of a batch's energy: "at $0.30 for a kWh"
    std::string perBatchA; ///< "$1.73 (1.65 – 1.80)"
    std::string perBatchB;
    std::string sentence;
    std::string yearSentence; ///< the cost of a year's batches; may be empty
};

struct MoneyText {
    std::string partsA; ///< "$412.00", or "no parts listed"
    std::string partsB;
    std::vector<CostScenarioText> scenarios;
    std::string timeOfUse; ///< how time-of-use prices affect the cost; empty with a flat price
    std::string why;       ///< what is missing if there is no scenario
};

struct CriterionText {
    std::string title; ///< "Temperature"
    std::string a;     ///< "4.2", "–"
    std::string b;
    std::string how;  ///< how the scores were computed
    std::string turn; ///< how this criterion affects the lead; may be empty
};

struct JudgementText {
    std::vector<CriterionText> criteria;
    std::string rule;                 ///< how measured criteria are scored
    std::string sentence;             ///< "Cabinet leads 4.0 to 3.1."
    std::vector<std::string> turning; ///< which criteria change the lead; never empty
};

struct SideBySideText {
    /// The answer, shown first everywhere: for two setups the power in the same weather if that
    /// decides, else the energy used.
    std::string headline;
    std::string belowHeadline; ///< the temperature, and what the headline leaves out
    std::string temperatureSentence;
    std::string energySentence;
    std::string alignedFrom; ///< "pitching", "the start of Crash"
    std::string scope;       ///< for batches: which figures cover which time; may be empty
    std::vector<MeasureText> measures; ///< one for each measure
    std::vector<NoteText> notes;
    std::vector<std::string> idle; ///< for setups: a sentence for A and one for B
    SameWeatherText weather;
    MoneyText money;
    JudgementText judgement;
};

/// A predefined criterion's name in the user's language; any other name as it was written.
std::string criterionWord(const std::string& name);

/// The fixed name of a measure: "energy_kwh".
std::string_view measureName(analysis::MeasureId id);

} // namespace holdband::results
