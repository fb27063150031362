// The verdict as a person would say it: one sentence, and a second line with its certainty,
// coverage, settling and what was missed.
#pragma once

#include "core/analysis/run.h"
#include "core/quantity/temperature.h"
#include "core/text/zone.h"

#include <string>
#include <string_view>

namespace holdband::results {

struct VerdictWords {
    std::string headline; ///< "Left the band twice: 3 h 12 min of 248 h held (1.3 %), worst …"
    std::string detail;   ///< "Sure: it also leaves the band widened by …. Covered 97.8 %. …"
};

/// What the words need to know beside the judging itself.
struct JudgedBy {
    analysis::JudgingRules rules;
    analysis::JudgingSettings settings;
    bool anyReading = false; ///< of the beer
    std::optional<analysis::LeftOutFigures> leftOut = {};
};

/// How the words write numbers.
struct VerdictFormat {
    VerdictFormat(TemperatureUnit temperature, char sign = '.')
        : unit(temperature), decimalSign(sign)
    {
    }

    TemperatureUnit unit;
    char decimalSign;
};

VerdictWords verdictWords(const analysis::JudgedBatch& judged, const JudgedBy& by,
                          const VerdictFormat& manner);

VerdictWords verdictWords(const analysis::RunInput& input, const analysis::RunFigures& figures,
                          const VerdictFormat& manner);

/// "Left out by hand: 1 Mar 10:00 to 10:40, probe out." Empty where nothing was.
std::string leftOutSentence(const std::optional<analysis::LeftOutFigures>& leftOut,
                            const Zone& zone);

/// For programs: "stayed", "left", "missed", "not enough data".
std::string_view verdictName(analysis::Verdict verdict);

/// The same for people, in their language.
std::string verdictWord(analysis::Verdict verdict);

/// The mark of a batch beside its name: ✓ stayed, the number of excursions, ↛ a target missed,
/// ? not enough data, … still open.
std::string verdictMark(const analysis::RunFigures& figures, bool open);

} // namespace holdband::results
