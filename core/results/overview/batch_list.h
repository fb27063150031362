// The batches of a logbook with their verdicts, a line each.
#pragma once

#include "core/analysis/verdict.h"
#include "core/store/logbook_file.h"
#include "core/text/zone.h"

#include <optional>
#include <string>
#include <vector>

namespace holdband::results {

struct BatchLine {
    std::string name;
    std::string setup;
    Instant pitched;
    std::optional<Instant> ended;
    Instant lastKnown; ///< ended, or the last beer reading of an open batch
    analysis::Verdict verdict = analysis::Verdict::notEnoughData;
    std::string mark;     ///< see verdictMark
    std::string headline; ///< the verdict sentence
};

struct BatchList {
    Zone zone;
    std::vector<BatchLine> batches; ///< in order of pitching
};

Result<BatchList> reviewBatches(const store::LogbookFile& logbook);

/// What is odd in a logbook that is sound: a sentence each.
Result<std::vector<std::string>> findOddities(const store::LogbookFile& logbook);

} // namespace holdband::results
