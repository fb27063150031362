// What belongs to this desk and not to the record: kept in the person's settings file. What is
// kept under each key is said here and nowhere else.
#pragma once

#include <QByteArray>
#include <QString>
#include <QStringList>

namespace holdband::preferences {

/// The folder for the copies of all logbooks; empty: beside each logbook.
QString backupPlace();
void storeBackupPlace(const QString& folder);

/// The logbooks opened last, newest first, absolute paths; those that are gone are left out.
QStringList recentLogbooks();
void noteOpened(const QString& logbook);

/// The window's size, place and state, as Qt writes them; empty: never kept.
QByteArray windowGeometry();
void storeWindowGeometry(const QByteArray& geometry);

} // namespace holdband::preferences
