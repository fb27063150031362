// The history's entry for one change: a verb as a code, and its names and counts. The text is made
// when it is shown (history_text.h), in the language of the reader.
#pragma once

#include "core/model/names.h"
#include "core/store/records/ids.h"

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace holdband::store {

/// What was done, with the arguments in brackets. In order of the codes in history_entry.cpp.
enum class HistoryVerb {
    other, ///< (a sentence) that no version of this program writes
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

/// Who brought a change about. `own`: the program itself, as with the rows of a watched file;
/// undo passes over such changes.
enum class HistoryKind { edit, own, undo, redo };

/// Of an undo or redo the verb and arguments are those of the entry that it undoes or redoes.
struct HistoryEntry {
    HistoryVerb verb = HistoryVerb::other;
    std::vector<std::string> arguments = {};
    std::string why = {};
    HistoryKind kind = HistoryKind::edit;
    std::optional<HistoryEntryId> of = {}; ///< the entry that is undone or redone

    bool operator==(const HistoryEntry&) const = default;
};

/// The codes of verbs and kinds, as stored in logbooks and descriptions.
std::string_view codeOf(HistoryVerb verb);
std::optional<HistoryVerb> historyVerbOf(std::string_view code);
/// `own` for an unknown name, so that undo passes over what it doesn't know.
HistoryKind historyKindNamed(std::string_view name);

std::vector<HistoryVerb> allHistoryVerbs();

/// Arguments as stored: a JSON list of texts. Anything else is read as an empty list.
std::string argumentsText(std::span<const std::string> arguments);
std::vector<std::string> argumentsFrom(std::string_view text);

} // namespace holdband::store

template <>
struct holdband::ChoiceNames<holdband::store::HistoryKind> {
    using Kind = store::HistoryKind;
    static constexpr std::array<std::pair<Kind, std::string_view>, 4> all{{
        {Kind::edit, "edit"},
        {Kind::own, "own"},
        {Kind::undo, "undo"},
        {Kind::redo, "redo"},
    }};
};
