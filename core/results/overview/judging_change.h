// Which verdicts of an older logbook are different under the present rules: the beer has arrived
// once it stayed inside for the dwell, and an excursion ends after the return. Before, the first
// moment inside did both.
#pragma once

#include "core/analysis/verdict.h"
#include "core/store/logbook_file.h"

#include <optional>
#include <string>
#include <vector>

namespace holdband::results {

struct ChangedVerdict {
    std::string batch;
    analysis::Verdict before = analysis::Verdict::notEnoughData;
    analysis::Verdict now = analysis::Verdict::notEnoughData;

    bool operator==(const ChangedVerdict&) const = default;
};

/// Of the batches that the logbook held when it took on the present rules, those whose verdict is
/// different, in order of their pitching. Absent once the person was told (judging_notice.h).
Result<std::optional<std::vector<ChangedVerdict>>>
changedVerdicts(const store::LogbookFile& logbook);

/// "Ale 1 (left the band, now stayed in it), …" as a sentence; the first few by name.
std::string changedVerdictsText(const std::vector<ChangedVerdict>& changed);

} // namespace holdband::results
