#include "core/store/sqlite/driver.h"

#include "core/text/phrase.h"

#include <QSqlDatabase>
#include <QSqlError>
#include <QSqlQuery>
#include <QVariant>
#include <sqlite3.h>

namespace holdband::store {

namespace {

constexpr int oldestVersion = 3'037'000; ///< the first with STRICT tables

/// "3.40.1 2022-12-28 …": a build of one version, from its sources.
QString libraryOf(const QSqlDatabase& connection)
{
    QSqlQuery query(connection);
    const bool read =
        query.exec(QStringLiteral("SELECT sqlite_version() || ' ' || sqlite_source_id()")) &&
        query.next();
    return read ? query.value(0).toString() : QString();
}

QString ourLibrary()
{
    return QString::fromUtf8(sqlite3_libversion()) + QLatin1Char(' ') +
           QString::fromUtf8(sqlite3_sourceid());
}

bool hasSessions()
{
    return sqlite3_compileoption_used("ENABLE_SESSION") != 0 &&
           sqlite3_compileoption_used("ENABLE_PREUPDATE_HOOK") != 0;
}

} // namespace

Done checkDriverThere()
{
    static const bool there = QSqlDatabase::isDriverAvailable(QStringLiteral("QSQLITE"));
    if (there)
        return {};
    return fileProblem(Phrase::tr("Qt's driver for SQLite is not installed, so no logbook can be "
                                  "opened"),
                       {}, Phrase::tr("install the package libqt6sql6-sqlite"));
}

Done checkDriverFits(const QSqlDatabase& connection)
{
    static const QString theirs = libraryOf(connection);
    if (theirs != ourLibrary())
        return fileProblem(
            Phrase::tr("Qt's driver for SQLite has another SQLite (%1) than this program (%2)")
                .with(theirs.toStdString(), ourLibrary().toStdString()),
            {}, Phrase::tr("install both from the same release of the system"));
    if (sqlite3_libversion_number() < oldestVersion || !hasSessions())
        return fileProblem(Phrase::tr("SQLite %1 is too old or was built without sessions")
                               .with(sqlite3_libversion()),
                           {},
                           Phrase::tr("install SQLite 3.37 or later with the session extension"));
    return {};
}

} // namespace holdband::store
