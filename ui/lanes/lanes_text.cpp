#include "ui/lanes/lanes_text.h"

#include "core/text/times.h"
#include "ui/words/words.h"

#include <QStringList>
#include <algorithm>
#include <array>

namespace holdband::ui {

namespace {

using analysis::Verdict;

QString dayOf(Instant at, const Zone& zone)
{
    return shown(dateText(zone.localDate(at)));
}

QString meaningOf(const results::LaneBar& bar)
{
    switch (bar.verdict) {
    case Verdict::left:
        return Words::counted("it left its band %n times", "it left its band once",
                              shown(bar.mark).toULongLong());
    case Verdict::missed:
        return Words::tr("a target was missed");
    case Verdict::stayed:
        return Words::tr("it stayed in its band");
    case Verdict::notEnoughData:
        break;
    }
    return Words::tr("not enough data to say");
}

QString countOf(const std::vector<const results::LaneBar*>& bars, Verdict verdict, bool open,
                QString (*words)(std::uint64_t count))
{
    const auto count = std::count_if(bars.begin(), bars.end(), [&](const results::LaneBar* bar) {
        return open ? bar->open : !bar->open && bar->verdict == verdict;
    });
    return count > 0 ? words(static_cast<std::uint64_t>(count)) : QString();
}

} // namespace

QString markMeaning(const results::LaneBar& bar)
{
    QString meaning = shown(bar.mark) + QLatin1Char(' ');
    if (bar.verdict == Verdict::left)
        meaning.clear(); // the number is already in the text
    if (!bar.open)
        return meaning + meaningOf(bar);
    if (bar.verdict == Verdict::left)
        return Words::tr("%1, and it is still open").arg(meaningOf(bar));
    return meaning + Words::tr("still open: %1 so far").arg(meaningOf(bar));
}

QString spanText(const results::LaneBar& bar, const Zone& zone)
{
    const QString days = numberText(bar.span.hours() / 24.0, 1);
    const QString from = shown(localText(bar.span.start, zone));
    if (bar.open)
        return Words::tr("%1 – still open (%2 days so far)").arg(from, days);
    return Words::tr("%1 – %2 (%3 days)").arg(from, shown(localText(bar.span.end, zone)), days);
}

QString barText(const results::LaneBar& bar, const Zone& zone)
{
    return QStringList{shown(bar.batch), spanText(bar, zone), shown(bar.headline), markMeaning(bar)}
        .join(QLatin1Char('\n'));
}

QString groupText(const std::vector<const results::LaneBar*>& bars, const Zone& zone)
{
    QStringList counts{
        countOf(bars, Verdict::stayed, false,
                [](std::uint64_t n) {
                    return Words::counted("%n stayed in the band", "%n stayed in the band", n);
                }),
        countOf(bars, Verdict::left, false,
                [](std::uint64_t n) { return Words::counted("%n left it", "%n left it", n); }),
        countOf(bars, Verdict::missed, false,
                [](std::uint64_t n) {
                    return Words::counted("%n missed a target", "%n missed a target", n);
                }),
        countOf(bars, Verdict::notEnoughData, false,
                [](std::uint64_t n) {
                    return Words::counted("%n without enough data", "%n without enough data", n);
                }),
        countOf(
            bars, Verdict::stayed, true,
            [](std::uint64_t n) { return Words::counted("%n still open", "%n still open", n); }),
    };
    counts.removeAll(QString());
    return Words::counted("%n batches, %1 – %2\n%3\nClick to zoom to them.",
                          "%n batch, %1 – %2\n%3\nClick to zoom to it.", bars.size())
        .arg(dayOf(bars.front()->span.start, zone), dayOf(bars.back()->span.end, zone),
             counts.join(QStringLiteral(", ")));
}

QString roundsText(const PlacedTick& tick, const Zone& zone)
{
    const QString at = shown(localText(tick.span.start, zone));
    if (tick.rounds == 1)
        return tick.missed > 0 ? Words::tr("Missed: the round of %1").arg(at)
                               : Words::tr("Read: %1").arg(at);
    const QString missed =
        tick.missed == 0 ? Words::tr("all read") : Words::tr("%1 of them missed").arg(tick.missed);
    return Words::counted("%n rounds, %1\n%2 – %3", "%n round, %1\n%2 – %3",
                          static_cast<std::size_t>(tick.rounds))
        .arg(missed, dayOf(tick.span.start, zone), dayOf(tick.span.end, zone));
}

} // namespace holdband::ui
