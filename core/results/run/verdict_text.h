// The verdict in one sentence, and a second line with its certainty, coverage, settling and missed
// stages.
#pragma once

#include "core/analysis/run.h"
#include "core/quantity/temperature.h"
#include "core/text/zone.h"

#include <string>
#include <string_view>

namespace holdband::results {

struct VerdictText {
    std::string headline; ///< "Left the band twice: 3 h 12 min of 248 h held (1.3 %), worst …"
    std::string detail;   ///< "Sure: it also leaves the band widened by …. Covered 97.8 %. …"
};

/// What the texts need besides the judging itself.
struct JudgedBy {
    analysis::JudgingRules rules;
    analysis::JudgingSettings settings;
    bool anyReading = false; ///< whether the beer has any reading
    std::optional<analysis::LeftOutFigures> leftOut = {};
};

/// The number format of the texts.
struct VerdictFormat {
    VerdictFormat(TemperatureUnit temperature, char sign = '.')
        : unit(temperature), decimalSign(sign)
    {
    }

    TemperatureUnit unit;
    char decimalSign;
};

VerdictText verdictWords(const analysis::JudgedBatch& judged, const JudgedBy& by,
                         const VerdictFormat& format);

VerdictText verdictWords(const analysis::RunInput& input, const analysis::RunFigures& figures,
                         const VerdictFormat& format);

/// Such as "Left out by hand: 1 Mar 10:00 to 10:40, probe out." Empty if nothing was left out.
std::string leftOutSentence(const std::optional<analysis::LeftOutFigures>& leftOut,
                            const Zone& zone);

/// For programs: "stayed", "left", "missed", "not enough data".
std::string_view verdictName(analysis::Verdict verdict);

/// The same for people, in their language.
std::string verdictWord(analysis::Verdict verdict);

/// The mark shown next to a batch's name: ✓ stayed, the number of excursions, ↛ a target missed, ?
/// not enough data, … still open.
std::string verdictMark(const analysis::RunFigures& figures, bool open);

} // namespace holdband::results
