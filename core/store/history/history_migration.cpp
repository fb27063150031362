#include "core/store/history/history_migration.h"

#include "core/store/sqlite/rows.h"

#include <algorithm>
#include <array>

namespace holdband::store {

namespace {

/// %1 and %2 mark the arguments of the verb in the sentence, %n marks a count, which is the last
/// argument.
struct Pattern {
    std::string_view sentence;
    HistoryVerb verb;
    std::string_view count = {}; ///< the last argument, if only the wording gives the count
};

/// The first that matches is used: sentences that begin with a name come last, because a name may
/// contain the words of any other sentence.
constexpr std::array patterns{
    Pattern{"made the logbook", HistoryVerb::logbookCreated},
    Pattern{"remembered columns", HistoryVerb::columnsRemembered},
    Pattern{"weighed two arrangements", HistoryVerb::weighingChanged},
    Pattern{"units, zone or currency changed", HistoryVerb::settingsChanged},
    Pattern{"rounds changed", HistoryVerb::roundsChanged},
    Pattern{"price of energy changed", HistoryVerb::pricesChanged},
    Pattern{"noted something", HistoryVerb::noteAdded},
    Pattern{"changed a note", HistoryVerb::noteChanged},
    Pattern{"removed a note", HistoryVerb::noteDeleted},
    Pattern{"typed a round", HistoryVerb::roundTyped},
    Pattern{"typed a round of %n reading", HistoryVerb::roundTyped},
    Pattern{"typed a round of %n readings", HistoryVerb::roundTyped},
    Pattern{"corrected a reading of %1", HistoryVerb::readingCorrected},
    Pattern{"corrected a gravity of %1", HistoryVerb::gravityCorrected},
    Pattern{"changed the note of a reading of %1", HistoryVerb::readingNoteChanged},
    Pattern{"changed the note of a gravity of %1", HistoryVerb::gravityNoteChanged},
    Pattern{"changed a note of %1", HistoryVerb::noteChanged},
    Pattern{"removed a note of %1", HistoryVerb::noteDeleted},
    Pattern{"noted something of %1", HistoryVerb::noteAdded},
    Pattern{"took away a reading of %1", HistoryVerb::readingDeleted, "1"},
    Pattern{"took away a gravity of %1", HistoryVerb::gravityDeleted},
    Pattern{"took away %n readings of %1", HistoryVerb::readingDeleted},
    Pattern{"brought back a reading of %1", HistoryVerb::readingRestored, "1"},
    Pattern{"brought back a stretch of %1", HistoryVerb::stretchRestored},
    Pattern{"brought back %n readings of %1", HistoryVerb::readingRestored},
    Pattern{"left out a stretch of %1", HistoryVerb::stretchLeftOut},
    Pattern{"rows of the watched %1", HistoryVerb::watchRowsAdded},
    Pattern{"watched no longer: %1", HistoryVerb::watchStopped},
    Pattern{"watched %1", HistoryVerb::watchStarted},
    Pattern{"imported %1", HistoryVerb::importMade},
    Pattern{"loaded %1", HistoryVerb::descriptionLoaded},
    Pattern{"put back %1", HistoryVerb::importRestored},
    Pattern{"took back %1", HistoryVerb::importWithdrawn},
    Pattern{"set up %1", HistoryVerb::targetAdded},
    Pattern{"plan %1 kept", HistoryVerb::planSaved},
    Pattern{"plan %1 removed", HistoryVerb::planRemoved},
    Pattern{"setup %1 added", HistoryVerb::setupAdded},
    Pattern{"setup %1 changed", HistoryVerb::setupChanged},
    Pattern{"setup %1 removed", HistoryVerb::setupRemoved},
    Pattern{"setup %1 retired", HistoryVerb::setupRetired},
    Pattern{"setup %1 brought back", HistoryVerb::setupRestored},
    Pattern{"sensor %1 added", HistoryVerb::sensorAdded},
    Pattern{"sensor %1 changed", HistoryVerb::sensorChanged},
    Pattern{"sensor %1 removed", HistoryVerb::sensorRemoved},
    Pattern{"sensor %1 retired", HistoryVerb::sensorRetired},
    Pattern{"sensor %1 brought back", HistoryVerb::sensorRestored},
    Pattern{"meter %1 added", HistoryVerb::meterAdded},
    Pattern{"meter %1 changed", HistoryVerb::meterChanged},
    Pattern{"meter %1 removed", HistoryVerb::meterRemoved},
    Pattern{"meter %1 retired", HistoryVerb::meterRetired},
    Pattern{"meter %1 brought back", HistoryVerb::meterRestored},
    Pattern{"%1 took the place of %2", HistoryVerb::meterReplaced},
    Pattern{"%1: cause of the excursion of %2", HistoryVerb::causeGiven},
    Pattern{"%1: limits changed", HistoryVerb::limitsChanged},
    Pattern{"%1: changed", HistoryVerb::batchChanged},
    Pattern{"%1: removed", HistoryVerb::batchRemoved},
    Pattern{"%1: pitched", HistoryVerb::batchPitched},
    Pattern{"%1: reopened", HistoryVerb::batchReopened},
    Pattern{"%1: ended", HistoryVerb::batchEnded},
    Pattern{"%1: %2 ended", HistoryVerb::stageEnded},
};

constexpr std::string_view undoBeginning = "took back: ";
constexpr std::string_view redoBeginning = "did again: ";

bool isCount(std::string_view text)
{
    return !text.empty() && std::all_of(text.begin(), text.end(),
                                        [](char each) { return each >= '0' && each <= '9'; });
}

/// A pattern's text up to its first placeholder, that placeholder, and the rest.
struct Split {
    std::string_view before;
    char place = 0; ///< '1', '2', 'n'; 0: no placeholder is left
    std::string_view after;
};

Split splitAtPlace(std::string_view pattern)
{
    const std::size_t at = pattern.find('%');
    if (at == pattern.npos)
        return {pattern, 0, {}};
    return {pattern.substr(0, at), pattern[at + 1], pattern.substr(at + 2)};
}

struct Places {
    std::optional<std::string_view> first, second, count;

    bool take(char place, std::string_view text)
    {
        (place == '1' ? first : place == '2' ? second : count) = text;
        return place != 'n' || isCount(text);
    }

    std::vector<std::string> arguments() const
    {
        std::vector<std::string> all;
        for (const auto& each : {first, second, count}) {
            if (each)
                all.emplace_back(*each);
        }
        return all;
    }
};

/// The value of a placeholder ends at the first occurrence of the text after it; the last one ends
/// so that the sentence ends with the pattern's end.
std::optional<Places> placesIn(std::string_view sentence, std::string_view pattern)
{
    Places places;
    Split split = splitAtPlace(pattern);
    if (!sentence.starts_with(split.before))
        return std::nullopt;
    sentence.remove_prefix(split.before.size());
    while (split.place != 0) {
        const char place = split.place;
        split = splitAtPlace(split.after);
        const bool last = split.place == 0;
        if (last && !sentence.ends_with(split.before))
            return std::nullopt;
        const std::size_t end =
            last ? sentence.size() - split.before.size() : sentence.find(split.before);
        if (end == sentence.npos || !places.take(place, sentence.substr(0, end)))
            return std::nullopt;
        sentence.remove_prefix(end + split.before.size());
    }
    return sentence.empty() ? std::optional(places) : std::nullopt;
}

std::optional<HistoryEntry> fromPattern(std::string_view sentence)
{
    for (const Pattern& pattern : patterns) {
        const auto places = placesIn(sentence, pattern.sentence);
        if (!places)
            continue;
        HistoryEntry entry{pattern.verb, places->arguments()};
        if (!pattern.count.empty())
            entry.arguments.emplace_back(pattern.count);
        return entry;
    }
    return std::nullopt;
}

HistoryEntry fromSentence(std::string_view sentence)
{
    return fromPattern(sentence).value_or(
        HistoryEntry{HistoryVerb::other, {std::string(sentence)}});
}

} // namespace

HistoryEntry entryFromSentence(std::string_view sentence, HistoryKind kind)
{
    // Tests only the beginning for this kind: a batch may be named "took back: Ale".
    const std::string_view beginning = kind == HistoryKind::undo   ? undoBeginning
                                       : kind == HistoryKind::redo ? redoBeginning
                                                                   : std::string_view();
    if (sentence.starts_with(beginning))
        sentence.remove_prefix(beginning.size());
    HistoryEntry entry = fromSentence(sentence);
    entry.kind = kind;
    return entry;
}

Done convertSentences(const Database& database)
{
    struct Row {
        std::int64_t id;
        HistoryEntry entry;
    };
    auto rows = query(database, "SELECT id, verb, kind FROM acts", [](const Statement& row) {
        return Row{row.integer(0), entryFromSentence(row.text(1), historyKindNamed(row.text(2)))};
    });
    HOLDBAND_TRY(rows);
    auto statement = database.prepare("UPDATE acts SET verb = ?, arguments = ? WHERE id = ?");
    HOLDBAND_TRY(statement);
    for (const Row& row : *rows) {
        const std::string arguments = argumentsText(row.entry.arguments);
        statement->bindAll(codeOf(row.entry.verb), std::string_view(arguments), row.id);
        HOLDBAND_TRY(statement->run());
    }
    return {};
}

} // namespace holdband::store
