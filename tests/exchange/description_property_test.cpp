// A property of any description: write, parse, write gives the same text.
#include "core/exchange/description.h"
#include "core/model/names.h"
#include "core/text/zone.h"
#include "tests/random.h"

#include <gtest/gtest.h>
#include <rapidcheck.h>

namespace holdband::test {
namespace {

using exchange::DescribedReading;
using exchange::Description;
using exchange::FileEntry;
using exchange::FileOrigin;

bool maybe()
{
    return between(0, 1) == 1;
}

/// Names with characters that need quoting, and letters beyond ASCII.
std::string text()
{
    static const std::vector<std::string> pieces{"a", "Beer", " ",  "\"", "\\", "/",      ",",
                                                 ";", "=",    "+",  "'",  "é",  "\u202e", "🍺",
                                                 "(", ")",    "°F", "{",  "]",  "-",      "0"};
    std::string result;
    for (int i = between(1, 6); i > 0; --i)
        result += pieces[static_cast<std::size_t>(between(0, static_cast<int>(pieces.size()) - 1))];
    return result;
}

/// Any double in the range, most of them with all 53 bits in use.
double number(double low, double high)
{
    const auto share = static_cast<double>(*rc::gen::arbitrary<std::uint32_t>()) / 4294967295.0;
    const auto fine = static_cast<double>(*rc::gen::arbitrary<std::uint16_t>()) * 1e-15;
    return std::clamp(low + (high - low) * (share + fine), low, high);
}

/// Between 1990 and 2100, to the millisecond.
Instant instant()
{
    return instantFromMs(static_cast<std::int64_t>(number(7e11, 4e12)));
}

TemperatureDifference kelvins(double low, double high)
{
    return TemperatureDifference::kelvins(number(low, high));
}

template <typename Make>
auto optionally(Make make) -> std::optional<decltype(make())>
{
    return maybe() ? std::optional(make()) : std::nullopt;
}

template <typename Make>
auto several(int most, Make make) -> std::vector<decltype(make())>
{
    std::vector<decltype(make())> all;
    for (int i = between(0, most); i > 0; --i)
        all.push_back(make());
    return all;
}

/// Records of a logbook: no two of a kind have one name.
template <typename Make>
auto severalNamed(int most, Make make) -> std::vector<decltype(make())>
{
    auto all = several(most, make);
    for (std::size_t i = 1; i < all.size(); ++i)
        all[i].name = all[0].name + std::to_string(i);
    return all;
}

TariffWindow tariffWindow()
{
    TariffWindow window;
    for (bool& day : window.days)
        day = maybe();
    window.fromMinute = between(0, 1440);
    window.toMinute = between(0, 1440);
    window.pricePerKwh = number(-1, 3);
    return window;
}

/// Instants that increase, each after `from`.
std::vector<Instant> increasing(Instant from, int most)
{
    std::vector<Instant> all;
    for (int i = between(0, most); i > 0; --i)
        all.push_back(from += Milliseconds{between(1, 900'000'000)});
    return all;
}

std::vector<RoundWindow> rounds()
{
    std::vector<RoundWindow> windows;
    int minute = between(0, 200);
    for (int i = between(1, 4); i > 0; --i) {
        const int to = minute + between(1, 200);
        windows.push_back({text(), minute, to});
        minute = to + between(0, 100);
    }
    return windows;
}

LogbookSettings settings()
{
    LogbookSettings result;
    result.zone = maybe() ? "America/Denver" : "UTC";
    result.units = maybe() ? UnitSystem::us : UnitSystem::metric;
    result.currency = maybe() ? "USD" : "";
    result.tariff.pricePerKwh = optionally([] { return number(0, 2); });
    result.tariff.windows = several(3, tariffWindow);
    for (const Instant from : increasing(instant(), 2))
        result.tariffChanges.push_back(
            {from, {optionally([] { return number(0, 2); }), several(2, tariffWindow)}});
    if (maybe())
        result.rounds = rounds();
    return result;
}

Setup setup()
{
    Setup result;
    result.name = text();
    result.kind = maybe() ? text() : "";
    result.vessels = between(1, 9);
    result.ratedPower = optionally([] { return Power::watts(number(0, 3000)); });
    result.parts = several(2, [] { return Part{text(), number(0, 9), number(-5, 900)}; });
    for (int i = between(0, 2); i > 0; --i)
        result.ratings[text()] = number(1, 5);
    result.retired = optionally(instant);
    return result;
}

Sensor sensor()
{
    Sensor result;
    result.name = text();
    result.reads =
        std::array{
            SensorKind::beer,    SensorKind::ambient, SensorKind::chamber,
            SensorKind::coolant, SensorKind::gravity, SensorKind::power}[static_cast<std::size_t>(
            between(0, 5))];
    result.setup = optionally(text);
    result.accuracy = optionally([] { return kelvins(0, 3); });
    result.placement = maybe() ? text() : "";
    Instant from = instant();
    for (int i = between(0, 3); i > 0; --i) {
        result.offsets.push_back({from, kelvins(-3, 3), optionally([] { return kelvins(0, 1); }),
                                  maybe() ? text() : ""});
        from += Milliseconds{between(1, 1'000'000)};
    }
    result.readByHand = maybe();
    result.retired = optionally(instant);
    return result;
}

Meter meter()
{
    Meter result;
    result.name = text();
    result.setup = text();
    result.resolution = optionally([] { return Energy::kilowattHours(number(0, 1)); });
    result.rollsOverAt = optionally([] { return Energy::kilowattHours(number(1, 1e6)); });
    // In percent, with two decimals.
    result.accuracy = optionally([] { return between(0, 1000) / 100.0 / 100.0; });
    result.from = optionally(instant);
    if (!result.from || maybe())
        result.to = result.from.value_or(instant()) + Milliseconds{between(1, 100'000'000)};
    for (const Instant from : increasing(instant(), 2))
        result.moves.push_back({from, optionally(text)});
    result.retired = optionally(instant);
    return result;
}

Stage stage(bool first, bool last)
{
    Stage result;
    result.label = text();
    result.kind = !first && maybe() ? StageKind::ramp : StageKind::hold;
    result.target = Temperature::celsius(number(-20, 90));
    if (!last || result.kind == StageKind::ramp || maybe())
        result.length = Hours{number(0.1, 2000)};
    result.tolerance = optionally([] { return kelvins(0.01, 5); });
    result.settleAllowed = optionally([] { return Hours{number(0, 100)}; });
    if (result.kind == StageKind::hold && maybe()) {
        result.until = maybe() ? StageUntil::turnedDown : StageUntil::gravity;
        result.untilGravity = optionally([] { return Gravity::specific(number(1.0, 1.1)); });
    }
    return result;
}

Schedule schedule()
{
    Schedule result;
    const int stages = between(1, 4);
    for (int i = 0; i < stages; ++i)
        result.push_back(stage(i == 0, i + 1 == stages));
    return result;
}

ForecastFigure forecastFigure()
{
    const double value = number(0.0, 500.0);
    return {value, value / 2.0, value * 2.0};
}

BatchForecast forecastOf()
{
    BatchForecast result;
    result.made = instant();
    result.energy = forecastFigure();
    result.crashHours = optionally(forecastFigure);
    result.room = optionally([] { return Temperature::celsius(number(-20, 50)); });
    return result;
}

Batch batch()
{
    Batch result;
    result.name = text();
    result.setup = text();
    result.volume = optionally([] { return Volume::litres(number(0.1, 500)); });
    result.pitched = instant();
    result.ended =
        optionally([&] { return result.pitched + Milliseconds{between(1, 90'000'000)}; });
    result.beerSensor = text();
    result.ambientSensor = optionally(text);
    result.tolerance = kelvins(0.01, 5);
    result.gapLimit = optionally([] { return Milliseconds{between(1, 90'000'000)}; });
    result.ignoreShorterThan = Milliseconds{between(0, 90'000'000)};
    result.bandTimes = {Milliseconds{between(0, 90'000'000)}, Milliseconds{between(0, 90'000'000)}};
    result.originalGravity = optionally([] { return Gravity::specific(number(1.0, 1.15)); });
    result.finalGravity = optionally([] { return Gravity::specific(number(0.99, 1.1)); });
    result.schedule = schedule();
    result.vessel = maybe() ? text() : "";
    result.splitFrom = optionally(text);
    result.forecast = optionally(forecastOf);
    for (const Instant from : increasing(result.pitched, 2))
        result.planChanges.push_back({from, maybe() ? text() : "", schedule()});
    result.stageEnds = increasing(result.pitched, 2);
    for (const Instant from : increasing(result.pitched, 2))
        result.beerUses.push_back({from, text(), maybe() ? text() : ""});
    return result;
}

FileOrigin origin()
{
    FileOrigin result;
    result.file = text();
    result.sha256 = text();
    result.rowsRead = between(0, 1'000'000);
    for (int i = between(0, 2); i > 0; --i) {
        const std::string sensor = text();
        result.headers[sensor] = text();
        result.lines[sensor].emplace_back(instant(), between(1, 1'000'000));
    }
    return result;
}

FileEntry file()
{
    FileEntry result;
    result.file = text();
    result.time = optionally(text);
    result.zone = optionally(text);
    result.unit =
        optionally([] { return maybe() ? TemperatureUnit::celsius : TemperatureUnit::fahrenheit; });
    result.dateOrder = optionally(
        [] { return exchange::dateOrderNames[static_cast<std::size_t>(between(0, 2))].first; });
    for (int i = between(1, 3); i > 0; --i)
        result.columns[text()] = text();
    result.origin = optionally(origin);
    result.withdrawn = optionally(instant);
    if (result.origin && maybe()) // it brought only registers
        result = FileEntry{{}, {}, {}, {}, {}, {}, result.origin, result.withdrawn};
    return result;
}

DescribedReading reading()
{
    DescribedReading result;
    result.meter = text();
    result.inForce = {instant(), Energy::kilowattHours(number(0, 99999)), between(0, mostDecimals),
                      optionally([] { return maybe() ? MeterEvent::reset : MeterEvent::rollover; }),
                      maybe() ? text() : ""};
    result.before = several(2, [] {
        return store::Replaced{number(0, 99999), between(0, mostDecimals), instant(),
                               maybe() ? text() : ""};
    });
    result.source = optionally([] {
        return exchange::DescribedSource{static_cast<std::size_t>(between(0, 9)),
                                         between(1, 99999)};
    });
    result.leftOut = maybe();
    if (result.leftOut)
        result.leftOutBy = optionally([] { return static_cast<std::size_t>(between(0, 9)); });
    return result;
}

store::Exclusion exclusion()
{
    const Instant from = instant();
    return {text(), {from, from + Milliseconds{between(0, 1'000'000)}}, maybe() ? text() : ""};
}

ReadingUnit temperatureUnit()
{
    return maybe() ? ReadingUnit::celsius : ReadingUnit::fahrenheit;
}

exchange::DescribedHandReading handReading()
{
    exchange::DescribedHandReading result;
    const bool ofBatch = maybe();
    result.owner = {ofBatch ? store::HandOwner::Kind::batch : store::HandOwner::Kind::sensor,
                    text()};
    result.inForce.at = instant();
    result.inForce.value = number(-30, 110);
    result.inForce.decimals = between(0, mostDecimals);
    result.inForce.unit = ofBatch ? ReadingUnit::specificGravity : temperatureUnit();
    result.inForce.sample = optionally([] { return Temperature::celsius(number(0, 40)); });
    result.inForce.note = maybe() ? text() : "";
    result.before = several(2, [] {
        return store::ReplacedHandReading{number(-30, 110), between(0, mostDecimals), instant(),
                                          maybe() ? text() : ""};
    });
    result.leftOut = maybe();
    return result;
}

ExcursionCause cause()
{
    const Instant from = instant();
    ExcursionCause result{{from, from + Milliseconds{between(0, 90'000'000)}},
                          maybe() ? Side::above : Side::below,
                          {},
                          maybe() ? text() : ""};
    if (maybe() || result.note.empty())
        result.cause = ChoiceNames<Cause>::all[static_cast<std::size_t>(between(0, 5))].first;
    return result;
}

void addCauses(Description& into)
{
    if (into.batches.empty())
        return;
    for (int i = between(0, 2); i > 0; --i)
        into.causes.push_back({into.batches[0].name, cause()});
}

store::PastHistoryEntry pastEntry()
{
    const auto verbs = store::allHistoryVerbs();
    store::PastHistoryEntry past{instant(), {}, {}};
    past.entry.verb =
        verbs[static_cast<std::size_t>(between(0, static_cast<int>(verbs.size()) - 1))];
    past.entry.arguments = several(2, text);
    past.entry.why = maybe() ? text() : "";
    past.entry.kind = static_cast<store::HistoryKind>(between(0, 3));
    past.of = optionally([] { return static_cast<std::size_t>(between(0, 9)); });
    return past;
}

Description anyDescription()
{
    Description result;
    result.settings = settings();
    result.setups = severalNamed(2, setup);
    result.sensors = severalNamed(2, sensor);
    result.meters = severalNamed(2, meter);
    result.batches = severalNamed(2, batch);
    addCauses(result);
    result.files = several(2, file);
    result.meterReadings = several(3, reading);
    result.exclusions = several(2, exclusion);
    result.journal = several(2, [] { return JournalNote{instant(), optionally(text), text()}; });
    result.plans = severalNamed(2, [] {
        return NamedPlan{text(), maybe() ? text() : "", optionally([] { return kelvins(0.01, 5); }),
                         schedule()};
    });
    result.handReadings = several(2, handReading);
    result.corrections = several(2, [] {
        return store::ValueCorrection{text(),           instant(),
                                      number(-30, 110), temperatureUnit(),
                                      instant(),        maybe() ? text() : ""};
    });
    for (int i = between(0, 3); i > 0; --i)
        result.weighing.weights[text()] = number(0, 5);
    result.weighing.referenceLift = optionally([] { return kelvins(0, 30); });
    result.weighing.referenceHours = optionally([] { return Hours{number(0.1, 900)}; });
    result.weighing.batchesPerYear = optionally([] { return number(0.1, 60); });
    result.weighing.otherPricePerKwh = optionally([] { return number(-1, 2); });
    result.logMaps = several(2, [] { return store::LogMap{text(), text(), instant()}; });
    result.watches = several(2, [] {
        return exchange::DescribedWatch{text(), maybe() ? text() : ""};
    });
    result.history = several(3, pastEntry);
    result.weighing.quietAfter = optionally([] { return Hours{number(0, 200)}; });
    return result;
}

TEST(DescriptionProperties, WriteParseWriteGivesTheSameText)
{
    const bool held = rc::check("any description → write → parse → write the same", [] {
        const Description first = anyDescription();
        const std::string written = exchange::writeDescription(first);
        const auto parsed = exchange::parseDescription(written, "d.json");
        if (!parsed)
            RC_FAIL(parsed.error().sentence() + "\n" + written);
        RC_ASSERT(exchange::writeDescription(*parsed) == written);
    });
    EXPECT_TRUE(held);
}

TEST(DescriptionProperties, ParsingPreservesEveryValueToTheBit)
{
    const bool held = rc::check("any description → write → parse: the same values", [] {
        const Description first = anyDescription();
        const auto parsed = exchange::parseDescription(exchange::writeDescription(first), "d.json");
        if (!parsed)
            RC_FAIL(parsed.error().sentence());
        RC_ASSERT(parsed->settings == first.settings);
        RC_ASSERT(parsed->setups == first.setups);
        RC_ASSERT(parsed->sensors == first.sensors);
        RC_ASSERT(parsed->meters == first.meters);
        RC_ASSERT(parsed->batches == first.batches);
        RC_ASSERT(parsed->causes == first.causes);
        RC_ASSERT(parsed->journal == first.journal);
        RC_ASSERT(parsed->plans == first.plans);
        RC_ASSERT(parsed->handReadings == first.handReadings);
        RC_ASSERT(parsed->corrections == first.corrections);
        RC_ASSERT(parsed->weighing == first.weighing);
        RC_ASSERT(parsed->logMaps == first.logMaps);
        RC_ASSERT(parsed->watches == first.watches);
        RC_ASSERT(parsed->history == first.history);
        RC_ASSERT(parsed->meterReadings.size() == first.meterReadings.size());
        for (std::size_t i = 0; i < first.meterReadings.size(); ++i) {
            RC_ASSERT(parsed->meterReadings[i].meter == first.meterReadings[i].meter);
            RC_ASSERT(parsed->meterReadings[i].inForce == first.meterReadings[i].inForce);
            RC_ASSERT(parsed->meterReadings[i].before == first.meterReadings[i].before);
        }
    });
    EXPECT_TRUE(held);
}

} // namespace
} // namespace holdband::test
