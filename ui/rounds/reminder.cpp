#include "ui/rounds/reminder.h"

#include "core/results/rounds/round_calendar.h"
#include "ui/session/session.h"
#include "ui/words/choice_text.h"
#include "ui/words/words.h"

#include <QDBusConnection>
#include <QDBusMessage>
#include <QDBusPendingCall>
#include <QTimer>
#include <QVariantMap>

namespace holdband::ui {

namespace {

constexpr std::chrono::minutes lookEvery{1};

bool readSince(const results::RoundsSheet& sheet, Instant opened)
{
    return std::any_of(sheet.rows.begin(), sheet.rows.end(), [&](const results::RoundRow& row) {
        return row.kind == results::RoundKind::meter && row.lastAt && *row.lastAt >= opened;
    });
}

/// The sheet has a gravity row for each running batch.
bool batchRuns(const results::RoundsSheet& sheet)
{
    return std::any_of(sheet.rows.begin(), sheet.rows.end(), [](const results::RoundRow& row) {
        return row.toRead && row.kind == results::RoundKind::gravity;
    });
}

} // namespace

std::optional<Instant> roundToAnnounce(const results::RoundsSheet& sheet,
                                       const std::optional<Instant>& announced)
{
    if (sheet.rows.empty() || !batchRuns(sheet))
        return std::nullopt;
    const auto& windows = sheet.settings.rounds;
    const results::RoundColumn round = results::roundOf(sheet.now, sheet.zone, windows);
    const Instant opened = results::opensAt(round, sheet.zone, windows);
    const bool open =
        opened <= sheet.now && sheet.now < results::missedFrom(round, sheet.zone, windows);
    if (!open || announced == opened || readSince(sheet, opened))
        return std::nullopt;
    return opened;
}

Reminder::Reminder(Session& session, Notify notify, QObject* parent)
    : QObject(parent), m_session(&session), m_notify(std::move(notify))
{
    auto* minute = new QTimer(this);
    minute->start(lookEvery);
    connect(minute, &QTimer::timeout, this, &Reminder::look);
}

void Reminder::setOn(bool on)
{
    m_on = on;
    if (on)
        look();
}

void Reminder::look()
{
    if (!m_session->isOpen())
        return;
    m_session->ask<results::RoundsSheet>(
        this, [](const store::LogbookFile& file) { return results::reviewRounds(file); },
        [this](Result<results::RoundsSheet> sheet) {
            if (sheet)
                take(*sheet);
        });
}

void Reminder::take(const results::RoundsSheet& sheet)
{
    Q_EMIT sheetRead(sheet);
    const auto due = m_on ? roundToAnnounce(sheet, m_announced) : std::nullopt;
    if (!due)
        return;
    m_announced = due;
    const auto& windows = sheet.settings.rounds;
    const results::RoundColumn round = results::roundOf(sheet.now, sheet.zone, windows);
    m_notify(Words::tr("%1 round").arg(roundWord(sheet.windowOf(round).label)),
             Words::tr("The meters are to be read."));
}

void notifyDesktop(const QString& title, const QString& words)
{
    QDBusMessage call = QDBusMessage::createMethodCall(
        QStringLiteral("org.freedesktop.Notifications"),
        QStringLiteral("/org/freedesktop/Notifications"),
        QStringLiteral("org.freedesktop.Notifications"), QStringLiteral("Notify"));
    constexpr uint replacesNone = 0;
    constexpr int asLongAsUsual = -1;
    call << QStringLiteral("Holdband") << replacesNone << QString() << title
         << words.toHtmlEscaped() << QStringList() << QVariantMap() << asLongAsUsual;
    QDBusConnection::sessionBus().asyncCall(call);
}

} // namespace holdband::ui
