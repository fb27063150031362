// What an arrangement costs after so many batches: its parts once, the energy with each batch; and
// where two such lines cross. Section 6 of the method in DEVELOPERS.md. No Qt, no SQL.
#pragma once

#include "core/analysis/comparison.h"

#include <optional>

namespace holdband::analysis {

/// In the logbook's currency.
struct SideCost {
    double parts = 0.0; ///< currency
    Bounded perBatch;   ///< energy cost of one batch

    double after(double batches) const { return parts + perBatch.value * batches; }
};

enum class CrossingKind {
    crosses, ///< the one that costs more at first is the cheaper one after `batches`
    never,   ///< the one that is cheaper at first stays so
    same,    ///< both lines are one
};

struct Crossing {
    CrossingKind kind = CrossingKind::never;
    double batches = 0.0;              ///< where the lines meet, > 0; 0 where they never do
    std::optional<Ahead> cheaperFirst; ///< with the lower cost of parts; of equal ones, of energy
    /// Where the energy costs' own bounds put the crossing; absent where they are unknown or leave
    /// it open whether the lines cross at all.
    std::optional<double> earliest; ///< batches
    std::optional<double> latest;   ///< batches
    bool sure = false;              ///< the bounds leave no doubt of the kind
};

Crossing crossingOf(const SideCost& a, const SideCost& b);

} // namespace holdband::analysis
