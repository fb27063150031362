// Logs of one JSON object per line.
#include "core/intake/container/json_lines.h"
#include "core/intake/csv/preview.h"
#include "tests/intake/log_files.h"
#include "tests/intake/packing.h"
#include "tests/intake/watched_file.h"

#include <gmock/gmock.h>

namespace holdband::test {
namespace {

using testing::HasSubstr;

class JsonLinesLog : public LogFiles {};

const std::string jsonLog = R"({"time": "2026-03-08 00:00", "Beer": 68.5})"
                            "\n"
                            R"({"time": "2026-03-08 01:00", "Beer": 68.25, "rssi": -70})"
                            "\n";

std::string tableOf(std::string_view text)
{
    const auto table = jsonLinesTable(text);
    return table ? table->csv : table.error().sentence();
}

TEST(JsonTable, HasAColumnForEachKeyInTheOrderTheyCome)
{
    EXPECT_EQ(tableOf(jsonLog), "time,Beer,rssi\n2026-03-08 00:00,68.5,\n"
                                "2026-03-08 01:00,68.25,-70\n");
    EXPECT_EQ(tableOf("{\"a\":1}\n\n{\"b\":2}\r\n{\"a\":3,\"b\":4}"), "a,b\n1,\n\n,2\n3,4\n");
}

TEST(JsonTable, JoinsTheKeysOfNestedObjectsAndLists)
{
    EXPECT_EQ(
        tableOf(R"({"probe": {"beer": {"c": 20}, "on": true}, "t": [1, [2, null]], "e": {}})"),
        "probe.beer.c,probe.on,t.0,t.1.0,t.1.1\n20,true,1,2,\n");
}

TEST(JsonTable, LeavesNumbersAsWritten)
{
    EXPECT_EQ(tableOf(R"({"kwh": 143.20, "big": 12345678901234567890123, "e": 1.50e2})"),
              "kwh,big,e\n143.20,12345678901234567890123,1.50e2\n");
}

TEST(JsonTable, QuotesTexts)
{
    EXPECT_EQ(tableOf(R"({"a, b": "x\"y", "n": "1\n2", "u": "\u00b0F"})"),
              "\"a, b\",n,u\n\"x\"\"y\",1 2,°F\n");
}

TEST(JsonTable, ShowsALineThatIsNoObjectInAllColumns)
{
    EXPECT_EQ(tableOf("{\"a\":1,\"b\":2}\n{\"a\":1,\"a\":2}\n[1]\n{\"a\":"),
              "a,b\n1,2\n\"{\"\"a\"\":1,\"\"a\"\":2}\",\"{\"\"a\"\":1,\"\"a\"\":2}\"\n[1],[1]\n"
              "\"{\"\"a\"\":\",\"{\"\"a\"\":\"\n");
    std::string deep = "{\"a\":1}\n";
    for (int i = 0; i < 100'000; ++i)
        deep += "{\"a\":";
    EXPECT_THAT(tableOf(deep), HasSubstr("\"{\"\"a\"\":{"));
}

TEST(JsonTable, RefusesTooManyKeysAndTooLongALine)
{
    std::string many = "{\"k\":1";
    for (int i = 0; i < 1000; ++i)
        many += ",\"" + std::to_string(i) + "\":1";
    EXPECT_THAT(tableOf("{\"k\":1}\n" + many + "}"), HasSubstr("line 2: the objects have more"));
    EXPECT_THAT(tableOf("{\"k\":\"" + std::string(2 << 20, 'x') + "\"}"),
                HasSubstr("line 1: the line is longer than 1 MiB"));
}

TEST_F(JsonLinesLog, IsReadWithTheLinesOfItsFile)
{
    const auto log = read(jsonLog + "{\"time\": \"2026-03-08 02:00\", \"Be\n"
                                    "{\"time\": \"2026-03-08 03:00\", \"Beer\": \"warm\"}\n"
                                    "{\"time\": \"2026-03-08 04:00\", \"Beer\": null}\n"
                                    "{\"time\": \"2026-03-08 05:00\", \"Beer\": \"68.75\"}\n");
    ASSERT_TRUE(log) << log.error().sentence();
    EXPECT_EQ(log->columns.at(0).raw, (Values{68.5, 68.25, 68.75}));
    EXPECT_EQ(log->columns.at(0).line, (std::vector<std::uint32_t>{1, 2, 6}));
    ASSERT_EQ(log->rejected.size(), 2u);
    EXPECT_EQ(log->rejected[0].line, 3);
    EXPECT_THAT(log->rejected[0].text, HasSubstr("\"Be"));
    EXPECT_EQ(log->rejected[1].line, 4);
    EXPECT_EQ(log->ignoredColumns, std::vector<std::string>{"rssi"});
}

TEST_F(JsonLinesLog, IsReadWithAMarkAndPackedToo)
{
    const Values beer{68.5, 68.25};
    EXPECT_EQ(read("\xEF\xBB\xBF" + jsonLog)->columns.at(0).raw, beer);
    EXPECT_EQ(read(gzipped(jsonLog))->columns.at(0).raw, beer);
    EXPECT_EQ(read(zipped({{"a.jsonl", jsonLog}}))->columns.at(0).raw, beer);
    EXPECT_EQ(
        readLog(request(write("Time,Beer\n2026-03-08 00:00,68\n", "a.jsonl")))->columns.at(0).raw,
        Values{68})
        << "a CSV stays one, whatever its name";
}

TEST_F(JsonLinesLog, AsksWhereItCanBeReadInTwoWays)
{
    const auto log = read(R"({"time": "03/04/26 00:00", "Beer": 68.5})");
    ASSERT_FALSE(log);
    EXPECT_EQ(log.error().decision, Decision::dateOrder);
}

TEST_F(JsonLinesLog, JsonOverSeveralLinesIsRefused)
{
    const std::string sentence =
        "log.csv, line 1: this is JSON over several lines; write one object "
        "in each line, without a list around them.";
    EXPECT_EQ(problem("{\n  \"time\": \"2026-03-08 00:00\",\n  \"Beer\": 68\n}\n"), sentence);
    EXPECT_EQ(problem("[\n{\"time\": 1}\n]\n"), sentence);
}

TEST_F(JsonLinesLog, AProblemWithItsLayoutNamesTheTable)
{
    EXPECT_THAT(problem("{\"time\": \"noon\", \"Beer\": 68}\n"),
                testing::StartsWith("log.csv, read as a table, line 2, column time: "));
}

TEST_F(WatchedFile, aLogOfJsonLinesIsReadAgainWhenItHasGrown)
{
    const std::string one = "{\"time\": \"2026-11-10 08:00\", \"Beer\": 20}\n";
    write(one);
    EXPECT_EQ(poll().added, 1);
    append("{\"time\": \"2026-11-10 09:00\", \"rssi\": 1, \"Beer\": 21}\n{\"time\": \"2026");
    EXPECT_EQ(poll().added, 1);
    append("-11-10 10:00\", \"Beer\": 22}\n");
    EXPECT_EQ(poll().added, 1);
    EXPECT_EQ(readings(), 3u);
    const auto preview = intake::previewLog(*m_logbook, {file()});
    ASSERT_TRUE(preview) << preview.error().sentence();
    EXPECT_EQ(preview->addedLines, 1);
    EXPECT_EQ(preview->rows.at(1).line, 2) << "the line of the table";
}

} // namespace
} // namespace holdband::test
