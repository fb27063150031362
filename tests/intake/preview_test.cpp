// The preview of a log that was never described: it never crashes, and every guess has a reason.
#include "core/intake/csv/preview.h"
#include "core/intake/log/import.h"
#include "core/intake/time/time_pattern.h"
#include "core/text/times.h"
#include "tests/store/logbooks.h"

#include <gmock/gmock.h>
#include <rapidcheck.h>

namespace holdband::test {
namespace {

using intake::Meaning;
using testing::HasSubstr;

class Preview : public LogbookTest {
protected:
    void SetUp() override
    {
        m_logbook = create();
        ASSERT_TRUE(m_logbook);
        addEquipment(*m_logbook);
    }
    Result<intake::LogPreview> look(std::string text) const
    {
        return intake::previewLog(*m_logbook,
                                  {"u.csv", std::make_shared<const std::string>(std::move(text))});
    }
    /// The problem's sentence, "" if there is a preview.
    std::string problem(std::string text) const
    {
        const auto seen = look(std::move(text));
        return seen ? std::string() : seen.error().sentence();
    }

    std::unique_ptr<store::LogbookFile> m_logbook;
};

TEST_F(Preview, uglyFilesAreRefusedInASentence)
{
    EXPECT_THAT(problem(""), HasSubstr("u.csv: the file is empty"));
    EXPECT_THAT(problem("Time,Beer\n"), HasSubstr("no rows below the header"));
    EXPECT_THAT(problem("one\ntwo\nthree\n"), HasSubstr("no column of times"));
    EXPECT_THAT(problem("Time,\"Beer\n2026-03-07 06:00,20\n"), HasSubstr("quote"));
    std::string wide = "Time";
    for (int i = 0; i < 100'000; ++i)
        wide += ",Beer";
    EXPECT_THAT(problem(wide + "\n" + wide + "\n"), HasSubstr("more than 1000 fields"));
    intake::ImportOptions options;
    options.path = "u.csv";
    options.text = std::make_shared<const std::string>("Time,Beer\n2026-03-07 06:00," +
                                                       std::string(2'000'000, '7') + "\n");
    const auto cell = intake::importLog(*m_logbook, options);
    ASSERT_FALSE(cell);
    EXPECT_THAT(cell.error().sentence(), HasSubstr("line 2: a row is longer than 64 KiB"));
}

TEST_F(Preview, longCellsAreShortenedWithoutCuttingACharacter)
{
    std::string note;
    for (int i = 0; i < 300; ++i)
        note += "ü";
    const auto seen = look("Time,Beer,Note\n2026-03-07 06:00,20,x" + note + "\n");
    ASSERT_TRUE(seen);
    EXPECT_EQ(seen->rows[1].cells[2], "x" + note.substr(0, 198) + "…");
}

TEST_F(Preview, duplicateAndEmptyHeadersAreChosenByTheirPlace)
{
    const std::string text = "Time,Probe,Probe,\n2026-03-07 06:00,20,21,22\n";
    const auto seen = look(text);
    ASSERT_TRUE(seen);
    intake::ImportOptions options;
    options.path = "u.csv";
    options.text = std::make_shared<const std::string>(text);
    options.map = seen->map();
    options.map->columns[2] = {Meaning::reading, "Beer"};
    options.layout = seen->layout;
    const auto report = intake::importLog(*m_logbook, options);
    ASSERT_TRUE(report) << report.error().sentence();
    ASSERT_EQ(report->rows.added.size(), 1u);
    EXPECT_EQ(report->rows.added.front().value, 21.0);
}

TEST_F(Preview, oneSensorForTwoColumnsIsRefused)
{
    const std::string text = "Time,A,B\n2026-03-07 06:00,20,21\n";
    intake::ImportOptions options;
    options.path = "u.csv";
    options.text = std::make_shared<const std::string>(text);
    options.map = look(text)->map();
    options.map->columns[1] = options.map->columns[2] = {Meaning::reading, "Beer"};
    options.layout = look(text)->layout;
    const auto report = intake::importLog(*m_logbook, options);
    ASSERT_FALSE(report);
    EXPECT_EQ(report.error().decision, Decision::columns);
    EXPECT_THAT(report.error().what, HasSubstr("\"Beer\" is given twice"));
}

TEST_F(Preview, everyGuessHasAReason)
{
    const auto seen = look("Time,Beer,beer (°C),Lid\n2026-03-07 06:00,20,21,shut\n");
    ASSERT_TRUE(seen);
    std::vector<std::string> reasons;
    for (const intake::ColumnGuess& column : seen->columns)
        reasons.push_back(column.reason);
    EXPECT_EQ(reasons, (std::vector<std::string>{
                           "its rows are times", "its header is the sensor’s name",
                           "another column has that name", "there are no numbers in it"}));
    EXPECT_EQ(seen->columns[2].unitReason, "the header says °C");
}

TEST(ColumnMapText, readsBackAsItWas)
{
    intake::ColumnMap map;
    map.columns = {
        {Meaning::time, {}},    {Meaning::reading, "Beer \"1\" ü", ReadingUnit::fahrenheit},
        {Meaning::ignored, {}}, {Meaning::name, {}},
        {Meaning::value, {}},   {Meaning::unit, {}}};
    map.names = {{"p7", "Beer", ReadingUnit::degreePlato}, {"cat", "", std::nullopt}};
    map.zone = "Europe/Vienna";
    map.dateOrder = DateOrder::dayMonthYear;
    map.timePattern = "dd.MM.yy HH:mm";
    map.decimalSign = ',';
    map.layout = {'\t', 3};
    EXPECT_EQ(*intake::columnMapFrom(intake::columnMapText(map)), map);
    EXPECT_EQ(*intake::columnMapFrom(intake::columnMapText({})), intake::ColumnMap{});
    EXPECT_FALSE(intake::columnMapFrom("no JSON"));
    EXPECT_FALSE(intake::columnMapFrom("[]"));
    EXPECT_EQ(*intake::columnMapFrom(R"({"columns":[7,{"is":"moon"}],"zone":3})"),
              (intake::ColumnMap{{{}, {}}, {}, {}, {}, {}, {}}));
}

std::string readBy(const char* pattern, const char* text)
{
    const auto compiled = TimePattern::compile(pattern);
    if (!compiled)
        return compiled.error().what;
    const auto stamp = compiled->read(text);
    return stamp ? rfc3339Utc(instantFromMs(stamp->value)) : stamp.error();
}

TEST(TimePatterns, readTheTimesTheyDescribe)
{
    EXPECT_EQ(readBy("dd.MM.yy HH:mm", "25.03.26 06:30"), "2026-03-25T06:30:00.000Z");
    EXPECT_EQ(readBy("d/M/yyyy h:mm a", "5/3/2026 12:05 am"), "2026-03-05T00:05:00.000Z");
    EXPECT_EQ(readBy("MMM d, yyyy h:mm:ss a", "Mar 5, 2026 1:02:03 PM"),
              "2026-03-05T13:02:03.000Z");
    EXPECT_EQ(readBy("d MMMM yyyy HH'h'mm", "5 march 2026 01h02"), "2026-03-05T01:02:00.000Z");
    EXPECT_EQ(readBy("yyyyMMdd HHmmss.zzz", "20260305 010203.250"), "2026-03-05T01:02:03.250Z");
    EXPECT_EQ(readBy("yyyy-MM-ddTHH:mmx", "2026-03-05T06:00+02:00"), "2026-03-05T04:00:00.000Z");
    EXPECT_EQ(readBy("yyyy-MM-dd HH:mm x", "2026-03-05 06:00 -0700"), "2026-03-05T13:00:00.000Z");
}

TEST(TimePatterns, refuseTextsThatDoNotFit)
{
    EXPECT_EQ(readBy("dd.MM.yy HH:mm", "25.3.26 06:30"), "does not fit the pattern");
    EXPECT_EQ(readBy("dd.MM.yy HH:mm", "25.03.26 06:30:00"), "goes on where the pattern ends");
    EXPECT_EQ(readBy("dd.MM.yy HH:mm", "31.02.26 06:30"), "is no date of the calendar");
    EXPECT_EQ(readBy("dd.MM.yy HH:mm", "25.03.26 24:00"), "is no time of day");
    EXPECT_EQ(readBy("dd.MM.yyyy HH:mm", "25.03.1970 06:30"),
              "its year is not between 1990 and 2100");
    EXPECT_EQ(readBy("d.M.yy h:mm a", "5.3.26 13:00 pm"), "has an hour that is not 1 … 12");
    EXPECT_EQ(readBy("dd.MM.yy", "25.03.26"), "the pattern lacks the hour (HH)");
    EXPECT_EQ(readBy("dd.MM HH:mm", "25.03 06:30"), "the pattern lacks the year (yyyy or yy)");
    EXPECT_EQ(readBy("dd.MM.yy hh:mm", "25.03.26 06:30"),
              "the pattern lacks the half of the day (a) that belongs to hh");
    EXPECT_EQ(readBy("q", ""), "\"q\" means nothing in a pattern");
    EXPECT_EQ(readBy("dd'", ""), "a quote in the pattern is left open");
    EXPECT_EQ(readBy("dd dd", ""), "\"dd\" repeats a part of the pattern");
}

TEST(TimePatterns, anyTextIsReadOrRefused)
{
    EXPECT_TRUE(
        rc::check("whatever is typed", [](const std::string& pattern, const std::string& text) {
            const auto compiled = TimePattern::compile(pattern);
            if (compiled) {
                const auto stamp = compiled->read(text);
                RC_ASSERT(stamp || stamp.error() != nullptr);
            }
        }));
}

} // namespace
} // namespace holdband::test
