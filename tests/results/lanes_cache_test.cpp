// The lanes from the cache equal those judged again, whatever is entered, imported, undone and
// redone in between; and a change judges no batch that it doesn't touch.
#include "core/results/overview/lanes.h"
#include "core/results/overview/lanes_cache.h"
#include "core/store/history/undo.h"
#include "core/store/readings/hand_readings.h"
#include "core/store/readings/imports.h"
#include "core/store/readings/value_corrections.h"
#include "core/store/records/exclusions.h"
#include "core/store/records/journal.h"
#include "tests/random.h"
#include "tests/store/logbooks.h"
#include "tests/store/saying.h"

#include <QFile>
#include <rapidcheck.h>

namespace holdband::test {
namespace {

using results::LanesCache;
using results::LanesReview;
using store::Change;
using store::LogbookFile;

constexpr int wholeHours = 240; ///< the time before `someday` in which everything happens

Instant hour(int number)
{
    return someday - std::chrono::hours{wholeHours} + std::chrono::hours{number};
}

Instant someHour()
{
    return hour(between(0, wholeHours));
}

std::string someSensor()
{
    return between(0, 1) == 0 ? "Beer" : "Other";
}

Batch makeBatch(const std::string& name, Instant pitched, std::optional<Instant> ended)
{
    Batch batch;
    batch.name = name;
    batch.setup = "Loop";
    batch.beerSensor = "Beer";
    batch.pitched = pitched;
    batch.ended = ended;
    batch.tolerance = TemperatureDifference::kelvins(1.0);
    batch.gapLimit = std::chrono::hours{6};
    Stage stage;
    stage.label = "Primary";
    stage.target = Temperature::celsius(20.0);
    batch.schedule = {stage};
    return batch;
}

struct Rows {
    std::vector<Instant> at;
    std::vector<double> raw;
    std::vector<std::uint32_t> line;

    /// From that hour on: `count` readings of about 20 °C.
    Rows(int first, int count, int everyMinutes = 60)
    {
        for (int i = 0; i < count; ++i) {
            at.push_back(hour(first) + std::chrono::minutes{everyMinutes * i});
            raw.push_back(20.0 + between(-12, 12) / 10.0);
            line.push_back(static_cast<std::uint32_t>(i + 2));
        }
    }

    store::SensorRows of(const std::string& sensor) const
    {
        return {sensor, sensor, ReadingUnit::celsius, &at, &raw, &line};
    }
};

void importSomething(const LogbookFile&, const Change& change)
{
    auto id = store::addImport(change, {"log.csv", "00", 3});
    RC_ASSERT(id.has_value());
    const Rows rows(between(-5, wholeHours), between(1, 60), between(20, 90));
    RC_ASSERT(store::addReadings(change, *id, rows.of(someSensor())).has_value());
    RC_ASSERT(store::dropEmptyImport(change, *id).has_value());
}

void withdrawOrRestore(const LogbookFile& logbook, const Change& change)
{
    const auto imports = *store::listImports(logbook);
    if (imports.empty())
        return;
    const auto& import =
        imports[static_cast<std::size_t>(between(0, static_cast<int>(imports.size()) - 1))];
    if (import.withdrawnAt)
        (void)store::restoreImport(change, import.id); // refused if there are others at its times
    else
        RC_ASSERT(store::withdraw(change, import.id).has_value());
}

void typeByHand(const LogbookFile& logbook, const Change& change)
{
    const store::HandOwner owner{store::HandOwner::Kind::sensor, someSensor()};
    mayRefuse(store::addHandReading(change, owner,
                                    {someHour() + std::chrono::minutes{7},
                                     20.0 + between(-30, 30) / 10.0,
                                     ReadingUnit::celsius,
                                     1,
                                     {},
                                     ""}));
    const auto stored = *store::readHandReadings(logbook, owner);
    if (stored.empty())
        return;
    const auto id =
        stored[static_cast<std::size_t>(between(0, static_cast<int>(stored.size()) - 1))].id;
    if (between(0, 2) == 0)
        RC_ASSERT(store::deleteHandReading(change, id).has_value());
    else
        RC_ASSERT(
            store::correctHandReading(change, id, between(150, 250) / 10.0, 1, someday, "slip")
                .has_value());
}

void correctALog(const LogbookFile&, const Change& change)
{
    RC_ASSERT(
        store::addValueCorrection(change, {someSensor(), someHour(), 20.0 + between(-30, 30) / 10.0,
                                           ReadingUnit::celsius, someday, "lifted"})
            .has_value());
}

void exclude(const LogbookFile& logbook, const Change& change)
{
    const auto exclusions = *store::readExclusions(logbook);
    if (exclusions.size() > 1)
        RC_ASSERT(store::removeExclusion(change, exclusions.front().id).has_value());
    const Instant from = someHour();
    RC_ASSERT(
        store::addExclusion(
            change, {someSensor(), {from, from + std::chrono::hours{between(1, 20)}}, "lid", {}})
            .has_value());
}

void editSensor(const LogbookFile& logbook, const Change& change)
{
    Sensor sensor = store::readSensors(logbook)->front();
    const std::string name = sensor.name;
    sensor.accuracy.reset();
    if (between(0, 1) == 1)
        sensor.accuracy = TemperatureDifference::kelvins(between(1, 8) / 10.0);
    sensor.offsets.clear();
    if (between(0, 1) == 1)
        sensor.offsets = {
            {someHour(), TemperatureDifference::kelvins(between(-9, 9) / 10.0), {}, "ice"}};
    RC_ASSERT(store::updateSensor(change, name, sensor).has_value());
}

void editSettings(const LogbookFile& logbook, const Change& change)
{
    LogbookSettings settings = *store::readSettings(logbook);
    settings.units = between(0, 1) == 0 ? UnitSystem::us : UnitSystem::metric;
    RC_ASSERT(store::writeSettings(change, settings).has_value());
}

void editBatch(const LogbookFile& logbook, const Change& change)
{
    const auto batches = *store::readBatches(logbook);
    Batch batch =
        batches[static_cast<std::size_t>(between(0, static_cast<int>(batches.size()) - 1))];
    const std::string name = batch.name;
    const int what = between(0, 5);
    if (what == 0)
        batch.tolerance = TemperatureDifference::kelvins(between(2, 25) / 10.0);
    else if (what == 1)
        batch.ended =
            batch.ended ? std::nullopt : std::optional(batch.pitched + std::chrono::hours{30});
    else if (what == 2)
        batch.beerUses = {
            {batch.pitched + std::chrono::hours{between(1, 20)}, someSensor(), "second"}};
    else if (what == 3)
        batch.planChanges = {{batch.pitched + std::chrono::hours{5}, "warmer", batch.schedule}};
    else if (what == 4)
        batch.ignoreShorterThan = std::chrono::minutes{between(0, 90)};
    else
        batch.pitched += std::chrono::minutes{between(-90, 90)};
    if (!batch.planChanges.empty())
        batch.planChanges.front().schedule.front().target =
            Temperature::celsius(20.0 + between(0, 9) / 10.0);
    RC_ASSERT(store::updateBatch(change, name, batch).has_value());
}

void readAMeter(const LogbookFile&, const Change& change)
{
    MeterReading reading;
    reading.at = someHour() + std::chrono::minutes{1};
    reading.registerReading = Energy::kilowattHours(between(0, 999));
    mayRefuse(store::addMeterReading(change, "Meter", reading));
    RC_ASSERT(store::addNote(change, {someHour(), {}, "note"}).has_value());
}

/// As a watched file does: usually after its existing rows, sometimes in between. Undo skips such
/// changes.
void growAnImport(const LogbookFile& logbook)
{
    auto change = Change::begin(logbook, saying("more rows", store::HistoryKind::own));
    RC_ASSERT(change.has_value());
    const auto imports = *store::listImports(logbook);
    if (!imports.empty() && store::isInForce(*change, imports.front().id)) {
        const auto& span = imports.front().span;
        Rows rows(between(0, wholeHours), between(1, 30), between(20, 90));
        if (span && between(0, 3) > 0) {
            const auto later = span->end + std::chrono::minutes{between(5, 90)} - rows.at.front();
            for (Instant& at : rows.at)
                at += later;
        }
        RC_ASSERT(
            store::addReadings(*change, imports.front().id, rows.of(someSensor())).has_value());
    }
    RC_ASSERT(change->commit().has_value());
}

void enterSomething(const LogbookFile& logbook)
{
    using Entry = void (*)(const LogbookFile&, const Change&);
    constexpr std::array<Entry, 9> entries{importSomething, withdrawOrRestore, typeByHand,
                                           correctALog,     exclude,           editSensor,
                                           editSettings,    editBatch,         readAMeter};
    auto change = Change::begin(logbook, saying("entry"));
    RC_ASSERT(change.has_value());
    entries[static_cast<std::size_t>(between(0, 8))](logbook, *change);
    RC_ASSERT(change->commit().has_value());
}

/// Hourly readings of half the time or all of it, so that corrections and exclusions meet some.
void beginWithALog(const LogbookFile& logbook)
{
    auto change = Change::begin(logbook, saying("log", store::HistoryKind::own));
    RC_ASSERT(change.has_value());
    auto id = store::addImport(*change, {"first.csv", "00", 3});
    RC_ASSERT(id.has_value());
    const Rows rows(0, between(wholeHours / 2, wholeHours));
    RC_ASSERT(store::addReadings(*change, *id, rows.of("Beer")).has_value());
    RC_ASSERT(change->commit().has_value());
}

/// Undo and redo are refused if a later change depends on the entry.
void doSomething(const LogbookFile& logbook)
{
    const int what = between(0, 10);
    if (what == 0 || what == 10)
        growAnImport(logbook);
    else if (what <= 2)
        (void)store::undoLast(logbook);
    else if (what == 3)
        (void)store::redoLast(logbook);
    else
        enterSomething(logbook);
}

class LanesCached : public LogbookTest {
public:
    /// Six batches, one after another, the last of them open.
    std::unique_ptr<LogbookFile> made() const
    {
        QFile::remove(QString::fromStdString(path()));
        auto logbook = create();
        addEquipment(*logbook);
        auto change = Change::begin(*logbook, saying("batches", store::HistoryKind::own));
        EXPECT_TRUE(change);
        Sensor other;
        other.name = "Other";
        EXPECT_TRUE(store::addSensor(*change, other));
        for (int i = 0; i < 6; ++i) {
            const Instant pitched = hour(40 * i);
            const auto ended =
                i < 5 ? std::optional(pitched + std::chrono::hours{38}) : std::nullopt;
            EXPECT_TRUE(store::addBatch(*change,
                                        makeBatch("Ale " + std::to_string(i + 1), pitched, ended)));
        }
        EXPECT_TRUE(change->commit());
        return logbook;
    }

    std::unique_ptr<LogbookFile> reader() const
    {
        return std::move(*LogbookFile::open(path(), store::Access::read, [] { return someday; }));
    }

    /// Readings of "Beer" every ten minutes through all batches, one import for each batch.
    static void logAll(const LogbookFile& logbook)
    {
        for (int i = 0; i < 6; ++i) {
            auto change = Change::begin(logbook, saying("import"));
            auto id = store::addImport(*change, {"log.csv", "00", 1});
            Log log;
            for (int k = 0; k < 39 * 6; ++k)
                log.add((40 * i - wholeHours) * 60 + 10 * k, 20.0 + 0.1 * (k % 7));
            EXPECT_TRUE(store::addReadings(*change, *id, log.rows()));
            EXPECT_TRUE(change->commit());
        }
    }

    using LogbookTest::addEquipment;
};

bool sameSeries(const Series& a, const Series& b)
{
    return a.at == b.at && a.value == b.value && a.breaks == b.breaks;
}

/// All fingerprints of some spans so far, with their series.
class SeenPrints {
public:
    /// Fingerprints that count as equal must belong to equal series.
    void look(const LogbookFile& logbook)
    {
        store::SeriesFingerprints fingerprints(logbook);
        for (std::size_t i = 0; i < m_spans.size(); ++i) {
            const auto print = fingerprints.of("Beer", m_spans[i]);
            const auto series = store::readSeries(logbook, "Beer", m_spans[i]);
            RC_ASSERT(print.has_value());
            RC_ASSERT(series.has_value());
            for (const auto& [seenPrint, seenSeries] : m_seen[i])
                RC_ASSERT(!*fingerprints.same(seenPrint, *print, m_spans[i]) ||
                          sameSeries(seenSeries, *series));
            m_seen[i].emplace_back(*print, *series);
        }
    }

private:
    static Span someSpan()
    {
        const Instant from = someHour();
        return {from, from + std::chrono::hours{between(0, 60)}};
    }

    std::array<Span, 4> m_spans{someSpan(), someSpan(), someSpan(), someSpan()};
    std::array<std::vector<std::pair<store::SeriesFingerprint, Series>>, 4> m_seen;
};

TEST_F(LanesCached, EqualFreshOnesWhateverIsEnteredAndUndone)
{
    const bool held = rc::check("cached lanes equal fresh ones, same prints equal series", [this] {
        const auto logbook = made();
        if (between(0, 3) > 0)
            beginWithALog(*logbook);
        const auto reading = reader();
        LanesCache cache;
        SeenPrints fingerprints;
        for (int i = between(3, 15); i > 0; --i) {
            doSomething(*logbook);
            const auto cached = results::reviewLanes(*reading, &cache);
            const auto fresh = results::reviewLanes(*logbook);
            if (!cached)
                RC_FAIL(cached.error().what);
            RC_ASSERT(fresh.has_value());
            RC_ASSERT(*cached == *fresh);
            fingerprints.look(*logbook);
        }
    });
    EXPECT_TRUE(held);
}

TEST_F(LanesCached, ANoteJudgesNoBatchAgain)
{
    const auto logbook = made();
    logAll(*logbook);
    LanesCache cache;
    ASSERT_TRUE(results::reviewLanes(*logbook, &cache));
    EXPECT_EQ(cache.judged(), 6);
    auto change = Change::begin(*logbook, saying("note"));
    ASSERT_TRUE(store::addNote(*change, {someday, "Ale 2", "smells good"}));
    ASSERT_TRUE(change->commit());
    ASSERT_TRUE(results::reviewLanes(*logbook, &cache));
    EXPECT_EQ(cache.judged(), 0);
}

TEST_F(LanesCached, AChangeJudgesTheBatchesThatItAffects)
{
    const auto logbook = made();
    logAll(*logbook);
    LanesCache cache;
    ASSERT_TRUE(results::reviewLanes(*logbook, &cache));
    auto change = Change::begin(*logbook, saying("tolerance"));
    Batch batch = *store::readBatch(*logbook, "Ale 3");
    batch.tolerance = TemperatureDifference::kelvins(0.2);
    ASSERT_TRUE(store::updateBatch(*change, "Ale 3", batch));
    ASSERT_TRUE(change->commit());
    auto lanes = results::reviewLanes(*logbook, &cache);
    EXPECT_EQ(cache.judged(), 1);
    EXPECT_EQ(lanes->lanes[0].bars[2].verdict, analysis::Verdict::left);

    const auto imports = *store::listImports(*logbook);
    auto taking = Change::begin(*logbook, saying("take back"));
    ASSERT_TRUE(store::withdraw(*taking, imports[2].id)); // newest first: that of Ale 4
    ASSERT_TRUE(taking->commit());
    lanes = results::reviewLanes(*logbook, &cache);
    EXPECT_EQ(cache.judged(), 2) << "its own, and the next, whose last reading before it brought";
    EXPECT_EQ(lanes->lanes[0].bars[3].verdict, analysis::Verdict::notEnoughData);
}

TEST_F(LanesCached, MoreRowsOfOneLogJudgeOnlyTheBatchThatTheyAffect)
{
    const auto logbook = made();
    Log log;
    for (int k = 0; k < (wholeHours - 10) * 6; ++k)
        log.add(10 * k - wholeHours * 60, 20.0 + 0.1 * (k % 7));
    addLog(*logbook, log);
    LanesCache cache;
    ASSERT_TRUE(results::reviewLanes(*logbook, &cache));
    for (int i = 0; i < 3; ++i) {
        auto change = Change::begin(*logbook, saying("more rows"));
        Log more;
        more.add(-300 + 10 * i, 20.0);
        ASSERT_TRUE(
            store::addReadings(*change, store::listImports(*logbook)->front().id, more.rows()));
        ASSERT_TRUE(change->commit());
        const auto lanes = results::reviewLanes(*logbook, &cache);
        ASSERT_TRUE(lanes);
        EXPECT_EQ(cache.judged(), 1) << "the open one";
        EXPECT_EQ(*lanes, *results::reviewLanes(*logbook));
    }
    auto change = Change::begin(*logbook, saying("rows in between"));
    Log between;
    between.add(-wholeHours * 60 + 45 * 60 + 5, 25.0); // in the second batch
    ASSERT_TRUE(
        store::addReadings(*change, store::listImports(*logbook)->front().id, between.rows()));
    ASSERT_TRUE(change->commit());
    ASSERT_TRUE(results::reviewLanes(*logbook, &cache));
    EXPECT_GE(cache.judged(), 1);
    EXPECT_EQ(*results::reviewLanes(*logbook, &cache), *results::reviewLanes(*logbook));
}

TEST_F(LanesCached, AnotherLogbookStartsWithAnEmptyCache)
{
    const auto logbook = made();
    logAll(*logbook);
    LanesCache cache;
    ASSERT_TRUE(results::reviewLanes(*logbook, &cache));
    const auto second = create("second.holdband");
    addEquipment(*second);
    auto lanes = results::reviewLanes(*second, &cache);
    ASSERT_TRUE(lanes);
    EXPECT_EQ(*lanes, *results::reviewLanes(*second));
    ASSERT_TRUE(results::reviewLanes(*logbook, &cache));
    EXPECT_EQ(cache.judged(), 6);
}

} // namespace
} // namespace holdband::test
