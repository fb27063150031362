#include "core/review/round_calendar.h"

#include <algorithm>
#include <tuple>

namespace holdband::review {

namespace {

using std::chrono::days;
using std::chrono::hours;
using std::chrono::minutes;

constexpr minutes morningEnds = hours{12} + minutes{30};
constexpr hours morningDue{7};
constexpr hours eveningDue{18};

Date shifted(Date date, int by)
{
    return Date{std::chrono::local_days{date} + days{by}};
}

} // namespace

RoundColumn roundOf(Instant at, const Zone& zone)
{
    const LocalTime local = zone.toLocal(at);
    const auto day = std::chrono::floor<days>(local);
    return {Date{day}, local - day < morningEnds ? RoundSlot::morning : RoundSlot::evening};
}

Instant dueAt(const RoundColumn& round, const Zone& zone)
{
    const hours due = round.slot == RoundSlot::morning ? morningDue : eveningDue;
    return zone.resolve(LocalTime{std::chrono::local_days{round.date}} + due).earlier;
}

RoundColumn roundBefore(const RoundColumn& round)
{
    return round.slot == RoundSlot::evening
               ? RoundColumn{round.date, RoundSlot::morning}
               : RoundColumn{shifted(round.date, -1), RoundSlot::evening};
}

RoundColumn roundAfter(const RoundColumn& round)
{
    return round.slot == RoundSlot::morning
               ? RoundColumn{round.date, RoundSlot::evening}
               : RoundColumn{shifted(round.date, 1), RoundSlot::morning};
}

bool inService(const Meter& meter, Instant at)
{
    return (!meter.from || *meter.from <= at) && (!meter.to || at < *meter.to);
}

bool isExpected(const Snapshot& snapshot, const Meter& meter, Instant due, Instant now)
{
    if (!inService(meter, due))
        return false;
    return std::any_of(snapshot.batches.begin(), snapshot.batches.end(), [&](const Batch& batch) {
        const Instant end = batch.ended.value_or(now);
        return batch.setup == meter.setup && due >= batch.pitched && due <= end && due <= now;
    });
}

bool earlier(const RoundColumn& a, const RoundColumn& b)
{
    return std::tie(a.date, a.slot) < std::tie(b.date, b.slot);
}

} // namespace holdband::review
