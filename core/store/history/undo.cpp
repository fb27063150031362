#include "core/store/history/undo.h"

#include "core/store/history/act_changes.h"
#include "core/store/history/act_words.h"
#include "core/store/history/history.h"
#include "core/store/readings/imports.h"
#include "core/store/records/equipment.h"
#include "core/store/sqlite/rows.h"
#include "core/text/phrase.h"
#include "core/text/zone.h"

#include <vector>

namespace holdband::store {

namespace {

struct Act {
    HistoryEntryId id;
    HistoryKind kind;
    std::string what;
};

Result<Instant> lastMidnight(const LogbookFile& logbook)
{
    auto settings = readSettings(logbook);
    HOLDBAND_TRY(settings);
    auto zone = Zone::named(settings->zone);
    HOLDBAND_TRY(zone);
    const auto day = std::chrono::floor<std::chrono::days>(zone->toLocal(logbook.now()));
    return zone->resolve(LocalTime{day}).earlier;
}

Result<std::vector<Act>> actsSince(const LogbookFile& logbook, Instant from)
{
    return query(
        logbook.database(),
        // An edit without a record changed nothing that could be taken back; likewise the undo of
        // one that came from another logbook.
        "SELECT id, kind, what FROM acts a WHERE at >= ? AND kind <> 'own' AND EXISTS "
        "(SELECT 1 FROM act_changes c WHERE c.act = coalesce(a.of, a.id)) ORDER BY id",
        [](const Statement& row) {
            return Act{{row.integer(0)}, historyKindNamed(row.text(1)), row.text(2)};
        },
        toMs(from));
}

/// The edits that can be taken back and those that can be done again, the next one last.
struct Stacks {
    std::vector<Act> undo;
    std::vector<Act> redo;
};

void moveLast(std::vector<Act>& from, std::vector<Act>& to)
{
    if (from.empty())
        return; // its edit lies before midnight
    to.push_back(std::move(from.back()));
    from.pop_back();
}

Result<Stacks> stacksOf(const LogbookFile& logbook)
{
    auto midnight = lastMidnight(logbook);
    HOLDBAND_TRY(midnight);
    auto acts = actsSince(logbook, *midnight);
    HOLDBAND_TRY(acts);
    Stacks stacks;
    for (Act& act : *acts) {
        if (act.kind == HistoryKind::undo) {
            moveLast(stacks.undo, stacks.redo);
        } else if (act.kind == HistoryKind::redo) {
            moveLast(stacks.redo, stacks.undo);
        } else if (act.kind == HistoryKind::edit) {
            stacks.undo.push_back(std::move(act));
            stacks.redo.clear();
        }
    }
    return stacks;
}

Done applyAct(const LogbookFile& logbook, const Act& act, HistoryKind kind)
{
    const std::string verb = kind == HistoryKind::undo ? "took back: " : "did again: ";
    auto change = Change::begin(logbook, ActWords{verb + act.what, {}, kind, act.id});
    HOLDBAND_TRY(change);
    const Database& database = logbook.database();
    auto changes = changesOf(database, act.id);
    HOLDBAND_TRY(changes);
    auto touched = TouchedImports::in(database, *changes);
    HOLDBAND_TRY(touched);
    auto wanted = kind == HistoryKind::undo ? inverted(database, *changes) : changes;
    HOLDBAND_TRY(wanted);
    HOLDBAND_TRY(applyChanges(database, *wanted));
    HOLDBAND_TRY(touched->settle(database));
    return change->commit();
}

} // namespace

Result<UndoState> readUndoState(const LogbookFile& logbook)
{
    auto stacks = stacksOf(logbook);
    HOLDBAND_TRY(stacks);
    UndoState state;
    if (!stacks->undo.empty()) {
        state.undo = stacks->undo.back().id;
        state.undoWhat = actForPeople(stacks->undo.back().what);
    }
    if (!stacks->redo.empty()) {
        state.redo = stacks->redo.back().id;
        state.redoWhat = actForPeople(stacks->redo.back().what);
    }
    return state;
}

Result<std::string> undoLast(const LogbookFile& logbook)
{
    auto stacks = stacksOf(logbook);
    HOLDBAND_TRY(stacks);
    if (stacks->undo.empty())
        return dataProblem(Phrase::tr("nothing was changed since midnight that could be undone"));
    const Act& act = stacks->undo.back();
    HOLDBAND_TRY(applyAct(logbook, act, HistoryKind::undo));
    return actForPeople(act.what);
}

Result<std::string> redoLast(const LogbookFile& logbook)
{
    auto stacks = stacksOf(logbook);
    HOLDBAND_TRY(stacks);
    if (stacks->redo.empty())
        return dataProblem(Phrase::tr("there is nothing to redo"));
    const Act& act = stacks->redo.back();
    HOLDBAND_TRY(applyAct(logbook, act, HistoryKind::redo));
    return actForPeople(act.what);
}

} // namespace holdband::store
