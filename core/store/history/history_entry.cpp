#include "core/store/history/history_entry.h"

#include <algorithm>
#include <array>
#include <nlohmann/json.hpp>
#include <utility>

namespace holdband::store {

namespace {

/// Logbooks and descriptions store these codes: never change one.
constexpr std::array<std::pair<HistoryVerb, std::string_view>, 54> verbCodes{{
    {HistoryVerb::other, "other"},
    {HistoryVerb::logbookCreated, "logbook.created"},
    {HistoryVerb::descriptionLoaded, "description.loaded"},
    {HistoryVerb::importMade, "import.made"},
    {HistoryVerb::importWithdrawn, "import.withdrawn"},
    {HistoryVerb::importRestored, "import.restored"},
    {HistoryVerb::columnsRemembered, "columns.remembered"},
    {HistoryVerb::watchStarted, "watch.started"},
    {HistoryVerb::watchStopped, "watch.stopped"},
    {HistoryVerb::watchRowsAdded, "watch.rows_added"},
    {HistoryVerb::targetAdded, "target.added"},
    {HistoryVerb::roundTyped, "round.typed"},
    {HistoryVerb::readingCorrected, "reading.corrected"},
    {HistoryVerb::readingNoteChanged, "reading.note_changed"},
    {HistoryVerb::readingDeleted, "reading.deleted"},
    {HistoryVerb::readingRestored, "reading.restored"},
    {HistoryVerb::gravityCorrected, "gravity.corrected"},
    {HistoryVerb::gravityNoteChanged, "gravity.note_changed"},
    {HistoryVerb::gravityDeleted, "gravity.deleted"},
    {HistoryVerb::stretchLeftOut, "stretch.left_out"},
    {HistoryVerb::stretchRestored, "stretch.restored"},
    {HistoryVerb::noteAdded, "note.added"},
    {HistoryVerb::noteChanged, "note.changed"},
    {HistoryVerb::noteDeleted, "note.deleted"},
    {HistoryVerb::setupAdded, "setup.added"},
    {HistoryVerb::setupChanged, "setup.changed"},
    {HistoryVerb::setupRemoved, "setup.removed"},
    {HistoryVerb::setupRetired, "setup.retired"},
    {HistoryVerb::setupRestored, "setup.restored"},
    {HistoryVerb::sensorAdded, "sensor.added"},
    {HistoryVerb::sensorChanged, "sensor.changed"},
    {HistoryVerb::sensorRemoved, "sensor.removed"},
    {HistoryVerb::sensorRetired, "sensor.retired"},
    {HistoryVerb::sensorRestored, "sensor.restored"},
    {HistoryVerb::meterAdded, "meter.added"},
    {HistoryVerb::meterChanged, "meter.changed"},
    {HistoryVerb::meterRemoved, "meter.removed"},
    {HistoryVerb::meterRetired, "meter.retired"},
    {HistoryVerb::meterRestored, "meter.restored"},
    {HistoryVerb::meterReplaced, "meter.replaced"},
    {HistoryVerb::planSaved, "plan.saved"},
    {HistoryVerb::planRemoved, "plan.removed"},
    {HistoryVerb::batchPitched, "batch.pitched"},
    {HistoryVerb::batchChanged, "batch.changed"},
    {HistoryVerb::batchRemoved, "batch.removed"},
    {HistoryVerb::batchEnded, "batch.ended"},
    {HistoryVerb::batchReopened, "batch.reopened"},
    {HistoryVerb::stageEnded, "stage.ended"},
    {HistoryVerb::limitsChanged, "limits.changed"},
    {HistoryVerb::causeGiven, "cause.given"},
    {HistoryVerb::settingsChanged, "settings.changed"},
    {HistoryVerb::roundsChanged, "rounds.changed"},
    {HistoryVerb::pricesChanged, "prices.changed"},
    {HistoryVerb::weighingChanged, "weighing.changed"},
}};

constexpr bool eachInItsPlace()
{
    for (std::size_t i = 0; i < verbCodes.size(); ++i) {
        if (verbCodes[i].first != static_cast<HistoryVerb>(i))
            return false;
    }
    return verbCodes.back().first == HistoryVerb::weighingChanged;
}
static_assert(eachInItsPlace());

} // namespace

std::string_view codeOf(HistoryVerb verb)
{
    return verbCodes.at(static_cast<std::size_t>(verb)).second;
}

std::optional<HistoryVerb> historyVerbOf(std::string_view code)
{
    for (const auto& [verb, known] : verbCodes) {
        if (known == code)
            return verb;
    }
    return std::nullopt;
}

HistoryKind historyKindNamed(std::string_view name)
{
    return choiceNamed<HistoryKind>(name).value_or(HistoryKind::own);
}

std::vector<HistoryVerb> allHistoryVerbs()
{
    std::vector<HistoryVerb> verbs;
    for (const auto& [verb, code] : verbCodes)
        verbs.push_back(verb);
    return verbs;
}

std::string argumentsText(std::span<const std::string> arguments)
{
    nlohmann::json list = nlohmann::json::array();
    for (const std::string& argument : arguments)
        list.push_back(argument);
    // A file's name may contain bytes that are not UTF-8.
    return list.dump(-1, ' ', false, nlohmann::json::error_handler_t::replace);
}

std::vector<std::string> argumentsFrom(std::string_view text)
{
    const nlohmann::json list = nlohmann::json::parse(text, nullptr, false);
    std::vector<std::string> arguments;
    if (!list.is_array() ||
        !std::all_of(list.begin(), list.end(), [](const auto& each) { return each.is_string(); }))
        return arguments;
    for (const nlohmann::json& argument : list)
        arguments.push_back(argument.get<std::string>());
    return arguments;
}

} // namespace holdband::store
