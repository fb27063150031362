// Lengths of time as text, for the window and the command line.
#pragma once

#include "core/quantity/instant.h"

#include <string>

namespace holdband {

/// "40 s" below a minute, "48 min" below an hour, "3 h 12 min" below two days, then "13.5 days";
/// rounded to the last unit shown. A negative length has a '-' before it.
std::string durationText(Milliseconds length, char decimalSign = '.');
std::string durationText(Hours length, char decimalSign = '.');

/// "251 h 12 min": always in hours, so that lengths can be added up by hand; below two days as
/// durationText.
std::string hoursText(Milliseconds length);

} // namespace holdband
