// Energy of a run as text: window, report and command line show the same.
#pragma once

#include "core/results/run/run_review.h"

#include <string>
#include <vector>

namespace holdband::results {

struct EnergyTexts {
    std::string kwh;     ///< "0.90"; "–" where nothing was metered
    std::string bounds;  ///< "0.79 – 1.41", "at least 0.79", "unknown"; "not metered"
    std::string metered; ///< "13.5 days"; "–"
    std::string watts;   ///< "85.3"; "–"
};

EnergyTexts energyTexts(const analysis::EnergyFigure& energy, char decimalSign = '.');

enum class EnergyPartKind { whole, beforeCrash, crash };

/// The energy of the full run, and before the crash and from it on, if there is one.
struct EnergyPart {
    EnergyPartKind kind = EnergyPartKind::whole;
    std::string label;
    analysis::EnergyFigure energy;
};
std::vector<EnergyPart> energyParts(const RunReview& review);

/// Sentences about the energy: what was forecast when it was pitched and what came, the batches
/// with which it was shared and how, and how good the times of readings are.
std::vector<std::string> energyRemarks(const RunReview& review);
/// "Reading times are taken as good to 10 min."; empty where they are exact.
std::string timeDoubtSentence(const RunReview& review, Span span);
/// "Ale 2", "Ale 2 and Ale 3", "Ale 2, Ale 3 and Ale 4"
std::string sharedWithText(const std::vector<analysis::SharedTime>& shared);

} // namespace holdband::results
