// What an arrangement costs after a number of batches: its parts once, the energy with each batch;
// and where two such lines cross. Section 6 of the method in DEVELOPERS.md. No Qt, no SQL.
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
    crosses, ///< the side with the dearer parts becomes cheaper after `batches`
    never,   ///< the side that is cheaper at first stays cheaper
    same,    ///< both lines are the same
};

struct Crossing {
    CrossingKind kind = CrossingKind::never;
    double batches = 0.0;              ///< where the lines meet, > 0; 0 where they don't
    std::optional<Ahead> cheaperFirst; ///< cheaper parts; if equal, cheaper energy
    /// The range of the crossing that follows from the bounds of the energy costs; absent where the
    /// bounds are unknown or leave open whether the lines cross at all.
    std::optional<double> earliest; ///< batches
    std::optional<double> latest;   ///< batches
    bool sure = false;              ///< the kind is the same anywhere within the bounds
};

Crossing crossingOf(const SideCost& a, const SideCost& b);

} // namespace holdband::analysis
