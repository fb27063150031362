#include "core/store/history.h"

#include "core/store/act_changes.h"
#include "core/store/rows.h"

#include <limits>

namespace holdband::store {

Result<std::vector<HistoryEntry>> readHistory(const LogbookFile& logbook, int most,
                                              std::optional<ActId> before)
{
    const std::int64_t below = before ? before->value : std::numeric_limits<std::int64_t>::max();
    return query(
        logbook.database(),
        // The last undo or redo of an act tells whether it stands.
        "SELECT a.id, a.at, a.what, a.why, a.kind, coalesce((SELECT l.kind FROM acts l "
        "WHERE l.of = a.id ORDER BY l.id DESC LIMIT 1), '') = 'undo' "
        "FROM acts a WHERE a.id < ? ORDER BY a.id DESC LIMIT ?",
        [](const Statement& row) {
            return HistoryEntry{
                {row.integer(0)}, instantFromMs(row.integer(1)), row.text(2),
                row.text(3),      actKindNamed(row.text(4)),     row.integer(5) != 0};
        },
        below, most);
}

Result<std::vector<ChangedRow>> readChangedRows(const LogbookFile& logbook, ActId act)
{
    auto changes = changesOf(logbook.database(), act);
    HOLDBAND_TRY(changes);
    return rowsOf(logbook.database(), *changes);
}

} // namespace holdband::store
