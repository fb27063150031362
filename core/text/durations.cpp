#include "core/text/durations.h"

#include "core/text/numbers.h"
#include "core/text/phrase.h"

#include <algorithm>

namespace holdband {

using namespace std::chrono;

namespace {

std::string hoursAndMinutes(minutes length)
{
    const auto whole = floor<hours>(length);
    const auto rest = length - whole;
    std::string text = std::to_string(whole.count()) + " h";
    return rest.count() == 0 ? text : text + " " + std::to_string(rest.count()) + " min";
}

std::string daysText(Milliseconds length, char decimalSign)
{
    constexpr double msPerDay = 86'400'000.0;
    std::string text = fixedText(static_cast<double>(length.count()) / msPerDay, 1, decimalSign);
    if (text.ends_with('0'))
        text.resize(text.size() - 2);
    return Phrase::tr("%1 days").with(text);
}

} // namespace

std::string durationText(Milliseconds length, char decimalSign)
{
    length = std::clamp(length, -longestLength, longestLength);
    if (length < Milliseconds{0})
        return std::string(1, '-').append(durationText(-length, decimalSign));
    if (const auto whole = round<seconds>(length); whole < minutes{1})
        return std::to_string(whole.count()) + " s";
    const auto whole = round<minutes>(length);
    if (whole < hours{1})
        return std::to_string(whole.count()) + " min";
    if (whole < hours{48})
        return hoursAndMinutes(whole);
    return daysText(length, decimalSign);
}

std::string hoursText(Milliseconds length)
{
    if (length < hours{48})
        return durationText(length);
    return hoursAndMinutes(round<minutes>(length));
}

std::string durationText(Hours length, char decimalSign)
{
    return durationText(toMilliseconds(length), decimalSign);
}

} // namespace holdband
