#include "ui/lanes/lanes_words.h"

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

QString meaningOf(const review::LaneBar& bar)
{
    switch (bar.verdict) {
    case Verdict::left:
        return bar.mark == "1" ? QStringLiteral("it left its band once")
                               : QStringLiteral("it left its band %1 times").arg(shown(bar.mark));
    case Verdict::missed:
        return QStringLiteral("a target was missed");
    case Verdict::stayed:
        return QStringLiteral("it stayed in its band");
    case Verdict::notEnoughData:
        break;
    }
    return QStringLiteral("not enough data to say");
}

QString countOf(const std::vector<const review::LaneBar*>& bars, Verdict verdict, bool open,
                const QString& words)
{
    const auto count = std::count_if(bars.begin(), bars.end(), [&](const review::LaneBar* bar) {
        return open ? bar->open : !bar->open && bar->verdict == verdict;
    });
    return count > 0 ? QStringLiteral("%1 %2").arg(count).arg(words) : QString();
}

} // namespace

QString markMeaning(const review::LaneBar& bar)
{
    QString meaning = shown(bar.mark) + QLatin1Char(' ');
    if (bar.verdict == Verdict::left)
        meaning.clear(); // the number stands in the words
    if (!bar.open)
        return meaning + meaningOf(bar);
    if (bar.verdict == Verdict::left)
        return meaningOf(bar) + QStringLiteral(", and it is still open");
    return meaning + QStringLiteral("still open: ") + meaningOf(bar) + QStringLiteral(" so far");
}

QString spanWords(const review::LaneBar& bar, const Zone& zone)
{
    const QString days = numberText(bar.span.hours() / 24.0, 1);
    const QString from = shown(localText(bar.span.start, zone));
    if (bar.open)
        return QStringLiteral("%1 – still open (%2 days so far)").arg(from, days);
    return QStringLiteral("%1 – %2 (%3 days)")
        .arg(from, shown(localText(bar.span.end, zone)), days);
}

QString barWords(const review::LaneBar& bar, const Zone& zone)
{
    return QStringList{shown(bar.batch), spanWords(bar, zone), shown(bar.headline),
                       markMeaning(bar)}
        .join(QLatin1Char('\n'));
}

QString groupWords(const std::vector<const review::LaneBar*>& bars, const Zone& zone)
{
    QStringList counts{
        countOf(bars, Verdict::stayed, false, QStringLiteral("stayed in the band")),
        countOf(bars, Verdict::left, false, QStringLiteral("left it")),
        countOf(bars, Verdict::missed, false, QStringLiteral("missed a target")),
        countOf(bars, Verdict::notEnoughData, false, QStringLiteral("without enough data")),
        countOf(bars, Verdict::stayed, true, QStringLiteral("still open")),
    };
    counts.removeAll(QString());
    return QStringLiteral("%1 batches, %2 – %3\n%4\nClick to zoom to them.")
        .arg(bars.size())
        .arg(dayOf(bars.front()->span.start, zone), dayOf(bars.back()->span.end, zone),
             counts.join(QStringLiteral(", ")));
}

QString roundsWords(const PlacedTick& tick, const Zone& zone)
{
    const QString at = shown(localText(tick.span.start, zone));
    if (tick.rounds == 1)
        return tick.missed > 0 ? QStringLiteral("Missed: the round of %1").arg(at)
                               : QStringLiteral("Read: %1").arg(at);
    const QString missed = tick.missed == 0 ? QStringLiteral("all read")
                                            : QStringLiteral("%1 of them missed").arg(tick.missed);
    return QStringLiteral("%1 rounds, %2\n%3 – %4")
        .arg(tick.rounds)
        .arg(missed, dayOf(tick.span.start, zone), dayOf(tick.span.end, zone));
}

} // namespace holdband::ui
