#include "ui/rounds/status_text.h"

#include "core/text/durations.h"
#include "core/text/times.h"
#include "ui/words/choice_text.h"
#include "ui/words/words.h"

#include <QStringList>

namespace holdband::ui {

namespace {

QString nextRound(const results::RoundsSheet& sheet)
{
    const Instant due = sheet.nextDue;
    if (sheet.dueNow)
        return Words::tr("%1 round is due now (Alt+1)")
            .arg(roundWord(
                sheet.windowOf(results::roundOf(sheet.now, sheet.zone, sheet.settings.rounds))
                    .label));
    const bool today = sheet.zone.localDate(due) == sheet.zone.localDate(sheet.now);
    const QString clock = shown(localClockText(due, sheet.zone));
    return today ? Words::tr("Next round due %1").arg(clock)
                 : Words::tr("Next round due tomorrow %1").arg(clock);
}

} // namespace

QString agoText(Instant then, Instant now)
{
    const double hours = hoursBetween(then, now);
    if (hours < 1.0)
        return Words::tr("%1 min ago").arg(std::max(0, static_cast<int>(hours * 60.0)));
    if (hours < 48.0)
        return Words::tr("%1 h ago").arg(static_cast<int>(hours));
    return Words::counted("%n days ago", "%n day ago", static_cast<std::uint64_t>(hours / 24.0));
}

QString statusText(const results::RoundsSheet& sheet, const QStringList& running)
{
    if (running.isEmpty())
        return Words::tr("No batch is running, so no round is due.");
    QStringList parts{nextRound(sheet)};
    for (const results::RoundRow& row : sheet.rows) {
        if (!row.toRead || row.kind != results::RoundKind::meter ||
            !running.contains(shown(row.setup)))
            continue;
        parts << (row.lastAt ? Words::tr("%1 last read %2")
                                   .arg(shown(row.name), agoText(*row.lastAt, sheet.now))
                             : Words::tr("%1 never read").arg(shown(row.name)));
    }
    return parts.join(QStringLiteral(" · "));
}

} // namespace holdband::ui
