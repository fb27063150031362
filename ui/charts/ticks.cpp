#include "ui/charts/ticks.h"

#include "core/text/durations.h"
#include "core/text/numbers.h"
#include "core/text/phrase.h"
#include "core/text/times.h"
#include "ui/words/words.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace holdband::ui {

namespace {

using std::chrono::minutes;

constexpr std::array stepsWithinDay{minutes{5},   minutes{15},  minutes{30},  minutes{60},
                                    minutes{120}, minutes{180}, minutes{360}, minutes{720}};
constexpr std::array stepsOfDays{1, 2, 4, 7, 14, 28, 56, 112, 364};

constexpr int minutesOfDay = 24 * 60;
constexpr std::array ageSteps{minutes{5},
                              minutes{15},
                              minutes{30},
                              minutes{60},
                              minutes{180},
                              minutes{360},
                              minutes{720},
                              minutes{minutesOfDay},
                              minutes{2 * minutesOfDay},
                              minutes{5 * minutesOfDay},
                              minutes{10 * minutesOfDay},
                              minutes{20 * minutesOfDay},
                              minutes{50 * minutesOfDay},
                              minutes{100 * minutesOfDay},
                              minutes{500 * minutesOfDay}};

bool isFullDay(minutes age)
{
    return age.count() % minutesOfDay == 0;
}

/// "day 3"; within a day "+6 h" or "+6 h 15 min".
std::string ageLabel(minutes age)
{
    if (isFullDay(age))
        return Phrase::tr("day %1").with(std::to_string(age.count() / minutesOfDay));
    return "+" + durationText(Milliseconds(minutes{age.count() % minutesOfDay}), decimalSign());
}

/// The local times of one day that are multiples of the step, as instants.
void addTimesOfDay(const LocalDay& day, minutes step, Span shown, const Zone& zone,
                   std::vector<TimeTick>& ticks)
{
    const auto midnight = std::chrono::local_days{day.date};
    for (minutes since{0}; since < std::chrono::hours{24}; since += step) {
        const LocalTime local{midnight.time_since_epoch() + since};
        const bool first = since == minutes{0};
        const Resolved resolved = zone.resolve(local);
        if (resolved.kind == LocalKind::missing && !first)
            continue;
        const Instant at = first ? zone.startOfDay(day.date) : resolved.earlier;
        if (at < shown.start || at > shown.end)
            continue;
        ticks.push_back({at, first ? shortDateText(day.date) : localClockText(at, zone), first});
    }
}

bool isMultiple(Date date, int days)
{
    const auto count = std::chrono::local_days{date}.time_since_epoch().count();
    return count % days == 0;
}

std::vector<TimeTick> ticksWithinDays(Span shown, const Zone& zone, minutes step)
{
    std::vector<TimeTick> ticks;
    for (const LocalDay& day : zone.localDays(shown))
        addTimesOfDay(day, step, shown, zone, ticks);
    const bool dated =
        std::any_of(ticks.begin(), ticks.end(), [](const TimeTick& tick) { return tick.midnight; });
    if (!dated && !ticks.empty())
        ticks.front().label = localShortText(ticks.front().at, zone);
    return ticks;
}

std::vector<TimeTick> ticksOfDays(Span shown, const Zone& zone, int days)
{
    std::vector<TimeTick> ticks;
    for (const LocalDay& day : zone.localDays(shown)) {
        const Instant at = zone.startOfDay(day.date);
        if (isMultiple(day.date, days) && at >= shown.start && at <= shown.end)
            ticks.push_back({at, shortDateText(day.date), true});
    }
    return ticks;
}

} // namespace

std::vector<TimeTick> timeTicks(Span shown, const Zone& zone, int most)
{
    if (shown.empty() || most < 1)
        return {};
    const double wanted = shown.hours() * 60.0 / most;
    for (const minutes step : stepsWithinDay) {
        if (static_cast<double>(step.count()) >= wanted)
            return ticksWithinDays(shown, zone, step);
    }
    for (const int days : stepsOfDays) {
        if (days * 1440.0 >= wanted)
            return ticksOfDays(shown, zone, days);
    }
    return ticksOfDays(shown, zone, stepsOfDays.back());
}

std::vector<AgeTick> ageTicks(double fromHours, double toHours, int most)
{
    std::vector<AgeTick> ticks;
    if (!(toHours > fromHours) || most < 1)
        return ticks;
    const double wanted = (toHours - fromHours) * 60.0 / most;
    const auto found = std::find_if(ageSteps.begin(), ageSteps.end(), [&](minutes step) {
        return static_cast<double>(step.count()) >= wanted;
    });
    const minutes step = found == ageSteps.end() ? ageSteps.back() : *found;
    const auto stepMinutes = static_cast<double>(step.count());
    bool named = false; // some tick is at a full day
    for (double count = std::ceil(fromHours * 60.0 / stepMinutes - 1e-9);
         count * stepMinutes <= toHours * 60.0 + 1e-9; count += 1.0) {
        const minutes age{std::llround(count * stepMinutes)};
        named = named || isFullDay(age);
        ticks.push_back({static_cast<double>(age.count()) / 60.0, ageLabel(age)});
    }
    if (!named && !ticks.empty())
        ticks.front().label = Phrase::tr("day %1").with(
                                  std::to_string(static_cast<int>(ticks.front().hours / 24.0))) +
                              " " + ticks.front().label;
    return ticks;
}

std::vector<TimeTick> elapsedTicks(Span shown, Instant origin, int most)
{
    std::vector<TimeTick> ticks;
    for (AgeTick& tick :
         ageTicks(hoursBetween(origin, shown.start), hoursBetween(origin, shown.end), most))
        ticks.push_back({origin + toMilliseconds(Hours{tick.hours}), std::move(tick.label), false});
    return ticks;
}

std::vector<double> valueTicks(double low, double high, int most)
{
    std::vector<double> ticks;
    if (!(high > low) || most < 1)
        return ticks;
    const double raw = (high - low) / most;
    const double power = std::pow(10.0, std::floor(std::log10(raw)));
    double step = 10.0 * power;
    for (const double factor : {5.0, 2.0, 1.0}) {
        if (factor * power >= raw * 0.999)
            step = factor * power;
    }
    const auto first = static_cast<long long>(std::ceil(low / step - 1e-9));
    const auto last = static_cast<long long>(std::floor(high / step + 1e-9));
    for (long long i = first; i <= last; ++i)
        ticks.push_back(static_cast<double>(i) * step);
    return ticks;
}

std::vector<double> axisTicks(double low, double high, int most)
{
    constexpr std::size_t least = 3;
    constexpr int always = 10; // so many are at least three
    std::vector<double> ticks = valueTicks(low, high, std::max(most, 3));
    for (int more = 4; ticks.size() < least && more <= always; ++more)
        ticks = valueTicks(low, high, more);
    return ticks;
}

int decimalsOf(const std::vector<double>& ticks)
{
    if (ticks.size() < 2)
        return 0;
    const double step = ticks[1] - ticks[0];
    return std::max(0, static_cast<int>(-std::floor(std::log10(step) + 1e-9)));
}

} // namespace holdband::ui
