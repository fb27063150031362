// The words of an arrival's forecast: window, report and command line show the same.
#pragma once

#include "core/results/run/arrival.h"
#include "core/results/run/verdict_text.h"
#include "core/text/zone.h"

#include <string>
#include <string_view>

namespace holdband::results {

/// "Cold in about 6 h, at about 02:40 (23:50 – 05:10)."; for a warm-up or a small step down "At
/// 70 °F in about 6 h, …"; "Will not come to 35 °F at this rate: levels off near 39 °F."; "Not cold
/// before about 02:40, and may not get there."; "Too early to say when the beer will be at 35 °F:
/// …".
/// Where the log is silent it is dated, as for paper: "Cold at about 9 Mar 02:40 (8 Mar 23:50 – 9
/// Mar 05:10). Last reading 8 Mar 20:40."
std::string arrivalSentence(const ArrivalReview& arrival, const VerdictFormat& format,
                            const Zone& zone);
std::string datedArrivalSentence(const ArrivalReview& arrival, const VerdictFormat& format,
                                 const Zone& zone);

/// For programs: "hours", "open top", "will not arrive", "not yet".
std::string_view arrivalAnswerName(analysis::ArrivalAnswer answer);

/// A target without ".0": "35 °F", "1.7 °C".
std::string shortTemperatureText(Temperature temperature, const VerdictFormat& format);

/// "25 min", "3½ h", "6 h", "2½ days": no more digits than a forecast bears.
std::string roughLengthText(double hours);

} // namespace holdband::results
