// The overview of the logbook: setups as rows, batches as bars in time, rounds as ticks.
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
    int row = 0;          ///< from 0; batches at the same time on a setup have different rows

    bool operator==(const LaneBar&) const = default;
};

struct Lane {
    std::string setup;
    std::vector<LaneBar> bars; ///< in order of pitching
    int rows = 1;

    bool operator==(const Lane&) const = default;
};

/// A round that was read, or one that was missed.
struct RoundTick {
    Instant at;
    bool missed = false;

    bool operator==(const RoundTick&) const = default;
};

struct LanesReview {
    std::vector<Lane> lanes;
    std::vector<RoundTick> rounds; ///< in order of time
    Instant now;
    Span shown; ///< all batches, until now if one is open

    bool operator==(const LanesReview&) const = default;
};

class LanesCache;

/// With a `cache`, only the batches are judged that a change has touched since the last use; the
/// result is the same (lanes_cache.h).
Result<LanesReview> reviewLanes(const store::LogbookFile& logbook, LanesCache* cache = nullptr,
                                char decimalSign = '.');

} // namespace holdband::results
