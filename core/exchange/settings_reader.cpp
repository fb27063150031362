// Reads the settings of the logbook: zone, units, prices, rounds, weighing.
#include "core/exchange/day_names.h"
#include "core/exchange/description_parts.h"
#include "core/text/numbers.h"
#include "core/text/phrase.h"

namespace holdband::exchange {

namespace {

constexpr std::string_view dayList = "mon, tue, wed, thu, fri, sat, sun";

int minuteOfDay(Fields& fields, const char* key)
{
    const std::string text = fields.requiredText(key);
    int hour = -1;
    int minute = -1;
    if (text.size() == 5 && text[2] == ':') {
        const auto digits = [&](std::size_t at) {
            const auto number = scanDecimal(text.substr(at, 2));
            return number ? static_cast<int>(number->value) : -1;
        };
        hour = digits(0);
        minute = digits(3);
    }
    const bool valid = hour >= 0 && minute >= 0 && minute < 60 && hour * 60 + minute <= 1440;
    if (!valid)
        fields.fail(key, Phrase::tr("\"%1\" is no time of day").with(text),
                    Phrase::tr("write it as 16:00"));
    return valid ? hour * 60 + minute : 0;
}

std::array<bool, 7> weekdays(Fields& fields)
{
    std::array<bool, 7> days{true, true, true, true, true, true, true};
    const Json* list = fields.raw("days");
    if (!list)
        return days;
    days.fill(false);
    if (!list->is_array())
        fields.fail("days", Phrase::tr("expected a list of %1").with(dayList));
    if (!list->is_array())
        return days;
    for (const Json& item : *list) {
        const std::string name = item.is_string() ? item.get<std::string>() : "";
        const auto found = std::find(dayNames.begin(), dayNames.end(), name);
        if (found == dayNames.end())
            fields.fail("days", Phrase::tr("\"%1\" is none of %2").with(name, dayList));
        else
            days[static_cast<std::size_t>(found - dayNames.begin())] = true;
    }
    return days;
}

TariffWindow readWindow(Fields fields)
{
    TariffWindow window;
    window.days = weekdays(fields);
    window.fromMinute = minuteOfDay(fields, "from");
    window.toMinute = minuteOfDay(fields, "to");
    window.pricePerKwh = fields.requiredNumber("price_per_kwh", -many, many);
    fields.refuseUnknown();
    return window;
}

TariffChange readTariffChange(Fields fields)
{
    TariffChange change;
    change.from = fields.requiredTime("from");
    change.tariff.pricePerKwh = fields.number("price_per_kwh", -many, many);
    for (Fields& window : fields.objects("time_of_use"))
        change.tariff.windows.push_back(readWindow(window));
    fields.refuseUnknown();
    return change;
}

RoundWindow readRound(Fields fields)
{
    RoundWindow window;
    window.label = fields.requiredText("label");
    window.fromMinute = minuteOfDay(fields, "from");
    window.toMinute = minuteOfDay(fields, "to");
    if (!fields.reading().failed() && window.toMinute <= window.fromMinute)
        fields.fail("to", Phrase::tr("a round's window ends after it begins, on the same day"));
    fields.refuseUnknown();
    return window;
}

void readRounds(Fields& fields, LogbookSettings& into)
{
    if (!fields.has("rounds"))
        return;
    into.rounds.clear();
    for (Fields& round : fields.objects("rounds"))
        into.rounds.push_back(readRound(round));
    const auto stuck = std::adjacent_find(
        into.rounds.begin(), into.rounds.end(),
        [](const RoundWindow& a, const RoundWindow& b) { return a.toMinute > b.fromMinute; });
    if (into.rounds.empty() || stuck != into.rounds.end())
        fields.fail("rounds",
                    Phrase::tr("there must be at least one, in order of the day, not overlapping"));
}

} // namespace

std::optional<Milliseconds> timeDoubt(Fields& fields)
{
    const double most = std::chrono::duration<double, std::ratio<60>>(mostTimeDoubt).count();
    const auto minutes = fields.number("time_doubt_min", 0.0, most);
    return minutes ? std::optional(toMilliseconds(Hours{*minutes / 60.0})) : std::nullopt;
}

void readSettings(Fields& fields, Description& into)
{
    into.namesCurrency = fields.has("currency");
    into.namesPrice =
        fields.has("price_per_kwh") || fields.has("time_of_use") || fields.has("tariff_changes");
    into.settings.zone = fields.text("zone").value_or(into.settings.zone);
    auto zone = Zone::named(into.settings.zone);
    if (!zone)
        fields.fail("zone", zone.error().what, zone.error().remedy);
    else
        fields.reading().zone = *zone;
    into.settings.units = choice<UnitSystem>(fields, "units").value_or(into.settings.units);
    into.settings.currency = fields.text("currency").value_or("");
    into.settings.tariff.pricePerKwh = fields.number("price_per_kwh", -many, many);
    for (Fields& window : fields.objects("time_of_use"))
        into.settings.tariff.windows.push_back(readWindow(window));
    for (Fields& change : fields.objects("tariff_changes"))
        into.settings.tariffChanges.push_back(readTariffChange(change));
    checkIncreasing(fields, "tariff_changes", into.settings.tariffChanges);
    into.settings.timeDoubt = timeDoubt(fields).value_or(into.settings.timeDoubt);
    readRounds(fields, into.settings);
}

Weighing readWeighing(Fields fields)
{
    constexpr double leastPositive = 1e-9;
    Weighing weighing;
    auto weights = fields.object("weights");
    const Json* all = fields.raw("weights");
    if (weights && all->is_object()) {
        for (const auto& [criterion, value] : all->items())
            weighing.weights[criterion] =
                weights->requiredNumber(criterion.c_str(), 0.0, mostWeight);
    }
    weighing.referenceLift = fields.difference("reference_lift", 0.0);
    const auto hours = [&](const char* key, double least) {
        const auto value = fields.number(key, least, many);
        return value ? std::optional(Hours{*value}) : std::nullopt;
    };
    weighing.referenceHours = hours("reference_hours", leastPositive);
    weighing.batchesPerYear = fields.number("batches_per_year", leastPositive, many);
    weighing.otherPricePerKwh = fields.number("other_price_per_kwh", -many, many);
    weighing.quietAfter = hours("quiet_after_hours", 0.0);
    fields.refuseUnknown();
    return weighing;
}

} // namespace holdband::exchange
