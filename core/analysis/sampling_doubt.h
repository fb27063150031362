// What the time between two readings can hide of an excursion: the sensor's accuracy says nothing
// about it. No Qt, no SQL.
#pragma once

#include "core/analysis/hold_band.h"

namespace holdband::analysis {

/// A piece is the straight line between two successive readings. The *change beside* a piece is the
/// greatest change over it, the piece before it or the one after it in the same covered stretch,
/// each change scaled down to the length of the piece where its own piece is longer, and never
/// scaled up (two readings a second apart say nothing about ten minutes). All of the deviation, K.
///
/// A peak is at most half a piece away from the nearest reading, so a beer that moves no faster
/// than beside the piece has moved by at most half of that change since.
struct SamplingDoubt {
    /// K by which the peak may lie farther past the edge than was read: half the change beside the
    /// pieces that touch the peak, the greater of the two.
    double peak = 0.0;
    double pieceMs = 0.0; ///< ms: the length of that piece
    /// ms by which the excursion may be longer or shorter: for its begin and for its end half the
    /// piece in which the edge was crossed; nothing where it began or ended without a crossing.
    double lengthMs = 0.0;
};

/// `judged`: the judgement of the stage that the excursion belongs to.
SamplingDoubt samplingDoubt(const StageTrack& track, const BandJudgement& judged,
                            const Excursion& excursion);

/// Whether the peak's doubt is worth a sentence: at least 0.1 °F, and more than a tenth of the
/// tolerance (K). The sensor's accuracy is no measure here: it shifts all readings alike, and the
/// verdict takes account of it already.
bool isNotable(const SamplingDoubt& doubt, double tolerance);

} // namespace holdband::analysis
