// Logs whose columns are separated by blanks.
#include "core/intake/csv/tokens.h"
#include "tests/intake/log_files.h"

#include <gmock/gmock.h>
#include <rapidcheck.h>

namespace holdband::test {
namespace {

using testing::HasSubstr;
using Rows = std::vector<std::vector<std::string>>;

Rows blankRows(std::string_view text)
{
    Rows rows;
    CsvTokens tokens(' ', [&](const CsvRow& row) {
        rows.emplace_back(row.fields.begin(), row.fields.end());
        return true;
    });
    EXPECT_TRUE(tokens.feed(text));
    EXPECT_TRUE(tokens.finish());
    return rows;
}

class BlankColumns : public LogFiles {};

TEST(BlankTokens, RunsOfSpacesAndTabsPartFields)
{
    EXPECT_EQ(blankRows("  a  b\t \tc \n\n   \nd\r\n"), (Rows{{"a", "b", "c"}, {"d"}}));
    EXPECT_EQ(blankRows(" \"a b\"   c  \"\"\td\n\n  \ne \"f\"\"g\"\n"),
              (Rows{{"a b", "c", "", "d"}, {"e", "f\"g"}}));
    EXPECT_EQ(blankRows(std::string(3000, ' ') + "a"), Rows{{"a"}});
}

TEST(BlankTokens, QuotesElsewhereChangeNoOtherRow)
{
    rc::check([] {
        std::string text;
        for (const char c :
             *rc::gen::container<std::string>(rc::gen::element('a', ' ', '\t', '\n')))
            text += c;
        Rows expected = blankRows(text + "\n");
        expected.push_back({"q"});
        RC_ASSERT(blankRows(text + "\n\"q\"\n") == expected);
        expected.insert(expected.begin(), {"q"});
        expected.pop_back();
        RC_ASSERT(blankRows("\"q\"\n" + text + "\n") == expected);
    });
}

TEST_F(BlankColumns, ADateAndATimeAreTwoColumns)
{
    const auto log = read("Date       Time  Beer   \"Room air\"\n"
                          "2026-03-08 00:00 68.5   70\n"
                          "2026-03-08 01:00 68.25  71\n");
    ASSERT_TRUE(log) << log.error().sentence();
    EXPECT_EQ(log->delimiter, ' ');
    EXPECT_EQ(log->timeHeader, "Date+Time");
    EXPECT_EQ(log->columns.at(0).raw, (Values{68.5, 68.25}));
    EXPECT_EQ(log->ignoredColumns, std::vector<std::string>{"Room air"});
    auto named = request(write("Beer Date Time\n68.5 2026-03-08 00:00\n"));
    named.timeColumn = "Date+Time";
    EXPECT_EQ(readLog(named)->columns.at(0).raw, Values{68.5});
}

TEST_F(BlankColumns, OneColumnMayHoldTheTime)
{
    EXPECT_EQ(read("Time Beer\n2026-03-08T00:00 68.5\n")->columns.at(0).raw, Values{68.5});
    EXPECT_EQ(read("Time Beer\n\"2026-03-08 00:00\" 68,5\n")->columns.at(0).raw, Values{68.5});
    EXPECT_EQ(read("Time\t  Beer\n1772928000 68.5\n")->columns.at(0).raw, Values{68.5});
}

TEST_F(BlankColumns, OtherSeparatorsComeFirst)
{
    const auto log = read("Log Time,Beer\n2026-03-08 00:00,68.5\n");
    ASSERT_TRUE(log) << log.error().sentence();
    EXPECT_EQ(log->delimiter, ',');
}

TEST_F(BlankColumns, ANameWithABlankIsAskedFor)
{
    const auto log = read("Date Time Beer Temp Room\n2026-03-08 00:00 68.5 70\n"
                          "2026-03-08 01:00 68.5 70\n");
    ASSERT_FALSE(log);
    EXPECT_EQ(
        log.error().sentence(),
        "log.csv, line 1: blanks part the header into 5 columns and the next row into 4; write "
        "names with blanks in them in quotes.");
    EXPECT_EQ(log.error().decision, Decision::layout);
}

TEST_F(BlankColumns, DatesThatFitTwoOrdersAreAskedFor)
{
    const auto log = read("Date Time Beer\n03/04/26 00:00 68.5\n");
    ASSERT_FALSE(log);
    EXPECT_EQ(log.error().decision, Decision::dateOrder);
}

TEST_F(BlankColumns, ARowThatIsTooShortIsRejected)
{
    const auto log = read("Date Time Beer Air\n2026-03-08 00:00 68.5 70\n2026-03-08 01:00 70\n"
                          "2026-03-08 04:00 68.5 70\n");
    ASSERT_TRUE(log) << log.error().sentence();
    EXPECT_EQ(log->columns.at(0).raw, (Values{68.5, 68.5}));
    ASSERT_EQ(log->rejected.size(), 1u);
    EXPECT_EQ(log->rejected[0].line, 3);
}

} // namespace
} // namespace holdband::test
