// The paper form for rounds, and when a round is announced.
#include "core/text/times.h"
#include "tests/ui/spoken.h"
#include "ui/rounds/paper_sheet.h"
#include "ui/rounds/reminder.h"

#include <QFile>
#include <QTemporaryDir>
#include <gtest/gtest.h>

namespace holdband::ui {

namespace {

results::RoundsSheet sheetAt(const char* now)
{
    results::RoundsSheet sheet;
    sheet.zone = *Zone::named("America/Denver");
    sheet.now = *parseRfc3339(now);
    results::RoundRow meter;
    meter.name = "Loop meter";
    meter.lastAt = *parseRfc3339("2026-03-11T13:05:00Z");
    meter.last = 58.14;
    results::RoundRow gravity;
    gravity.kind = results::RoundKind::gravity;
    gravity.name = "Ale 4";
    gravity.unit = ReadingUnit::specificGravity;
    sheet.rows = {meter, gravity};
    return sheet;
}

const char* const evening = "2026-03-12T22:30:00Z"; // 16:30 local, inside 16:00 … 20:00

} // namespace

TEST(PaperSheet, HasALineForEachRoundOfTwoWeeks)
{
    const PaperSheet paper = paperSheet(sheetAt(evening));
    EXPECT_EQ(paper.title, "Rounds from 12 Mar 2026");
    EXPECT_EQ(paper.columns, (QStringList{"Loop meter, kWh", "Ale 4, gravity"}));
    EXPECT_EQ(paper.last, (QStringList{"58.14", ""}));
    ASSERT_EQ(paper.lines.size(), 28);
    EXPECT_EQ(paper.lines.first(), "Thu 12 Mar · morning");
    EXPECT_EQ(paper.lines.last(), "Wed 25 Mar · evening");
}

TEST(PaperSheet, SpeaksTheReadersLanguage)
{
    const test::German german;
    ASSERT_TRUE(german.loaded());
    const PaperSheet paper = paperSheet(sheetAt(evening));
    EXPECT_EQ(paper.title, "Rundgänge ab 12. März 2026");
    EXPECT_EQ(paper.last.first(), "58,14");
    EXPECT_EQ(paper.lines.first(), "Do. 12. März · morgens");
    EXPECT_EQ(paper.lines.last(), "Mi. 25. März · abends");
}

TEST(PaperSheet, IsWrittenAsAPdfCompletelyOrNotAtAll)
{
    const QTemporaryDir folder;
    const QString path = folder.filePath("rounds.pdf");
    ASSERT_TRUE(writePaperSheet(sheetAt(evening), path));
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    const QByteArray bytes = file.readAll();
    EXPECT_TRUE(bytes.startsWith("%PDF-"));
    EXPECT_TRUE(bytes.trimmed().endsWith("%%EOF"));
    const Done refused = writePaperSheet(sheetAt(evening), folder.filePath("no/such/folder.pdf"));
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().kind, ProblemKind::file);
}

TEST(Reminder, AnnouncesAnOpenRoundOnceUntilAMeterIsRead)
{
    const results::RoundsSheet open = sheetAt(evening);
    const auto due = roundToAnnounce(open, std::nullopt);
    EXPECT_EQ(due, parseRfc3339("2026-03-12T22:00:00Z").value());
    EXPECT_FALSE(roundToAnnounce(open, due)) << "once";
    results::RoundsSheet read = open;
    read.rows[0].lastAt = *parseRfc3339("2026-03-12T22:10:00Z");
    EXPECT_FALSE(roundToAnnounce(read, std::nullopt)) << "read meanwhile";
    results::RoundsSheet idle = open;
    idle.rows.pop_back();
    EXPECT_FALSE(roundToAnnounce(idle, std::nullopt)) << "no batch runs";
    EXPECT_FALSE(roundToAnnounce(sheetAt("2026-03-12T21:30:00Z"), std::nullopt)) << "too early";
    EXPECT_FALSE(roundToAnnounce(sheetAt("2026-03-13T03:00:00Z"), std::nullopt)) << "over";
}

} // namespace holdband::ui
