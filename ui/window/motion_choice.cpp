#include "ui/window/motion_choice.h"

#include "ui/theme/motion.h"
#include "ui/window/preference_menu.h"
#include "ui/words/words.h"

#include <QApplication>
#include <QDBusConnection>
#include <QDBusMessage>
#include <QDBusPendingCallWatcher>
#include <QDBusPendingReply>
#include <QDBusVariant>
#include <QMenu>

namespace holdband::ui {

namespace {

const QString motionKey = QStringLiteral("motion");
const QString lessMotion = QStringLiteral("less");
constexpr int patienceMs = 2000;

/// The answer is a variant, in some versions inside another one.
QVariant plainValue(QVariant value)
{
    while (value.canConvert<QDBusVariant>())
        value = value.value<QDBusVariant>().variant();
    return value;
}

/// The desktop's settings portal, an interface of freedesktop.org. Without one, things move.
void askDesktop()
{
    QDBusMessage question = QDBusMessage::createMethodCall(
        QStringLiteral("org.freedesktop.portal.Desktop"),
        QStringLiteral("/org/freedesktop/portal/desktop"),
        QStringLiteral("org.freedesktop.portal.Settings"), QStringLiteral("Read"));
    question << QStringLiteral("org.gnome.desktop.interface")
             << QStringLiteral("enable-animations");
    auto* answer = new QDBusPendingCallWatcher(
        QDBusConnection::sessionBus().asyncCall(question, patienceMs), qApp);
    QObject::connect(answer, &QDBusPendingCallWatcher::finished, qApp, [answer] {
        const QDBusPendingReply<QDBusVariant> reply = *answer;
        if (!reply.isError() && storedChoice(motionKey) != lessMotion)
            setMotion(plainValue(reply.value().variant()).toBool());
        answer->deleteLater();
    });
}

void takeMotion(const QString& stored)
{
    setMotion(stored != lessMotion);
    if (stored != lessMotion)
        askDesktop();
}

} // namespace

void applyStoredMotion()
{
    takeMotion(storedChoice(motionKey));
}

void addMotionMenu(QMenu& menu)
{
    addChoiceMenu(menu, Words::tr("&Motion"), motionKey,
                  {{QStringLiteral("desktop"), Words::tr("As the &desktop")},
                   {lessMotion, Words::tr("&None")}},
                  takeMotion);
}

} // namespace holdband::ui
