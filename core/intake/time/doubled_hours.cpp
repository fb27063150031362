#include "core/intake/time/doubled_hours.h"

#include "core/intake/log/log_places.h"
#include "core/text/phrase.h"
#include "core/text/times.h"

#include <span>

namespace holdband {

namespace {

struct DoubledRow {
    std::size_t row = 0;
    std::int64_t wall = 0;
    Resolved both;

    Milliseconds shift() const { return both.later - both.earlier; }
};

/// The directions in which the local times of neighbouring rows go, without doubled ones.
struct Direction {
    bool rises = false;
    bool falls = false;
    bool stays = false;

    void step(std::int64_t from, std::int64_t to)
    {
        rises = rises || to > from;
        falls = falls || to < from;
        stays = stays || to == from;
    }
};

/// Where the second pass through a doubled hour begins; absent where the rows don't show it.
std::optional<std::size_t> turningPoint(std::span<const DoubledRow> group, bool falling, bool stays)
{
    std::optional<std::size_t> turn;
    for (std::size_t i = 1; i < group.size(); ++i) {
        const bool against =
            falling ? group[i].wall > group[i - 1].wall : group[i].wall < group[i - 1].wall;
        if (against && turn)
            return std::nullopt;
        if (against)
            turn = i;
    }
    const bool hourly = group.size() == 2 && group[0].wall == group[1].wall && !stays;
    return hourly ? std::optional<std::size_t>{1} : turn;
}

/// If there are no other rows: the direction of most steps, if it is clear.
std::optional<bool> fallsInside(std::span<const DoubledRow> group)
{
    std::size_t up = 0, down = 0;
    for (std::size_t i = 1; i < group.size(); ++i) {
        up += group[i].wall > group[i - 1].wall;
        down += group[i].wall < group[i - 1].wall;
    }
    if (up >= 2 && down <= 1)
        return false;
    if (down >= 2 && up <= 1)
        return true;
    return std::nullopt;
}

tl::unexpected<Problem> unclear(const DoubledRow& row, const RowTimes& rows, const Zone& zone)
{
    const LocalTime wall{Milliseconds{row.wall}};
    const Date date{std::chrono::floor<std::chrono::days>(wall)};
    const std::string first = localIso(row.both.earlier, zone);
    const std::string second = localIso(row.both.later, zone);
    const auto offset = [](const std::string& iso) { return iso.substr(iso.size() - 6); };
    return dataProblem(
        Phrase::tr("%1 on %2 exists twice in %3, and the rows don't show which is meant")
            .with(clockText(wall), dateText(date), zone.name()),
        linePlace(rows.line[row.row]),
        Phrase::tr("write offsets in the file (%1 or %2), or say --zone %3 or --zone %4 if the "
                   "logger's clock was never changed")
            .with(first, second, offset(first), offset(second)),
        Decision::zone, {offset(first), offset(second)});
}

Done settleGroup(std::span<const DoubledRow> group, const Direction& direction, RowTimes& rows,
                 const Zone& zone)
{
    std::optional<bool> falling;
    if (direction.rises != direction.falls)
        falling = direction.falls;
    else if (!direction.rises)
        falling = fallsInside(group);
    if (!falling)
        return unclear(group.front(), rows, zone);
    const auto turn = turningPoint(group, *falling, direction.stays);
    if (!turn)
        return unclear(group.front(), rows, zone);
    for (std::size_t i = 0; i < group.size(); ++i) {
        const bool firstPass = (i < *turn) != *falling;
        rows.value[group[i].row] = toMs(firstPass ? group[i].both.earlier : group[i].both.later);
    }
    return {};
}

/// Whether two doubled rows are in the same doubled hour.
bool sameHour(const DoubledRow& a, const DoubledRow& b)
{
    return std::abs(a.wall - b.wall) < a.shift().count() && a.shift() == b.shift();
}

/// Rows in doubled hours, and the direction of all others.
struct Sorted {
    RowsResolved result;
    std::vector<DoubledRow> doubled;
    Direction direction;
};

Sorted resolveUnique(RowTimes& rows, const Zone& zone)
{
    Sorted sorted;
    std::optional<std::int64_t> before;
    bool beforeDoubled = false;
    for (std::size_t i = 0; i < rows.value.size(); ++i) {
        if (rows.kind[i] != StampKind::local)
            continue;
        const std::int64_t wall = rows.value[i];
        const Resolved resolved = zone.resolve(LocalTime{Milliseconds{wall}});
        rows.value[i] = toMs(resolved.earlier);
        const bool doubled = resolved.kind == LocalKind::doubled;
        if (resolved.kind == LocalKind::missing)
            sorted.result.missing.push_back({i, LocalTime{Milliseconds{wall}}});
        if (doubled)
            sorted.doubled.push_back({i, wall, resolved});
        if (before && !(doubled && beforeDoubled))
            sorted.direction.step(*before, wall);
        before = wall;
        beforeDoubled = doubled;
    }
    return sorted;
}

} // namespace

Result<RowsResolved> resolveRows(RowTimes& rows, const Zone& zone)
{
    Sorted sorted = resolveUnique(rows, zone);
    const std::span<const DoubledRow> all(sorted.doubled);
    for (std::size_t from = 0; from < all.size();) {
        std::size_t to = from + 1;
        while (to < all.size() && sameHour(all[to - 1], all[to]))
            ++to;
        const Done done = settleGroup(all.subspan(from, to - from), sorted.direction, rows, zone);
        if (!done)
            return failure(done.error());
        from = to;
    }
    sorted.result.doubled = sorted.doubled.size();
    return sorted.result;
}

} // namespace holdband
