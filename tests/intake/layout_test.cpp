// A log's delimiter and header line: detected with the reason, or as set.
#include "core/intake/log/import.h"
#include "core/intake/log/remembered.h"
#include "tests/store/logbooks.h"

#include <fstream>
#include <gmock/gmock.h>

namespace holdband::test {
namespace {

using intake::Meaning;
using testing::ElementsAre;
using testing::HasSubstr;

class Layout : public LogbookTest {
protected:
    void SetUp() override
    {
        m_logbook = create();
        addEquipment(*m_logbook);
    }

    static intake::LogSource source(const std::string& text)
    {
        return {"l.csv", std::make_shared<const std::string>(text)};
    }
    Result<intake::LogPreview> look(const std::string& text,
                                    const LayoutRequest& layoutRequest = {}) const
    {
        return intake::previewLog(*m_logbook, source(text), layoutRequest);
    }
    Result<intake::ImportReport> import(const std::string& text, const LayoutRequest& layoutRequest,
                                        const char* header = "Beer") const
    {
        intake::ImportOptions options;
        options.path = "l.csv";
        options.text = source(text).text;
        options.layoutRequest = layoutRequest;
        options.columns = {{"Beer", header}};
        return intake::importLog(*m_logbook, options);
    }
    std::vector<double> values() const
    {
        return store::readSeries(*m_logbook, "Beer", {instantFromMs(0), instantFromMs(1LL << 42)})
            ->value;
    }

    std::unique_ptr<store::LogbookFile> m_logbook;
};

std::vector<std::string> headers(const intake::LogPreview& preview)
{
    std::vector<std::string> list;
    for (const intake::ColumnGuess& column : preview.columns)
        list.push_back(column.header);
    return list;
}

/// Commas would split it best, but they are inside the numbers.
const std::string semicolons = "Time;Beer;Room\n2026-03-07 06:00;20,5;18,1\n"
                               "2026-03-07 07:00;20,6;18,2\n";

/// Two rows that could be a header: names, and units, where the logger started again.
const std::string twoHeaders = "Logger,Serial,Site\nTime,Beer,Room\nWhen,Upper,Lower\n"
                               "2026-03-07 06:00,20.5,18.1\n2026-03-07 07:00,20.6,18.2\n";

TEST_F(Layout, theDetectedLayoutHasItsReasons)
{
    const auto seen = look("made by hand\n\n" + semicolons);
    ASSERT_TRUE(seen && seen->found);
    EXPECT_EQ(seen->found->delimiter, ';');
    EXPECT_EQ(seen->found->delimiterReason, "it gives times and numbers");
    EXPECT_EQ(seen->found->headerLine, 3);
    EXPECT_EQ(seen->found->headerReason, "times and numbers follow");
    const auto bare = look("2026-03-07 06:00,20.5\n2026-03-07 07:00,20.6\n");
    ASSERT_TRUE(bare && bare->found);
    EXPECT_EQ(bare->found->delimiterReason, "it splits most rows into the same number of columns");
    EXPECT_EQ(bare->found->headerReason, "the first row holds values");
}

TEST_F(Layout, theHeaderIsInTheLineThatIsSet)
{
    EXPECT_EQ(look(twoHeaders)->layout.headerLine, 3);
    const auto seen = look(twoHeaders, {{}, 2});
    ASSERT_TRUE(seen) << seen.error().sentence();
    EXPECT_THAT(headers(*seen), ElementsAre("Time", "Beer", "Room"));
    EXPECT_EQ(seen->layoutReason, "the header is in line 2: as chosen");
    EXPECT_EQ(seen->found->headerLine, 3) << "what was found stays told";
    const auto report = import(twoHeaders, {{}, 2});
    ASSERT_TRUE(report) << report.error().sentence();
    EXPECT_EQ(report->file.headerLine, 2);
    EXPECT_EQ(values(), (std::vector<double>{20.5, 20.6}));
    ASSERT_EQ(report->file.rejected.size(), 1u);
    EXPECT_EQ(report->file.rejected.front().line, 3);
}

TEST_F(Layout, thereIsNoHeaderIfThatIsSet)
{
    const std::string text = "2026-03-07 06:00,20.5\n2026-03-07 07:00,20.6\n";
    const auto report = import(text, {{}, 0}, "column 2");
    ASSERT_TRUE(report) << report.error().sentence();
    EXPECT_EQ(values(), (std::vector<double>{20.5, 20.6}));
    const auto seen = look(twoHeaders, {{}, 0});
    ASSERT_TRUE(seen) << seen.error().sentence();
    EXPECT_THAT(headers(*seen), ElementsAre("column 1", "column 2", "column 3"));
}

TEST_F(Layout, theDelimiterThatIsSetSeparatesTheColumns)
{
    // With commas there are more columns, all of them with times and numbers below.
    const std::string text = "Time;Beer,a,b\n2026-03-07 06:00;20,1,5\n2026-03-07 07:00;21,2,5\n";
    const auto comma = look(text, {',', {}});
    ASSERT_TRUE(comma) << comma.error().sentence();
    EXPECT_EQ(comma->columns.size(), 3u);
    const auto semicolon = look(text, {';', {}});
    ASSERT_TRUE(semicolon) << semicolon.error().sentence();
    EXPECT_THAT(headers(*semicolon), ElementsAre("Time", "Beer,a,b"));
    EXPECT_EQ(semicolon->layout.delimiter, ';');
    const auto report = import(semicolons, {';', {}});
    ASSERT_TRUE(report) << report.error().sentence();
    EXPECT_EQ(values(), (std::vector<double>{20.5, 20.6}));
}

TEST_F(Layout, impossibleLayoutsAreRefusedWithTheirPlace)
{
    const auto sentence = [&](const LayoutRequest& layoutRequest) {
        const auto report = import(twoHeaders, layoutRequest);
        return report ? std::string() : report.error().sentence();
    };
    EXPECT_THAT(sentence({{}, 40}), HasSubstr("l.csv: no row begins in line 40"));
    EXPECT_THAT(sentence({{}, 4}), HasSubstr("l.csv, line 4: this is no header: it has a time"));
    const auto timeless = import("Beer,Room\n20,18\n21,18\n", {{}, 1});
    ASSERT_FALSE(timeless);
    EXPECT_THAT(timeless.error().sentence(),
                HasSubstr("l.csv, line 1: no column of times was found below it"));
    EXPECT_EQ(timeless.error().decision, Decision::timeColumn);
    EXPECT_THAT(sentence({';', 2}), HasSubstr("l.csv, line 2: the header has only one column"));
    const auto gone = look(twoHeaders, {{}, 40});
    ASSERT_FALSE(gone);
    EXPECT_EQ(gone.error().decision, Decision::layout);
    EXPECT_TRUE(values().empty());
}

TEST_F(Layout, layoutsAreRememberedForFilesWithTheSameDetectedLayout)
{
    auto seen = look(twoHeaders, {{}, 2});
    ASSERT_TRUE(seen);
    intake::ColumnMap map = seen->map();
    map.layout = {{}, 2};
    map.columns[1] = {Meaning::reading, "Beer", ReadingUnit::celsius};
    intake::rememberMap(*m_logbook, *seen, map);
    const auto next =
        intake::openPreview(*m_logbook, source(twoHeaders + "2026-03-07 08:00,21,18\n"));
    ASSERT_TRUE(next) << next.error().sentence();
    EXPECT_TRUE(next->remembered);
    EXPECT_EQ(next->map.layout, (LayoutRequest{{}, 2}));
    EXPECT_EQ(next->map.columns[1], map.columns[1]);
    // A file that has such a header in its first line is read from there.
    const auto simple =
        intake::openPreview(*m_logbook, source("Time,Beer,Room\n2026-03-07 06:00,20.5,18.1\n"));
    ASSERT_TRUE(simple);
    EXPECT_EQ(simple->preview.layout.headerLine, 1);
    EXPECT_TRUE(simple->remembered);
    const auto again = intake::detectAgain(*m_logbook, source(twoHeaders));
    EXPECT_EQ(again->preview.layout.headerLine, 3);
}

} // namespace
} // namespace holdband::test
