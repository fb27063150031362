// A comparison from the cache equals one computed again, whatever is entered and undone in between;
// and a change summarises no batch that it doesn't touch.
#include "core/results/comparison/comparison_cache.h"
#include "core/results/comparison/side_by_side.h"
#include "core/store/history/undo.h"
#include "core/store/readings/hand_readings.h"
#include "core/store/readings/imports.h"
#include "core/store/readings/value_corrections.h"
#include "core/store/records/batches.h"
#include "core/store/records/equipment.h"
#include "core/store/records/exclusions.h"
#include "core/store/records/journal.h"
#include "core/store/records/weighing.h"
#include "tests/random.h"
#include "tests/results/garage.h"
#include "tests/store/saying.h"

#include <rapidcheck.h>

namespace holdband::test {
namespace {

using results::ComparisonCache;
using results::SideBySide;
using store::Change;
using store::LogbookFile;

/// Any hour of the three weeks.
Instant someGarageHour()
{
    return garageStart(0) + std::chrono::hours{between(0, 3 * garageEvery)};
}

std::string oneOf(const std::vector<std::string>& names)
{
    return names[static_cast<std::size_t>(between(0, static_cast<int>(names.size()) - 1))];
}

std::string someGarageSensor()
{
    return oneOf({"Loop beer", "Cabinet beer", "Room"});
}

std::string text(const std::optional<double>& value)
{
    return value ? shortestText(*value) : "none";
}

std::string text(const std::optional<analysis::Bounded>& figure)
{
    return figure ? text(figure->value) + " " + text(figure->low) + " " + text(figure->high)
                  : "none";
}

std::string textOf(const analysis::Distribution& spread)
{
    std::string all = text(spread.belowMs) + text(spread.aboveMs);
    for (const double ms : spread.binMs)
        all += " " + shortestText(ms);
    return all;
}

/// All figures and texts, bit for bit.
std::string everythingOf(const SideBySide& review)
{
    std::string all = review.text.energySentence + "\n" + review.text.temperatureSentence + "\n" +
                      review.text.weather.sentence + "\n" + review.text.judgement.sentence + "\n";
    for (const analysis::Measure& measure : review.measures)
        all += std::string(measure.rule.name) + " " + text(measure.a) + " " + text(measure.b) +
               (measure.ahead ? std::to_string(static_cast<int>(*measure.ahead)) : "-") + "\n";
    for (const results::MeasureBatches& batches : review.batchFigures) {
        for (const auto* side : {&batches.a, &batches.b}) {
            for (const results::BatchFigure& batch : side->batches)
                all += batch.batch + " " + shortestText(batch.value) + "\n";
        }
    }
    for (const auto* side : {&review.weather.a, &review.weather.b}) {
        for (const analysis::WeatherPair& pair : side->model.pairs)
            all += shortestText(pair.liftK) + " " + shortestText(pair.watts) + "\n";
    }
    for (const results::NoteText& note : review.text.notes)
        all += note.note + "; " + note.effect + "\n";
    for (const std::string& idle : review.text.idle)
        all += idle + "\n";
    for (const results::CostScenarioText& scenario : review.text.money.scenarios)
        all += scenario.name + scenario.sentence + "\n";
    all += review.glance.answer + "\n" + review.glance.open + "\n";
    for (const results::GlancePair& pair : review.glance.pairs)
        all += pair.explanation + "\n";
    for (const auto* side : {&review.energyA, &review.energyB}) {
        for (const results::EnergyCurve& curve : *side) {
            for (const analysis::EnergyPoint& point : curve.points)
                all += shortestText(point.elapsedHours) + " " + shortestText(point.kwh) + "\n";
        }
    }
    return all + textOf(*review.deviations.spreadA) + textOf(*review.deviations.spreadB);
}

results::SideBySideRequest setups()
{
    results::SideBySideRequest request;
    request.a = "Loop";
    request.b = "Cabinet";
    return request;
}

std::string compared(const LogbookFile& logbook, ComparisonCache* cache,
                     const results::SideBySideRequest& request = setups())
{
    const auto review = results::reviewSideBySide(logbook, request, cache);
    return review ? everythingOf(*review) : review.error().sentence();
}

void editGarageBatch(const LogbookFile& logbook, const Change& change)
{
    Batch batch = *store::readBatch(logbook, oneOf({"L1", "L2", "L3", "C1", "C2"}));
    const std::string name = batch.name;
    const int what = between(0, 6);
    if (what == 0)
        batch.tolerance = TemperatureDifference::kelvins(between(2, 25) / 10.0);
    else if (what == 1)
        batch.ended = *batch.ended + std::chrono::hours{between(-20, 20)};
    else if (what == 2)
        batch.pitched += std::chrono::minutes{between(-900, 900)};
    else if (what == 3)
        batch.volume = Volume::litres(between(5, 30));
    else if (what == 4)
        batch.originalGravity = Gravity::specific(1.04 + between(0, 30) / 1000.0);
    else if (what == 5)
        batch.ambientSensor =
            between(0, 1) == 0 ? std::nullopt : std::optional<std::string>("Room");
    else
        batch.setup = batch.setup == "Loop" ? "Cabinet" : "Loop";
    mayRefuse(store::updateBatch(change, name, batch));
}

void editEquipment(const LogbookFile& logbook, const Change& change)
{
    const int what = between(0, 3);
    if (what == 0) {
        holdband::Setup setup = store::readSetups(logbook)->front();
        setup.ratedPower = Power::watts(between(100, 900));
        setup.parts.push_back({"hose", 1.0, between(1, 90) * 1.0});
        RC_ASSERT(store::updateSetup(change, setup.name, setup).has_value());
    } else if (what == 1) {
        Sensor sensor = store::readSensors(logbook)->at(static_cast<std::size_t>(between(0, 2)));
        sensor.accuracy = TemperatureDifference::kelvins(between(1, 8) / 10.0);
        sensor.placement = oneOf({"", "wall"});
        sensor.offsets = {
            {someGarageHour(), TemperatureDifference::kelvins(between(-9, 9) / 10.0), {}, ""}};
        RC_ASSERT(store::updateSensor(change, sensor.name, sensor).has_value());
    } else if (what == 2) {
        Meter meter = store::readMeters(logbook)->front();
        meter.accuracy = between(0, 4) / 100.0;
        meter.moves = {{someGarageHour(), oneOf({"Loop", "Cabinet"})}};
        mayRefuse(store::updateMeter(change, meter.name, meter));
    } else {
        LogbookSettings settings = *store::readSettings(logbook);
        settings.tariff.pricePerKwh = between(1, 50) / 100.0;
        RC_ASSERT(store::writeSettings(change, settings).has_value());
    }
}

void readSomething(const LogbookFile& logbook, const Change& change)
{
    const std::string meter = oneOf({"Loop meter", "Cabinet meter"});
    const auto stored = *store::readMeterReadings(logbook, meter);
    const auto& some =
        stored[static_cast<std::size_t>(between(0, static_cast<int>(stored.size()) - 1))];
    MeterReading reading;
    reading.at = some.inForce.at + std::chrono::hours{between(1, 11)};
    reading.registerReading = some.inForce.registerReading;
    reading.decimals = between(0, 3);
    mayRefuse(store::addMeterReading(change, meter, reading));
    const store::HandOwner batch{store::HandOwner::Kind::batch, oneOf({"L1", "C3"})};
    mayRefuse(store::addHandReading(
        change, batch, {someGarageHour(), 1.03, ReadingUnit::specificGravity, 3, {}, ""}));
}

void correctSomething(const LogbookFile& logbook, const Change& change)
{
    const Instant from = someGarageHour();
    RC_ASSERT(
        store::addExclusion(
            change,
            {someGarageSensor(), {from, from + std::chrono::hours{between(1, 20)}}, "lid", {}})
            .has_value());
    RC_ASSERT(store::addValueCorrection(change, {someGarageSensor(), someGarageHour(),
                                                 20.0 + between(-30, 30) / 10.0,
                                                 ReadingUnit::celsius, logbook.now(), "lifted"})
                  .has_value());
}

void withdrawALog(const LogbookFile& logbook, const Change& change)
{
    const auto imports = *store::listImports(logbook);
    const auto& import =
        imports[static_cast<std::size_t>(between(0, static_cast<int>(imports.size()) - 1))];
    if (import.withdrawnAt)
        (void)store::restoreImport(change, import.id);
    else
        RC_ASSERT(store::withdraw(change, import.id).has_value());
}

void weigh(const LogbookFile&, const Change& change)
{
    Weighing weighing;
    weighing.weights["noise"] = between(0, 50) / 10.0;
    weighing.quietAfter = Hours{between(48, 96) * 1.0};
    RC_ASSERT(store::writeWeighing(change, weighing).has_value());
}

void changeTheGarage(const LogbookFile& logbook)
{
    using Entry = void (*)(const LogbookFile&, const Change&);
    constexpr std::array<Entry, 6> entries{editGarageBatch,  editEquipment, readSomething,
                                           correctSomething, withdrawALog,  weigh};
    const int what = between(0, 8);
    if (what == 7) { // except for the loading itself
        if (!undoText(logbook).starts_with("loaded"))
            (void)store::undoLast(logbook);
        return;
    }
    if (what == 8)
        return (void)store::redoLast(logbook);
    auto change = Change::begin(logbook, saying("entry"));
    RC_ASSERT(change.has_value());
    entries[static_cast<std::size_t>(what % 6)](logbook, *change);
    RC_ASSERT(change->commit().has_value());
}

/// The garage, open for writing, with a fixed clock.
class CachedComparison : public ::testing::Test {
public:
    std::unique_ptr<LogbookFile> made()
    {
        std::filesystem::remove(m_files.path("d.holdband"));
        loadGarage(m_files, {});
        const auto now = *parseRfc3339("2026-06-01T00:00:00Z");
        return std::move(*LogbookFile::open(m_files.path("d.holdband"), store::Access::write,
                                            [now] { return now; }));
    }

private:
    DescribedLogbook m_files;
};

TEST_F(CachedComparison, EqualsAFreshOneWhateverIsEnteredAndUndone)
{
    const bool held = rc::check("a cached comparison equals a fresh one", [this] {
        const auto logbook = made();
        ComparisonCache cache;
        for (int i = between(2, 8); i > 0; --i) {
            changeTheGarage(*logbook);
            RC_ASSERT(compared(*logbook, &cache) == compared(*logbook, nullptr));
        }
    });
    EXPECT_TRUE(held);
}

template <typename Enter>
void entered(const LogbookFile& logbook, Enter enter)
{
    auto change = Change::begin(logbook, saying("entry"));
    ASSERT_TRUE(change);
    ASSERT_TRUE(enter(*change));
    ASSERT_TRUE(change->commit());
}

TEST_F(CachedComparison, ChangesSumUpTheBatchesThatTheyAffect)
{
    const auto logbook = made();
    ComparisonCache cache;
    const auto summed = [&] {
        compared(*logbook, &cache);
        return cache.computed();
    };
    EXPECT_EQ(summed(), 6);
    EXPECT_EQ(summed(), 0);
    entered(*logbook, [&](const Change& change) {
        return store::addNote(change, {garageStart(1), "L2", "smells good"});
    });
    EXPECT_EQ(summed(), 0) << "a note";
    Weighing weighing;
    weighing.weights = {{"noise", 3.0}};
    weighing.otherPricePerKwh = 0.5;
    entered(*logbook, [&](const Change& change) { return store::writeWeighing(change, weighing); });
    EXPECT_EQ(summed(), 0) << "weights";
    entered(*logbook, [&](const Change& change) {
        Batch batch = *store::readBatch(*logbook, "C2");
        batch.ignoreShorterThan = std::chrono::minutes{5};
        return store::updateBatch(change, "C2", batch);
    });
    EXPECT_EQ(summed(), 1) << "one batch's record";
    entered(*logbook, [&](const Change& change) {
        MeterReading reading;
        reading.at = garageStart(1) + std::chrono::hours{30};
        reading.registerReading = Energy::kilowattHours(18.0);
        reading.decimals = 3;
        return store::addMeterReading(change, "Loop meter", reading);
    });
    EXPECT_EQ(summed(), 1) << "a register reading inside L2";
    entered(*logbook, [&](const Change& change) {
        return store::addExclusion(change,
                                   {"Loop beer", {garageStart(0), garageStart(0)}, "lid", {}});
    });
    EXPECT_EQ(summed(), 3) << "the sensor's exclusions: all batches that it read";
    entered(*logbook, [&](const Change& change) {
        const store::HandOwner batch{store::HandOwner::Kind::batch, "L1"};
        return store::addHandReading(change, batch,
                                     {garageStart(0) + std::chrono::hours{50},
                                      1.02,
                                      ReadingUnit::specificGravity,
                                      3,
                                      {},
                                      ""});
    });
    EXPECT_EQ(summed(), 1) << "a gravity";
    EXPECT_EQ(compared(*logbook, &cache), compared(*logbook, nullptr));
}

TEST_F(CachedComparison, TickingBatchesSumsUpNone)
{
    const auto logbook = made();
    ComparisonCache cache;
    compared(*logbook, &cache);
    results::SideBySideRequest request = setups();
    request.only = {"L1", "C2", "C3"};
    const std::string some = compared(*logbook, &cache, request);
    EXPECT_EQ(cache.computed(), 0);
    EXPECT_EQ(some, compared(*logbook, nullptr, request));
    std::swap(request.a, request.b);
    compared(*logbook, &cache, request);
    EXPECT_EQ(cache.computed(), 0) << "nor does swapping";
}

} // namespace
} // namespace holdband::test
