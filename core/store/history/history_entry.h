// The history's entry for one change: a verb as a code, with its names and counts. history_text.h
// turns it into a text when it is shown, in the language of the reader.
#pragma once

#include "core/store/records/ids.h"

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace holdband::store {

/// The kind of change, with the arguments in brackets. In order of the codes in history_entry.cpp.
enum class HistoryVerb {
    other, ///< (a sentence): not written by any version of this program
    logbookCreated,
    descriptionLoaded, ///< (file)
    importMade,        ///< (file)
    importWithdrawn,   ///< (file)
    importRestored,    ///< (file)
    columnsRemembered,
    watchStarted,       ///< (file or folder)
    watchStopped,       ///< (file or folder)
    watchRowsAdded,     ///< (file)
    targetAdded,        ///< (sensor or meter), by an import
    roundTyped,         ///< (count)
    readingCorrected,   ///< (sensor or meter)
    readingNoteChanged, ///< (sensor or meter)
    readingDeleted,     ///< (sensor or meter, count)
    readingRestored,    ///< (sensor or meter, count)
    gravityCorrected,   ///< (batch)
    gravityNoteChanged, ///< (batch)
    gravityDeleted,     ///< (batch)
    stretchLeftOut,     ///< (sensor)
    stretchRestored,    ///< (sensor)
    noteAdded,          ///< (batch) or none
    noteChanged,        ///< (batch) or none
    noteDeleted,        ///< (batch) or none
    setupAdded,         ///< (setup), as in all of the equipment
    setupChanged,
    setupRemoved,
    setupRetired,
    setupRestored,
    sensorAdded,
    sensorChanged,
    sensorRemoved,
    sensorRetired,
    sensorRestored,
    meterAdded,
    meterChanged,
    meterRemoved,
    meterRetired,
    meterRestored,
    meterReplaced, ///< (new meter, old meter)
    planSaved,     ///< (plan)
    planRemoved,   ///< (plan)
    batchPitched,  ///< (batch)
    batchChanged,  ///< (batch)
    batchRemoved,  ///< (batch)
    batchEnded,    ///< (batch)
    batchReopened, ///< (batch)
    stageEnded,    ///< (batch, stage)
    limitsChanged, ///< (batch)
    causeGiven,    ///< (batch, the excursion's start as local ISO time)
    settingsChanged,
    roundsChanged,
    pricesChanged,
    weighingChanged,
};

/// What made a change. `own`: the program itself, as for the rows of a watched file; undo skips
/// such changes.
enum class HistoryKind { edit, own, undo, redo };

/// For an undo or redo the verb and arguments are those of the entry that it undoes or redoes.
struct HistoryEntry {
    HistoryVerb verb = HistoryVerb::other;
    std::vector<std::string> arguments = {};
    std::string why = {};
    HistoryKind kind = HistoryKind::edit;
    std::optional<HistoryEntryId> of = {}; ///< the entry that is undone or redone

    bool operator==(const HistoryEntry&) const = default;
};

/// The codes of verbs and kinds, as stored in the store and in descriptions.
std::string_view codeOf(HistoryVerb verb);
std::optional<HistoryVerb> historyVerbOf(std::string_view code);
std::string_view nameOf(HistoryKind kind);
/// `own` for an unknown name, so that undo skips entries of an unknown kind.
HistoryKind historyKindNamed(std::string_view name);

std::vector<HistoryVerb> allHistoryVerbs();

/// Arguments as stored: a JSON list of texts. Anything else is read as an empty list.
std::string argumentsText(std::span<const std::string> arguments);
std::vector<std::string> argumentsFrom(std::string_view text);

} // namespace holdband::store
