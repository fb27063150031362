// The map of the logbook: setups as rows, batches as bars in time, rounds as ticks.
#pragma once

#include "core/analysis/verdict.h"
#include "core/store/logbook_file.h"

#include <string>
#include <vector>

namespace holdband::results {

struct LaneBar {
    std::string batch;
    Span span; ///< pitched to ended; an open batch ends now
    bool open = false;
    analysis::Verdict verdict = analysis::Verdict::notEnoughData;
    std::string mark;     ///< see verdictMark
    std::string headline; ///< the verdict sentence
    int row = 0;          ///< batches at once on a setup stand in rows of their own, from 0

    bool operator==(const LaneBar&) const = default;
};

struct Lane {
    std::string setup;
    std::vector<LaneBar> bars; ///< in order of pitching
    int rows = 1;

    bool operator==(const Lane&) const = default;
};

/// A round that was read, or one that should have been.
struct RoundTick {
    Instant at;
    bool missed = false;

    bool operator==(const RoundTick&) const = default;
};

struct LanesReview {
    std::vector<Lane> lanes;
    std::vector<RoundTick> rounds; ///< in order of time
    Instant now;
    Span shown; ///< all batches, and now where one is open

    bool operator==(const LanesReview&) const = default;
};

class LanesCache;

/// `cache`: where there is one, only the batches are judged that a change has touched since it was
/// used last; what comes out is the same (lanes_cache.h).
Result<LanesReview> reviewLanes(const store::LogbookFile& logbook, LanesCache* cache = nullptr,
                                char decimalSign = '.');

} // namespace holdband::results
