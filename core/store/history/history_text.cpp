#include "core/store/history/history_text.h"

#include "core/text/phrase.h"
#include "core/text/times.h"
#include "core/text/zone.h"

#include <QtGlobal>
#include <array>
#include <charconv>

namespace holdband::store {

namespace {

struct VerbText {
    HistoryVerb verb;
    const char* text;
    const char* alone = nullptr; ///< used if the entry has no argument
};

/// Verbs with a count are in countedVerb.
constexpr std::array verbTexts{
    VerbText{HistoryVerb::logbookCreated, QT_TRANSLATE_NOOP("Phrase", "created the logbook")},
    VerbText{HistoryVerb::descriptionLoaded, QT_TRANSLATE_NOOP("Phrase", "loaded %1")},
    VerbText{HistoryVerb::importMade, QT_TRANSLATE_NOOP("Phrase", "imported %1")},
    VerbText{HistoryVerb::importWithdrawn, QT_TRANSLATE_NOOP("Phrase", "withdrew %1")},
    VerbText{HistoryVerb::importRestored, QT_TRANSLATE_NOOP("Phrase", "restored %1")},
    VerbText{HistoryVerb::columnsRemembered,
             QT_TRANSLATE_NOOP("Phrase", "saved how the columns of a log are read")},
    VerbText{HistoryVerb::watchStarted, QT_TRANSLATE_NOOP("Phrase", "started watching %1")},
    VerbText{HistoryVerb::watchStopped, QT_TRANSLATE_NOOP("Phrase", "stopped watching %1")},
    VerbText{HistoryVerb::watchRowsAdded, QT_TRANSLATE_NOOP("Phrase", "added new rows of %1")},
    VerbText{HistoryVerb::targetAdded, QT_TRANSLATE_NOOP("Phrase", "added %1")},
    VerbText{HistoryVerb::roundTyped, QT_TRANSLATE_NOOP("Phrase", "saved a round")},
    VerbText{HistoryVerb::readingCorrected,
             QT_TRANSLATE_NOOP("Phrase", "corrected a reading of %1")},
    VerbText{HistoryVerb::readingNoteChanged,
             QT_TRANSLATE_NOOP("Phrase", "changed the note of a reading of %1")},
    VerbText{HistoryVerb::gravityCorrected,
             QT_TRANSLATE_NOOP("Phrase", "corrected a gravity of %1")},
    VerbText{HistoryVerb::gravityNoteChanged,
             QT_TRANSLATE_NOOP("Phrase", "changed the note of a gravity of %1")},
    VerbText{HistoryVerb::gravityDeleted, QT_TRANSLATE_NOOP("Phrase", "deleted a gravity of %1")},
    VerbText{HistoryVerb::stretchLeftOut, QT_TRANSLATE_NOOP("Phrase", "left out a stretch of %1")},
    VerbText{HistoryVerb::stretchRestored, QT_TRANSLATE_NOOP("Phrase", "restored a stretch of %1")},
    VerbText{HistoryVerb::noteAdded, QT_TRANSLATE_NOOP("Phrase", "added a note to %1"),
             QT_TRANSLATE_NOOP("Phrase", "added a note")},
    VerbText{HistoryVerb::noteChanged, QT_TRANSLATE_NOOP("Phrase", "changed a note of %1"),
             QT_TRANSLATE_NOOP("Phrase", "changed a note")},
    VerbText{HistoryVerb::noteDeleted, QT_TRANSLATE_NOOP("Phrase", "deleted a note of %1"),
             QT_TRANSLATE_NOOP("Phrase", "deleted a note")},
    VerbText{HistoryVerb::setupAdded, QT_TRANSLATE_NOOP("Phrase", "added setup %1")},
    VerbText{HistoryVerb::setupChanged, QT_TRANSLATE_NOOP("Phrase", "changed setup %1")},
    VerbText{HistoryVerb::setupRemoved, QT_TRANSLATE_NOOP("Phrase", "removed setup %1")},
    VerbText{HistoryVerb::setupRetired, QT_TRANSLATE_NOOP("Phrase", "retired setup %1")},
    VerbText{HistoryVerb::setupRestored, QT_TRANSLATE_NOOP("Phrase", "restored setup %1")},
    VerbText{HistoryVerb::sensorAdded, QT_TRANSLATE_NOOP("Phrase", "added sensor %1")},
    VerbText{HistoryVerb::sensorChanged, QT_TRANSLATE_NOOP("Phrase", "changed sensor %1")},
    VerbText{HistoryVerb::sensorRemoved, QT_TRANSLATE_NOOP("Phrase", "removed sensor %1")},
    VerbText{HistoryVerb::sensorRetired, QT_TRANSLATE_NOOP("Phrase", "retired sensor %1")},
    VerbText{HistoryVerb::sensorRestored, QT_TRANSLATE_NOOP("Phrase", "restored sensor %1")},
    VerbText{HistoryVerb::meterAdded, QT_TRANSLATE_NOOP("Phrase", "added meter %1")},
    VerbText{HistoryVerb::meterChanged, QT_TRANSLATE_NOOP("Phrase", "changed meter %1")},
    VerbText{HistoryVerb::meterRemoved, QT_TRANSLATE_NOOP("Phrase", "removed meter %1")},
    VerbText{HistoryVerb::meterRetired, QT_TRANSLATE_NOOP("Phrase", "retired meter %1")},
    VerbText{HistoryVerb::meterRestored, QT_TRANSLATE_NOOP("Phrase", "restored meter %1")},
    VerbText{HistoryVerb::meterReplaced, QT_TRANSLATE_NOOP("Phrase", "replaced %2 with %1")},
    VerbText{HistoryVerb::planSaved, QT_TRANSLATE_NOOP("Phrase", "saved plan %1")},
    VerbText{HistoryVerb::planRemoved, QT_TRANSLATE_NOOP("Phrase", "removed plan %1")},
    VerbText{HistoryVerb::batchPitched, QT_TRANSLATE_NOOP("Phrase", "pitched %1")},
    VerbText{HistoryVerb::batchChanged, QT_TRANSLATE_NOOP("Phrase", "changed batch %1")},
    VerbText{HistoryVerb::batchRemoved, QT_TRANSLATE_NOOP("Phrase", "removed batch %1")},
    VerbText{HistoryVerb::batchEnded, QT_TRANSLATE_NOOP("Phrase", "ended batch %1")},
    VerbText{HistoryVerb::batchReopened, QT_TRANSLATE_NOOP("Phrase", "reopened batch %1")},
    VerbText{HistoryVerb::stageEnded, QT_TRANSLATE_NOOP("Phrase", "ended %2 of %1")},
    VerbText{HistoryVerb::limitsChanged, QT_TRANSLATE_NOOP("Phrase", "changed the limits of %1")},
    VerbText{HistoryVerb::causeGiven,
             QT_TRANSLATE_NOOP("Phrase", "set the cause of the excursion of %1 on %2")},
    VerbText{HistoryVerb::settingsChanged,
             QT_TRANSLATE_NOOP("Phrase", "changed units, time zone or currency")},
    VerbText{HistoryVerb::roundsChanged, QT_TRANSLATE_NOOP("Phrase", "changed the rounds")},
    VerbText{HistoryVerb::pricesChanged,
             QT_TRANSLATE_NOOP("Phrase", "changed the price of energy")},
    VerbText{HistoryVerb::weighingChanged,
             QT_TRANSLATE_NOOP("Phrase", "changed how setups are weighed")},
};

/// Empty if the entry has fewer arguments.
std::string argument(const HistoryEntry& entry, std::size_t place)
{
    return place < entry.arguments.size() ? entry.arguments[place] : std::string();
}

std::optional<std::uint64_t> countAt(const HistoryEntry& entry, std::size_t place)
{
    const std::string text = argument(entry, place);
    std::uint64_t count = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), count);
    if (error != std::errc() || end != text.data() + text.size())
        return std::nullopt;
    return count;
}

std::optional<std::string> countedVerb(const HistoryEntry& entry)
{
    if (entry.verb == HistoryVerb::roundTyped) {
        if (const auto count = countAt(entry, 0))
            return Phrase::counted("saved a round of %n readings", "saved a round of %n reading",
                                   *count);
        return std::nullopt;
    }
    const std::uint64_t count = countAt(entry, 1).value_or(1);
    if (entry.verb == HistoryVerb::readingDeleted)
        return Phrase::counted("deleted %n readings of %1", "deleted a reading of %1", count)
            .with(argument(entry, 0));
    if (entry.verb == HistoryVerb::readingRestored)
        return Phrase::counted("restored %n readings of %1", "restored a reading of %1", count)
            .with(argument(entry, 0));
    return std::nullopt;
}

/// The stored wall-clock time as "7 Mar 18:30" in the language of the reader. Entries of older
/// versions already have such a text.
std::string wallClock(const std::string& localTime)
{
    const auto utc = Zone::named("UTC");
    if (!utc)
        return localTime;
    const auto at = parseTime(localTime, *utc);
    return at ? localShortText(*at, *utc) : localTime;
}

std::string verbText(const HistoryEntry& entry)
{
    if (const auto counted = countedVerb(entry))
        return *counted;
    for (const VerbText& each : verbTexts) {
        if (each.verb != entry.verb)
            continue;
        if (each.alone && entry.arguments.empty())
            return Phrase::tr(each.alone);
        const bool timed = entry.verb == HistoryVerb::causeGiven;
        return Phrase::tr(each.text).with(argument(entry, 0), timed ? wallClock(argument(entry, 1))
                                                                    : argument(entry, 1));
    }
    return argument(entry, 0); // `other`
}

} // namespace

std::string historyText(const HistoryEntry& entry)
{
    if (entry.kind == HistoryKind::undo)
        return Phrase::tr("undid: %1").with(verbText(entry));
    if (entry.kind == HistoryKind::redo)
        return Phrase::tr("redid: %1").with(verbText(entry));
    return verbText(entry);
}

} // namespace holdband::store
