// A comparison at a glance: one sentence that answers, what is not decided, and five pairs of
// figures. Window, picture and report show the same.
#pragma once

#include "core/results/comparison/batch_figures.h"

namespace holdband::results {

enum class GlanceRow { energy, cost, onTarget, crash, work };

struct GlanceSide {
    std::optional<analysis::Bounded> figure; ///< in the unit that the pair's title names
    std::vector<BatchFigure> batches;        ///< of setups, in the same unit
    std::string text;                        ///< "8.87", "$1.34", "–"
};

struct GlancePair {
    GlanceRow row = GlanceRow::energy;
    std::string title; ///< "Energy, kWh"
    std::string name;  ///< inside a sentence: "energy"
    GlanceSide a;
    GlanceSide b;
    std::optional<analysis::Ahead> ahead; ///< absent where the pair can't decide
    std::string aheadText;                ///< "A less", "too close to call", "not decided"
    std::string explanation; ///< lines: each side's figure with its bounds, and why nobody is ahead

    /// Both figures are known exactly, and are the same.
    bool equal() const
    {
        return a.figure && a.figure == b.figure && a.figure->bounded() &&
               a.figure->low == a.figure->high;
    }
};

struct PairGlance {
    std::string answer;            ///< "Cabinet is cheaper to run; Loop is cold sooner."
    std::string open;              ///< what is not decided; may be empty
    std::vector<GlancePair> pairs; ///< those that at least one side has a figure of
};

struct SideBySide;
struct SideFormat;

/// Needs everything else of the comparison, its texts too.
PairGlance pairGlanceOf(const SideBySide& review, const SideFormat& format);

} // namespace holdband::results
