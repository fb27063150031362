#include "core/results/rounds/round_calendar.h"

#include "core/model/meter_service.h"

#include <algorithm>
#include <tuple>

namespace holdband::results {

namespace {

using std::chrono::days;
using std::chrono::minutes;

constexpr minutes wholeDay = minutes{24 * 60};

Date shifted(Date date, int by)
{
    return Date{std::chrono::local_days{date} + days{by}};
}

minutes middleOf(const RoundWindow& window)
{
    return minutes{(window.fromMinute + window.toMinute) / 2};
}

/// The local time in the middle between the last round of a day and the first of the next belongs
/// to the next one.
minutes dayBegins(const std::vector<RoundWindow>& windows)
{
    return (middleOf(windows.back()) - wholeDay + middleOf(windows.front())) / 2;
}

} // namespace

RoundColumn roundOf(Instant at, const Zone& zone, const std::vector<RoundWindow>& windows)
{
    // Days are counted from the middle of the night between two rounds.
    const LocalTime local = zone.toLocal(at) - dayBegins(windows);
    const auto day = std::chrono::floor<days>(local);
    const minutes minute = std::chrono::floor<minutes>(local - day) + dayBegins(windows);
    int slot = 0;
    for (std::size_t i = 1; i < windows.size(); ++i) {
        if (minute >= (middleOf(windows[i - 1]) + middleOf(windows[i])) / 2)
            slot = static_cast<int>(i);
    }
    return {Date{day}, slot};
}

Instant dueAt(const RoundColumn& round, const Zone& zone, const std::vector<RoundWindow>& windows)
{
    const RoundWindow& window = windows[static_cast<std::size_t>(round.slot)];
    return zone.resolve(LocalTime{std::chrono::local_days{round.date}} + middleOf(window)).earlier;
}

namespace {

Instant atMinute(const RoundColumn& round, const Zone& zone, int minute)
{
    return zone.resolve(LocalTime{std::chrono::local_days{round.date}} + minutes{minute}).earlier;
}

} // namespace

Instant opensAt(const RoundColumn& round, const Zone& zone, const Windows& windows)
{
    return atMinute(round, zone, windows[static_cast<std::size_t>(round.slot)].fromMinute);
}

Instant missedFrom(const RoundColumn& round, const Zone& zone, const Windows& windows)
{
    return atMinute(round, zone, windows[static_cast<std::size_t>(round.slot)].toMinute);
}

RoundColumn roundBefore(const RoundColumn& round, const std::vector<RoundWindow>& windows)
{
    return round.slot > 0
               ? RoundColumn{round.date, round.slot - 1}
               : RoundColumn{shifted(round.date, -1), static_cast<int>(windows.size()) - 1};
}

RoundColumn roundAfter(const RoundColumn& round, const std::vector<RoundWindow>& windows)
{
    return round.slot + 1 < static_cast<int>(windows.size())
               ? RoundColumn{round.date, round.slot + 1}
               : RoundColumn{shifted(round.date, 1), 0};
}

bool inService(const Meter& meter, Instant at)
{
    return setupAt(meter, at).has_value();
}

bool isExpected(const Snapshot& snapshot, const Meter& meter, Instant due, Instant now)
{
    const std::optional<std::string> setup = setupAt(meter, due);
    if (!setup)
        return false;
    return std::any_of(snapshot.batches.begin(), snapshot.batches.end(), [&](const Batch& batch) {
        const Instant end = batch.ended.value_or(now);
        return batch.setup == *setup && due >= batch.pitched && due <= end && due <= now;
    });
}

bool earlier(const RoundColumn& a, const RoundColumn& b)
{
    return std::tie(a.date, a.slot) < std::tie(b.date, b.slot);
}

} // namespace holdband::results
