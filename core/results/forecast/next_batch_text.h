// The sentences and figures of a forecast as text, in the logbook's units.
#pragma once

#include <string>
#include <vector>

namespace holdband::results {

struct SetupForecastText {
    std::string energy;    ///< kWh, "8.5 (7.5 – 9.6)"; empty without a forecast
    std::string cost;      ///< "$1.28 ($1.13 – $1.44)"; empty where unknown
    std::string coldAfter; ///< h, "14 (11 – 18)"; empty without a crash or a past one
    std::string hold;      ///< "yes", "at the edge", "not seen yet", "not known"
    std::string seen;      ///< "54.2 °F", the most lift that it was seen holding; may be empty
    std::string easeOfUse; ///< its rating, "4 of 5"; empty where not rated
    std::string cleaning;  ///< the same
    std::string missing;   ///< a sentence: what would give a forecast; empty where there is one
    std::string backtest;  ///< "2 of 2 inside; typically off by 5 %."
    std::vector<std::string> assumed; ///< what is assumed, in short
    std::vector<std::string> stages;  ///< "Primary: 6.1 kWh (5.2 – 7.1), …", one for each
    std::string explainEnergy;        ///< how the figures came about, with their numbers
    std::string explainCost;
    std::string explainCrash;
    std::string explainHold;
    std::string explainBacktest;
};

struct NextBatchText {
    std::string headline; ///< one sentence that answers
    std::string also;     ///< cold sooner, can it hold, what the ranges mean
    std::string basis;    ///< on how many batches it rests, and what is assumed
    std::string plan;     ///< "Ale, 15 days"
    std::string room;     ///< "77 °F, from 68 to 86 °F in a day; Jul 2025, 99 % covered"
    std::string need;     ///< "19 °F", the most lift that the plan needs; empty where unknown
    std::vector<SetupForecastText> setups;
};

struct NextBatch;

/// Of a review whose numbers are complete.
NextBatchText nextBatchText(const NextBatch& review, char decimalSign);

} // namespace holdband::results
