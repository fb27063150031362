// Qt's driver for SQLite: that it is there, and that it is the library that we link. Not for use
// outside core/store.
#pragma once

#include "core/problem.h"

class QSqlDatabase;

namespace holdband::store {

/// Before a connection is made. Problem (file): the driver is not installed (the sentence names its
/// package).
Done checkDriverThere();

/// Of an open connection, before its handle is used. Problem (file): the driver has another SQLite
/// than the one this program links, or that one is too old or lacks the session extension.
Done checkDriverFits(const QSqlDatabase& connection);

} // namespace holdband::store
