// Single register readings: left out with a reason, restored, together with withdrawn imports.
#include "core/store/history/undo.h"
#include "core/store/readings/imports.h"
#include "tests/store/logbooks.h"
#include "tests/store/saying.h"

namespace holdband::test {
namespace {

using store::Change;

class MeterReadings : public LogbookTest {
protected:
    void SetUp() override
    {
        m_logbook = create();
        addEquipment(*m_logbook);
        auto change = Change::begin(*m_logbook, saying("imported meter.csv"));
        auto import = store::addImport(*change, {"meter.csv", "00", 2});
        ASSERT_TRUE(import);
        m_import = *import;
        for (int hour = 0; hour < 2; ++hour)
            m_ids.push_back(*store::addMeterReading(*change, "Meter", reading(hour, 10.0 + hour),
                                                    store::ReadingSource{m_import, hour + 2}));
        m_ids.push_back(*store::addMeterReading(*change, "Meter", reading(2, 12.0)));
        ASSERT_TRUE(change->commit());
    }

    static MeterReading reading(int hour, double kwh)
    {
        return {someday + std::chrono::hours{hour - 10}, Energy::kilowattHours(kwh), 1, {}, {}};
    }

    std::vector<double> kwhInForce() const
    {
        std::vector<double> all;
        const auto readings = store::readMeterReadings(*m_logbook, "Meter");
        for (const auto& stored : *readings)
            all.push_back(stored.inForce.registerReading.kilowattHours());
        return all;
    }

    store::RegisterList list(std::size_t most = 100) const
    {
        auto listed = store::listRegister(*m_logbook, "Meter",
                                          {someday - std::chrono::hours{24}, someday}, most);
        EXPECT_TRUE(listed);
        return *listed;
    }

    void leaveOut(store::MeterReadingId id, const char* why) const
    {
        auto change = Change::begin(*m_logbook, {store::HistoryVerb::other, {"left out"}, why});
        ASSERT_TRUE(store::deleteMeterReading(*change, id));
        ASSERT_TRUE(change->commit());
    }

    Done restore(store::MeterReadingId id) const
    {
        auto change = Change::begin(*m_logbook, saying("brought back"));
        HOLDBAND_TRY(store::restoreMeterReading(*change, id));
        return change->commit();
    }

    void changeImport(Done (*act)(const Change&, store::ImportId)) const
    {
        auto change = Change::begin(*m_logbook, saying("took back or put back"));
        ASSERT_TRUE(act(*change, m_import));
        ASSERT_TRUE(change->commit());
    }

    std::unique_ptr<store::LogbookFile> m_logbook;
    store::ImportId m_import;
    std::vector<store::MeterReadingId> m_ids;
};

TEST_F(MeterReadings, NameTheirSource)
{
    const auto listed = list();
    ASSERT_EQ(listed.readings.size(), 3u);
    EXPECT_EQ(listed.readings[1].file, "meter.csv");
    EXPECT_EQ(listed.readings[1].line, 3);
    EXPECT_EQ(listed.readings[2].file, "");
    EXPECT_FALSE(listed.more);
    EXPECT_TRUE(list(2).more);
    EXPECT_EQ(list(2).readings.size(), 2u);
}

TEST_F(MeterReadings, StoreTheReasonForWhichOneIsLeftOut)
{
    leaveOut(m_ids[1], "wrong meter");
    EXPECT_EQ(kwhInForce(), (std::vector<double>{10, 12}));
    const auto listed = list();
    ASSERT_EQ(listed.readings.size(), 3u);
    EXPECT_TRUE(listed.readings[1].leftOut);
    EXPECT_EQ(listed.readings[1].why, "wrong meter");
    EXPECT_FALSE(listed.readings[0].leftOut);
    ASSERT_TRUE(restore(m_ids[1]));
    EXPECT_EQ(kwhInForce(), (std::vector<double>{10, 11, 12}));
}

TEST_F(MeterReadings, TheReasonFollowsUndoAndRedo)
{
    leaveOut(m_ids[1], "first");
    ASSERT_TRUE(restore(m_ids[1]));
    leaveOut(m_ids[1], "second");
    EXPECT_EQ(list().readings[1].why, "second");
    ASSERT_TRUE(store::undoLast(*m_logbook));
    EXPECT_FALSE(list().readings[1].leftOut);
    ASSERT_TRUE(store::undoLast(*m_logbook));
    EXPECT_EQ(list().readings[1].why, "first");
}

TEST_F(MeterReadings, OneIsNotRestoredOverAnother)
{
    leaveOut(m_ids[1], "wrong meter");
    auto change = Change::begin(*m_logbook, saying("typed"));
    ASSERT_TRUE(store::addMeterReading(*change, "Meter", reading(1, 11.5)));
    ASSERT_TRUE(change->commit());
    const Done back = restore(m_ids[1]);
    ASSERT_FALSE(back);
    EXPECT_EQ(back.error().kind, ProblemKind::data);
    EXPECT_EQ(kwhInForce(), (std::vector<double>{10, 11.5, 12}));
}

TEST_F(MeterReadings, OneLeftOutStaysSoWhenItsImportIsWithdrawnAndRestored)
{
    leaveOut(m_ids[1], "wrong meter");
    changeImport(store::withdraw);
    EXPECT_EQ(kwhInForce(), (std::vector<double>{12}));
    EXPECT_EQ(list().readings.size(), 1u);
    changeImport(store::restoreImport);
    EXPECT_EQ(kwhInForce(), (std::vector<double>{10, 12}));
    EXPECT_EQ(list().readings[1].why, "wrong meter");
}

TEST_F(MeterReadings, KnowHowFarTheirTimesMayBeOff)
{
    auto change = Change::begin(*m_logbook, saying("a round"));
    MeterReading now = reading(3, 13.0);
    now.timeDoubt = Milliseconds{0};
    MeterReading doubted = reading(4, 14.0);
    doubted.timeDoubt = std::chrono::minutes{25};
    ASSERT_TRUE(store::addMeterReading(*change, "Meter", now));
    ASSERT_TRUE(store::addMeterReading(*change, "Meter", doubted));
    ASSERT_TRUE(change->commit());
    const auto readings = store::readMeterReadings(*m_logbook, "Meter");
    ASSERT_TRUE(readings);
    ASSERT_EQ(readings->size(), 5u);
    EXPECT_EQ((*readings)[0].inForce.timeDoubt, Milliseconds{0}) << "imported";
    EXPECT_EQ((*readings)[2].inForce.timeDoubt, std::nullopt) << "the logbook's";
    EXPECT_EQ((*readings)[3].inForce.timeDoubt, Milliseconds{0});
    EXPECT_EQ((*readings)[4].inForce.timeDoubt, Milliseconds(std::chrono::minutes{25}));
}

TEST_F(MeterReadings, AnImpossibleDoubtIsDamage)
{
    for (const char* value : {"-1", "43200001"}) {
        ASSERT_TRUE(m_logbook->database().execute(
            (std::string("UPDATE meter_readings SET time_doubt_ms = ") + value + " WHERE id = 3")
                .c_str()));
        const auto readings = store::readMeterReadings(*m_logbook, "Meter");
        ASSERT_FALSE(readings) << value;
        EXPECT_EQ(readings.error().kind, ProblemKind::file) << value;
    }
}

} // namespace
} // namespace holdband::test
