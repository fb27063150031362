#include "core/store/history/undo.h"

#include "core/store/history/entry_changes.h"
#include "core/store/history/history.h"
#include "core/store/readings/imports.h"
#include "core/store/records/equipment.h"
#include "core/store/sqlite/rows.h"
#include "core/text/phrase.h"
#include "core/text/zone.h"

#include <vector>

namespace holdband::store {

namespace {

Result<Instant> lastMidnight(const LogbookFile& logbook)
{
    auto settings = readSettings(logbook);
    HOLDBAND_TRY(settings);
    auto zone = Zone::named(settings->zone);
    HOLDBAND_TRY(zone);
    const auto day = std::chrono::floor<std::chrono::days>(zone->toLocal(logbook.now()));
    return zone->resolve(LocalTime{day}).earlier;
}

/// The steps after the last one from before that time. Counted by their ids: a clock that was set
/// back dates a later step earlier, and one left out of the middle would be undone twice or out of
/// order.
Result<std::vector<UndoStep>> stepsSince(const LogbookFile& logbook, Instant from)
{
    return query(
        logbook.database(),
        // An edit without a record changed nothing that can be undone; the same for the undo of one
        // from another logbook.
        "SELECT id, verb, arguments, why, kind, of FROM acts a WHERE kind <> 'own' "
        "AND id > coalesce((SELECT id FROM acts WHERE at < ? AND kind <> 'own' "
        "ORDER BY id DESC LIMIT 1), -9223372036854775808) "
        "AND EXISTS (SELECT 1 FROM act_changes c WHERE c.act = coalesce(a.of, a.id)) ORDER BY id",
        [](const Statement& row) {
            return UndoStep{{row.integer(0)}, historyEntryFrom(row, 1)};
        },
        toMs(from));
}

/// The edits that can be undone and those that can be redone, the next one last.
struct Stacks {
    std::vector<UndoStep> undo;
    std::vector<UndoStep> redo;
};

void moveLast(std::vector<UndoStep>& from, std::vector<UndoStep>& to)
{
    if (from.empty())
        return; // its edit was before midnight
    to.push_back(std::move(from.back()));
    from.pop_back();
}

Result<Stacks> stacksOf(const LogbookFile& logbook)
{
    auto midnight = lastMidnight(logbook);
    HOLDBAND_TRY(midnight);
    auto steps = stepsSince(logbook, *midnight);
    HOLDBAND_TRY(steps);
    Stacks stacks;
    for (UndoStep& step : *steps) {
        if (step.entry.kind == HistoryKind::undo) {
            moveLast(stacks.undo, stacks.redo);
        } else if (step.entry.kind == HistoryKind::redo) {
            moveLast(stacks.redo, stacks.undo);
        } else if (step.entry.kind == HistoryKind::edit) {
            stacks.undo.push_back(std::move(step));
            stacks.redo.clear();
        }
    }
    return stacks;
}

Result<HistoryEntry> applyStep(const LogbookFile& logbook, const UndoStep& step, HistoryKind kind)
{
    const HistoryEntry entry{step.entry.verb, step.entry.arguments, {}, kind, step.id};
    auto change = Change::begin(logbook, entry);
    HOLDBAND_TRY(change);
    const Database& database = logbook.database();
    auto changes = changesOf(database, step.id);
    HOLDBAND_TRY(changes);
    auto touched = TouchedImports::in(database, *changes);
    HOLDBAND_TRY(touched);
    auto wanted = kind == HistoryKind::undo ? inverted(database, *changes) : changes;
    HOLDBAND_TRY(wanted);
    HOLDBAND_TRY(applyChanges(database, *wanted));
    HOLDBAND_TRY(touched->settle(database));
    HOLDBAND_TRY(change->commit());
    return entry;
}

} // namespace

Result<UndoState> readUndoState(const LogbookFile& logbook)
{
    auto stacks = stacksOf(logbook);
    HOLDBAND_TRY(stacks);
    UndoState state;
    if (!stacks->undo.empty())
        state.undo = std::move(stacks->undo.back());
    if (!stacks->redo.empty())
        state.redo = std::move(stacks->redo.back());
    return state;
}

Result<HistoryEntry> undoLast(const LogbookFile& logbook)
{
    auto stacks = stacksOf(logbook);
    HOLDBAND_TRY(stacks);
    if (stacks->undo.empty())
        return dataProblem(Phrase::tr("there is no change since midnight to undo"));
    return applyStep(logbook, stacks->undo.back(), HistoryKind::undo);
}

Result<HistoryEntry> redoLast(const LogbookFile& logbook)
{
    auto stacks = stacksOf(logbook);
    HOLDBAND_TRY(stacks);
    if (stacks->redo.empty())
        return dataProblem(Phrase::tr("there is nothing to redo"));
    return applyStep(logbook, stacks->redo.back(), HistoryKind::redo);
}

} // namespace holdband::store
