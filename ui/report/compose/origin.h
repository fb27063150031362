// Where and when a report was made, and the texts that every report has.
#pragma once

#include "core/store/logbook_file.h"
#include "ui/report/compose/cells.h"

#include <QString>

namespace holdband::report {

struct Origin {
    QString logbook; ///< its file name, without folders
    QString program; ///< "Holdband 0.1.0"
    Instant made;
};

Origin originOf(const store::LogbookFile& logbook);

/// "spring.holdband · Holdband 0.1.0 · 25 Nov 2026"
QString footerOf(const Origin& origin, const Zone& zone);

/// Logbook, program, date: rows of "Computed from".
void addOrigin(Table& table, const Origin& origin, const Cells& cells);

/// A table of two columns: a name and its value. Ids as in cells.h.
Table factsTable(const char* id, const QString& title);
void addFact(Table& table, const char* id, const QString& what, Cell fact);
void addFact(Table& table, const char* id, const QString& what, const QString& fact);

/// The method in a few sentences.
QString methodInShort();

} // namespace holdband::report
