// The batches of a logbook with their verdicts, one line each.
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

/// Sentences about odd data in a logbook that is not damaged.
Result<std::vector<std::string>> findOddities(const store::LogbookFile& logbook);

} // namespace holdband::results
