// Settings of this computer rather than of the record: stored in the person's settings file. The
// keys and their values are documented only here.
#pragma once

#include <QByteArray>
#include <QString>
#include <QStringList>

namespace holdband::preferences {

/// The folder for the copies of all logbooks; empty: beside each logbook.
QString backupPlace();
void storeBackupPlace(const QString& folder);

/// The logbooks opened last, newest first, absolute paths; missing files are left out.
QStringList recentLogbooks();
void noteOpened(const QString& logbook);

/// The window's size, position and state, as Qt writes them; empty: never saved.
QByteArray windowGeometry();
void storeWindowGeometry(const QByteArray& geometry);

/// The kinds of setups whose cautions were shown once, in small letters.
QStringList kindsWithSafetyShown();
void noteSafetyShown(const QStringList& kinds);

} // namespace holdband::preferences
