#include "core/text/zone.h"

#include "core/text/name_suggestions.h"
#include "core/text/phrase.h"

#include <QTimeZone>
#include <algorithm>
#include <cstdlib>

namespace holdband {

using std::chrono::days;
using std::chrono::hours;
using std::chrono::local_days;
using std::chrono::minutes;

/// Ranges of constant offset. The first begins in the far past, the last never ends.
struct Zone::Table {
    struct Range {
        Instant start;
        Instant end;
        Milliseconds offset;
        LocalTime localStart() const { return LocalTime{start.time_since_epoch() + offset}; }
        LocalTime localEnd() const { return LocalTime{end.time_since_epoch() + offset}; }
    };
    std::string name;
    std::vector<Range> ranges;
    std::vector<Instant> starts;        ///< of the ranges, for the search
    std::vector<LocalTime> localStarts; ///< of the ranges, for the search

    const Range& at(Instant instant) const
    {
        const auto after = std::upper_bound(starts.begin() + 1, starts.end(), instant);
        return ranges[static_cast<std::size_t>(after - starts.begin()) - 1];
    }
};

namespace {

// Far enough for every date, close enough that adding an offset can't overflow.
constexpr Instant farPast{Milliseconds{-4'000'000'000'000'000}};
constexpr Instant farFuture{Milliseconds{4'000'000'000'000'000}};

Instant startOfYear(int year)
{
    return std::chrono::sys_days{std::chrono::year{year} / 1 / 1};
}

QDateTime toQt(Instant at)
{
    return QDateTime::fromMSecsSinceEpoch(toMs(at), Qt::UTC);
}

std::optional<int> twoDigits(std::string_view text)
{
    const auto digit = [](char c) { return c >= '0' && c <= '9'; };
    if (text.size() != 2 || !digit(text[0]) || !digit(text[1]))
        return std::nullopt;
    return (text[0] - '0') * 10 + (text[1] - '0');
}

/// "+02:00", "-05:00", each also with "UTC" before it.
std::optional<Milliseconds> fixedOffset(std::string_view text)
{
    if (text.starts_with("UTC"))
        text.remove_prefix(3);
    if (text.size() != 6 || (text[0] != '+' && text[0] != '-') || text[3] != ':')
        return std::nullopt;
    const auto hour = twoDigits(text.substr(1, 2));
    const auto minute = twoDigits(text.substr(4, 2));
    if (!hour || !minute || *hour > 14 || *minute > 59)
        return std::nullopt;
    const Milliseconds size = hours{*hour} + minutes{*minute};
    return text[0] == '-' ? -size : size;
}

/// The zone of an IANA name. Qt also takes POSIX rules ("Denver" is one, with offset 0) and paths
/// with dots, which are refused here.
std::optional<QTimeZone> ruled(std::string_view name)
{
    const QByteArray id(name.data(), static_cast<qsizetype>(name.size()));
    const bool path = id.contains('/') && !id.contains("..");
    if (name.empty() || (!path && !QTimeZone::availableTimeZoneIds().contains(id)))
        return std::nullopt;
    QTimeZone zone(id);
    return zone.isValid() ? std::optional{zone} : std::nullopt;
}

/// The changes of 1900 … 2200. Qt 6.4 lists only those that the file spells out (to 2037); later
/// changes are computed one by one from the zone's rule.
std::vector<std::pair<Instant, Milliseconds>> changesOf(const QTimeZone& zone)
{
    std::vector<std::pair<Instant, Milliseconds>> list;
    const auto add = [&list](const QTimeZone::OffsetData& change) {
        list.emplace_back(instantFromMs(change.atUtc.toMSecsSinceEpoch()),
                          Milliseconds{change.offsetFromUtc * 1000});
    };
    const QDateTime end = toQt(startOfYear(2200));
    QDateTime last = toQt(startOfYear(1900));
    for (const auto& change : zone.transitions(last, end)) {
        add(change);
        last = change.atUtc;
    }
    // If asked for the change after the exact instant of a change, Qt 6.4 finds none: ask a day
    // later.
    for (;;) {
        const auto next = zone.nextTransition(last.addDays(1));
        if (!next.atUtc.isValid() || next.atUtc >= end)
            break;
        add(next);
        last = next.atUtc;
    }
    return list;
}

tl::unexpected<Problem> unknownZone(std::string_view name)
{
    std::vector<std::string> known;
    const QList<QByteArray> ids = QTimeZone::availableTimeZoneIds();
    known.reserve(static_cast<std::size_t>(ids.size()));
    for (const QByteArray& id : ids)
        known.push_back(id.toStdString());
    const std::vector<std::string> close = suggestedNames(name, known);
    return dataProblem(
        Phrase::tr("there is no time zone called \"%1\"").with(name), {},
        close.empty()
            ? Phrase::tr("write a name such as America/Denver, or an offset such as -07:00").text()
            : Phrase::tr("did you mean %1?").with(joined(close)));
}

} // namespace

Zone::Zone()
{
    auto table = std::make_shared<Table>();
    table->name = "UTC";
    table->ranges = {{farPast, farFuture, Milliseconds{0}}};
    table->starts = {farPast};
    table->localStarts = {table->ranges.front().localStart()};
    m_table = std::move(table);
}

Result<Zone> Zone::named(std::string_view name)
{
    if (name == "UTC" || name == "Z")
        return Zone();
    auto table = std::make_shared<Table>();
    table->name = std::string(name);
    if (const auto fixed = fixedOffset(name)) {
        table->ranges = {{farPast, farFuture, *fixed}};
    } else {
        const auto zone = ruled(name);
        if (!zone)
            return unknownZone(name);
        const Milliseconds first{zone->offsetFromUtc(toQt(startOfYear(1900))) * 1000};
        table->ranges = {{farPast, farFuture, first}};
        for (const auto& [at, offset] : changesOf(*zone)) {
            if (offset == table->ranges.back().offset)
                continue; // a new name for the same offset
            table->ranges.back().end = at;
            table->ranges.push_back({at, farFuture, offset});
        }
    }
    for (const Table::Range& range : table->ranges) {
        table->starts.push_back(range.start);
        table->localStarts.push_back(range.localStart());
    }
    return Zone(std::move(table));
}

const std::string& Zone::name() const
{
    return m_table->name;
}

Resolved Zone::resolve(LocalTime local) const
{
    const auto& starts = m_table->localStarts;
    const auto after = std::upper_bound(starts.begin() + 1, starts.end(), local);
    const auto index = static_cast<std::size_t>(after - starts.begin()) - 1;
    const Table::Range& range = m_table->ranges[index];
    const auto read = [local](const Table::Range& by) {
        return Instant{local.time_since_epoch() - by.offset};
    };
    const Instant here = read(range);
    if (index > 0 && local < m_table->ranges[index - 1].localEnd())
        return {LocalKind::doubled, read(m_table->ranges[index - 1]), here,
                read(m_table->ranges[index - 1])};
    if (local >= range.localEnd()) {
        const Table::Range& next = m_table->ranges[index + 1];
        return {LocalKind::missing, read(next), here, next.start};
    }
    return {LocalKind::unique, here, here, here};
}

LocalTime Zone::toLocal(Instant at) const
{
    return LocalTime{at.time_since_epoch() + offsetAt(at)};
}

Milliseconds Zone::offsetAt(Instant at) const
{
    return m_table->at(at).offset;
}

std::vector<std::pair<Instant, Milliseconds>> Zone::offsets(Span span) const
{
    std::vector<std::pair<Instant, Milliseconds>> list;
    for (const Table::Range& range : m_table->ranges) {
        const Span part = intersection({range.start, range.end}, span);
        if (!part.empty())
            list.emplace_back(part.start, range.offset);
    }
    return list;
}

Date Zone::localDate(Instant at) const
{
    return Date{std::chrono::floor<days>(toLocal(at))};
}

Instant Zone::startOfDay(Date date) const
{
    return resolve(local_days{date}).change;
}

std::vector<LocalDay> Zone::localDays(Span span) const
{
    std::vector<LocalDay> list;
    if (span.empty())
        return list;
    auto day = local_days{localDate(span.start)};
    // Where clocks go back over midnight, the instant may belong to a day that began before.
    while (startOfDay(Date{day}) > span.start)
        day -= days{1};
    while (startOfDay(Date{day + days{1}}) <= span.start)
        day += days{1};
    for (Instant start = startOfDay(Date{day}); start < span.end;) {
        const Instant end = startOfDay(Date{day + days{1}});
        const Span part = intersection({start, end}, span);
        if (!part.empty())
            list.push_back({Date{day}, part});
        day += days{1};
        start = end;
    }
    return list;
}

} // namespace holdband
