#include "tests/ui/sample_window.h"

#include "core/exchange/load.h"
#include "core/store/history/history.h"
#include "core/store/history/history_text.h"
#include "core/store/readings/meter_readings.h"
#include "core/text/times.h"
#include "tests/ui/spoken.h"
#include "ui/window/pages.h"

#include <QDir>
#include <QFile>
#include <QTest>

namespace holdband::ui::test {

namespace {

const char* const description = R"json({
  "holdband": 1, "zone": "America/Denver", "units": "us", "currency": "USD",
  "price_per_kwh": 0.15,
  "setups": [
    { "name": "Loop", "kind": "coolant loop", "vessels": 2, "rated_power_w": 260,
      "parts": [ { "item": "pump", "quantity": 2, "price": 21.5 } ] },
    { "name": "Cabinet", "kind": "cabinet", "rated_power_w": 110 } ],
  "sensors": [
    { "name": "Loop beer", "reads": "beer", "setup": "Loop", "accuracy_c": 0.2 },
    { "name": "Cabinet beer", "reads": "beer", "setup": "Cabinet", "accuracy_c": 0.2 },
    { "name": "Room", "reads": "ambient" } ],
  "meters": [
    { "name": "Loop meter", "setup": "Loop", "resolution_kwh": 0.01 },
    { "name": "Cabinet meter", "setup": "Cabinet", "resolution_kwh": 0.01,
      "rolls_over_at_kwh": 10000 } ],
  "batches": [
    { "name": "Pale 1", "setup": "Loop", "pitched": "2026-03-07 18:00",
      "ended": "2026-03-09 18:00", "beer_sensor": "Loop beer", "ambient_sensor": "Room",
      "tolerance_f": 3, "schedule": [ { "stage": "Primary", "target_f": 66 } ] },
    { "name": "Pale 2", "setup": "Cabinet", "pitched": "2026-03-10 18:00",
      "beer_sensor": "Cabinet beer", "ambient_sensor": "Room", "tolerance_f": 3,
      "schedule": [ { "stage": "Primary", "target_f": 66 } ] } ],
  "files": [ { "file": "first.csv", "time": "time",
               "columns": { "Loop beer": "Loop beer (F)", "Cabinet beer": "Cabinet beer (F)",
                            "Room": "Room (F)" } } ],
  "meter_readings": [
    { "meter": "Loop meter", "at": "2026-03-07 18:05", "kwh": 12.40 },
    { "meter": "Loop meter", "at": "2026-03-08 18:05", "kwh": 13.60 },
    { "meter": "Loop meter", "at": "2026-03-09 18:05", "kwh": 14.80 },
    { "meter": "Cabinet meter", "at": "2026-03-10 18:05", "kwh": 40.10 },
    { "meter": "Cabinet meter", "at": "2026-03-11 18:05", "kwh": 40.60 },
    { "meter": "Cabinet meter", "at": "2026-03-12 07:05", "kwh": 40.90 } ]
})json";

/// Half-hourly from 7 March 18:00 to 12 March 12:00 local; the Loop's beer is at 71 °F for three
/// hours.
std::string firstLog()
{
    const Instant start = *parseRfc3339("2026-03-08T01:00:00Z");
    std::string text = "time,Loop beer (F),Cabinet beer (F),Room (F)\n";
    for (int i = 0; i <= 226; ++i) {
        const bool warm = i >= 12 && i <= 18;
        text += rfc3339Utc(start + std::chrono::minutes{30 * i}) + (warm ? ",71" : ",66") +
                ",66.5,62\n";
    }
    return text;
}

/// A language whose texts are the English ones in brackets.
class Brackets : public QTranslator {
public:
    bool isEmpty() const override { return false; }
    QString translate(const char*, const char* source, const char*, int) const override
    {
        return u'[' + QString::fromUtf8(source) + u']';
    }
};

} // namespace

void WindowTest::TearDown()
{
    Brackets brackets;
    const Spoken spoken(brackets, QLocale::c());
    for (const QString& name : QDir(m_folder.path()).entryList({"*.holdband"}, QDir::Files)) {
        const auto file = store::LogbookFile::open(path(name).toStdString(), store::Access::read);
        if (!file)
            continue; // some tests damage theirs on purpose
        const auto entries = store::readHistoryEntries(**file);
        ASSERT_TRUE(entries);
        for (const store::PastHistoryEntry& each : *entries) {
            const QString words = QString::fromStdString(store::historyText(each.entry));
            EXPECT_NE(each.entry.verb, store::HistoryVerb::other) << words.toStdString();
            EXPECT_TRUE(words.startsWith(u'[')) << words.toStdString();
        }
    }
}

void WindowTest::SetUp()
{
    ASSERT_TRUE(m_folder.isValid());
    write("small.json", description);
    write("first.csv", firstLog());
}

Instant WindowTest::now()
{
    return *parseRfc3339("2026-03-13T00:12:00Z");
}

void WindowTest::write(const QString& name, const std::string& text) const
{
    QFile file(path(name));
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    ASSERT_EQ(file.write(text.data(), static_cast<qint64>(text.size())),
              static_cast<qint64>(text.size()));
}

QString WindowTest::makeLogbook(const QString& name) const
{
    const QString logbook = path(name);
    const auto loaded =
        exchange::loadDescription(logbook.toStdString(), path("small.json").toStdString(), now);
    EXPECT_TRUE(loaded) << (loaded ? "" : loaded.error().sentence());
    return logbook;
}

std::unique_ptr<MainWindow> WindowTest::openWindow(const QString& logbook)
{
    auto window = std::make_unique<MainWindow>(now, QString());
    window->resize(1280, 860);
    window->openLogbook(logbook);
    window->show();
    EXPECT_TRUE(QTest::qWaitForWindowExposed(window.get()));
    while (window->pages()->makeNext()) // as the window does when idle
        continue;
    settle(*window);
    return window;
}

void WindowTest::settle(MainWindow& window)
{
    QCoreApplication::processEvents();
    EXPECT_TRUE(QTest::qWaitFor([&] { return window.session().idle(); }, 20'000));
    QCoreApplication::processEvents();
}

std::vector<double> WindowTest::kwhOf(const QString& logbook, const std::string& meter)
{
    std::vector<double> all;
    const auto file = store::LogbookFile::open(logbook.toStdString(), store::Access::read, now);
    EXPECT_TRUE(file);
    const auto stored = store::readMeterReadings(**file, meter);
    EXPECT_TRUE(stored);
    for (const store::StoredReading& reading : *stored)
        all.push_back(reading.inForce.registerReading.kilowattHours());
    return all;
}

} // namespace holdband::ui::test
