#include "core/store/sqlite/sqlite_error.h"

#include <sqlite3.h>

namespace holdband::store {

Phrase lostItsName()
{
    return Phrase::tr("the logbook was deleted, moved or replaced while it was open; nothing was "
                      "saved");
}

std::string sqliteErrorText(int code, const std::string& message)
{
    if (code == SQLITE_READONLY_DBMOVED)
        return lostItsName();
    switch (code & 0xff) {
    case SQLITE_NOTADB:
        return Phrase::tr("this is no logbook (it is not an SQLite file)");
    case SQLITE_CORRUPT:
        return Phrase::tr("the file is damaged");
    case SQLITE_FULL:
        return Phrase::tr("the disk is full; nothing was changed");
    case SQLITE_READONLY:
    case SQLITE_PERM:
        return Phrase::tr("the file can't be written");
    case SQLITE_CANTOPEN:
        return Phrase::tr("the file can't be opened");
    case SQLITE_BUSY:
    case SQLITE_LOCKED:
        return Phrase::tr("another program is using the file");
    case SQLITE_NOMEM:
        return Phrase::tr("there is not enough memory");
    case SQLITE_TOOBIG:
        return Phrase::tr("a value in the file is larger than %1 MiB, which no logbook holds")
            .with(std::to_string(mostBytesOfValue >> 20));
    case SQLITE_IOERR:
        if (code == SQLITE_IOERR_READ || code == SQLITE_IOERR_SHORT_READ)
            return Phrase::tr("the file can't be read now (%1)").with(message);
        return Phrase::tr("reading or writing the file failed (%1)").with(message);
    default:
        return message;
    }
}

std::string sqliteErrorRemedy(int code)
{
    if ((code & 0xff) == SQLITE_IOERR)
        return Phrase::tr("check the disk, then try again");
    if ((code & 0xff) == SQLITE_NOMEM)
        return Phrase::tr("close other programs, then try again");
    if ((code & 0xff) == SQLITE_BUSY)
        return Phrase::tr("wait until it has finished, then try again");
    return {};
}

} // namespace holdband::store
