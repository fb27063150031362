#include "core/preferences/preferences.h"

#include <QFileInfo>
#include <QSettings>

namespace holdband::preferences {

namespace {

constexpr int mostRecent = 5;
const QString settingsName = QStringLiteral("holdband");
const QString backupKey = QStringLiteral("backup-place");
const QString recentKey = QStringLiteral("recent-logbooks");
const QString safetyKey = QStringLiteral("safety-shown");
const QString geometryKey = QStringLiteral("window-geometry");

QVariant stored(const QString& key)
{
    return QSettings(settingsName, settingsName).value(key);
}

void keep(const QString& key, const QVariant& value)
{
    QSettings(settingsName, settingsName).setValue(key, value);
}

} // namespace

QString backupPlace()
{
    return stored(backupKey).toString();
}

void storeBackupPlace(const QString& folder)
{
    keep(backupKey, folder);
}

QStringList recentLogbooks()
{
    QStringList paths = stored(recentKey).toStringList();
    paths.removeIf([](const QString& path) { return !QFileInfo::exists(path); });
    return paths.mid(0, mostRecent);
}

void noteOpened(const QString& logbook)
{
    const QString path = QFileInfo(logbook).absoluteFilePath();
    QStringList paths = recentLogbooks();
    paths.removeAll(path);
    paths.prepend(path);
    keep(recentKey, paths.mid(0, mostRecent));
}

QByteArray windowGeometry()
{
    return stored(geometryKey).toByteArray();
}

void storeWindowGeometry(const QByteArray& geometry)
{
    keep(geometryKey, geometry);
}

QStringList kindsWithSafetyShown()
{
    return stored(safetyKey).toStringList();
}

void noteSafetyShown(const QStringList& kinds)
{
    QStringList all = kindsWithSafetyShown();
    all << kinds;
    all.removeDuplicates();
    keep(safetyKey, all);
}

} // namespace holdband::preferences
