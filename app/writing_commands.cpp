// Commands that change a logbook, or make one.
#include "app/command_options.h"
#include "app/commands.h"
#include "app/import_command.h"
#include "app/logbook_call.h"
#include "app/meant_names.h"
#include "app/results_text.h"
#include "core/assign_result.h"
#include "core/editing/register_check.h"
#include "core/editing/rounds.h"
#include "core/exchange/load.h"
#include "core/model/names.h"
#include "core/store/records/equipment.h"
#include "core/text/name_suggestions.h"
#include "core/text/numbers.h"
#include "core/text/times.h"

#include <algorithm>

namespace holdband::app {

namespace {

// new

bool isCurrencyCode(const std::string& text)
{
    return text.size() == 3 &&
           std::all_of(text.begin(), text.end(), [](char c) { return c >= 'A' && c <= 'Z'; });
}

Result<LogbookSettings> settingsFrom(const Call& call)
{
    LogbookSettings settings;
    if (const auto zone = call.value("zone")) {
        HOLDBAND_TRY(Zone::named(*zone));
        settings.zone = *zone;
    }
    if (const auto units = call.value("units")) {
        const auto choice = choiceNamed<UnitSystem>(*units);
        if (!choice)
            return failure(wrongValue("units", *units, choicesText<UnitSystem>()));
        settings.units = *choice;
    }
    if (const auto currency = call.value("currency")) {
        if (!isCurrencyCode(*currency))
            return failure(
                wrongValue("currency", *currency, "the three-letter codes, such as USD"));
        settings.currency = *currency;
    }
    return settings;
}

int makeNew(const Call& call)
{
    auto settings = settingsFrom(call);
    if (!settings)
        return fail(settings.error());
    auto logbook = store::LogbookFile::create(call.argument(0), *settings);
    if (!logbook)
        return fail(logbook.error());
    confirm("Made " + call.argument(0) + " (zone " + settings->zone + ", " +
            std::string(nameOf(settings->units)) + " units).");
    return exitDone;
}

// load

int load(const Call& call)
{
    auto loaded = exchange::loadDescription(call.argument(0), call.argument(1), store::systemNow,
                                            backupOptions());
    if (!loaded)
        return fail(loaded.error());
    printSummary(loadText(*loaded));
    for (const intake::ImportReport& file : loaded->files) {
        reportWarnings(file);
        for (const std::string& header : file.file.ignoredColumns)
            report("holdband: " + file.file.fileName + ": the column \"" + header +
                   "\" was left out: the description gives it to no sensor or meter.");
    }
    return exitDone;
}

// meter

Result<intake::TypedReading> typedReading(const Call& call, const store::LogbookFile& logbook)
{
    auto number = parseTypedNumber(call.argument(2));
    HOLDBAND_TRY(number);
    intake::TypedReading typed;
    HOLDBAND_TRY(assignResult(meantMeter(logbook, call.argument(1)), typed.meter));
    typed.reading.registerReading = Energy::kilowattHours(number->value);
    typed.reading.decimals = std::min(number->decimals, mostDecimals);
    typed.reading.note = call.value("note").value_or("");
    typed.reading.at = logbook.now();
    typed.reading.timeDoubt = Milliseconds{0};
    if (const auto at = call.value("at")) {
        typed.reading.timeDoubt.reset(); // the logbook's
        auto settings = store::readSettings(logbook);
        HOLDBAND_TRY(settings);
        auto zone = Zone::named(settings->zone);
        HOLDBAND_TRY(zone);
        auto instant = parseTime(*at, *zone);
        HOLDBAND_TRY(instant);
        typed.reading.at = *instant;
    }
    if (const auto event = call.value("event")) {
        typed.reading.event = choiceNamed<MeterEvent>(*event);
        if (!typed.reading.event)
            return failure(wrongValue("event", *event, choicesText<MeterEvent>()));
    }
    return typed;
}

int meter(const Call& call)
{
    auto logbook = openForWriting(call.argument(0));
    if (!logbook)
        return failOpening(logbook.error(), call.argument(0));
    auto typed = typedReading(call, **logbook);
    if (!typed)
        return fail(typed.error());
    auto check = intake::checkReading(**logbook, *typed);
    if (!check)
        return fail(check.error());
    if (check->doubt) {
        Problem problem = check->doubt->problem;
        if (check->doubt->doubt == intake::ReadingDoubt::belowBefore)
            problem.remedy = "if it is not mistyped, say --event rollover (it passed its top) or "
                             "--event reset (it restarted at 0)";
        return fail(problem);
    }
    if (!check->unusual.empty())
        report("holdband: " + check->unusual + "; correct it if it is mistyped.");
    auto saved = intake::saveRound(**logbook, {*typed});
    if (!saved)
        return fail(saved.error());
    printSummary(
        typed->meter + ": " +
        fixedText(typed->reading.registerReading.kilowattHours(), typed->reading.decimals) +
        (check->alreadyThere ? " kWh is already stored." : " kWh stored.") +
        (check->takenAsRollover ? " The register passed its top: taken as a rollover." : "") +
        "\n");
    return exitDone;
}

} // namespace

std::vector<Command> writingCommands()
{
    return {
        {"new",
         "LOGBOOK",
         "Make an empty logbook.",
         1,
         1,
         {valueOption("zone", "the time zone, such as America/Denver; default UTC", "IANA"),
          valueOption("units", "us or metric; default metric", "us|metric"),
          valueOption("currency", "a three-letter code", "USD")},
         makeNew},
        {"load",
         "LOGBOOK DESCRIPTION.json",
         "Set up equipment and batches from a description, and read the files it names.",
         2,
         2,
         {},
         load},
        importCommand(),
        {"meter",
         "LOGBOOK METER KWH",
         "Save one reading of a meter's register.",
         3,
         3,
         {valueOption("at", "when it was read; default now", "TIME"),
          valueOption("event", "why it reads less than before", "rollover|reset"),
          valueOption("note", "a note to save with it", "TEXT")},
         meter},
    };
}

} // namespace holdband::app
