// Workbooks: sheets, texts, numbers, dates, and broken ones.
#include "core/intake/container/cell_format.h"
#include "core/intake/container/log_bytes.h"
#include "tests/intake/log_files.h"
#include "tests/intake/workbook_maker.h"

#include <gmock/gmock.h>

namespace holdband::test {
namespace {

using testing::HasSubstr;

class Workbook : public LogFiles {
protected:
    LogRequest requestOf(const std::string& bytes, std::optional<std::string> sheet = {}) const
    {
        LogRequest request = LogFiles::request(write(bytes, "log.xlsx"));
        request.zone = Zone::utc();
        request.sheet = std::move(sheet);
        return request;
    }
    Outcome readBook(const MadeWorkbook& made, std::optional<std::string> sheet = {}) const
    {
        return readLog(requestOf(workbookBytes(made), std::move(sheet)));
    }
    std::string refusalOf(const std::string& bytes, std::optional<std::string> sheet = {}) const
    {
        const auto log = readLog(requestOf(bytes, std::move(sheet)));
        return log ? std::string{} : log.error().sentence();
    }
};

const std::string beerHeader = rowOf(textCell("Time") + textCell("Beer"));

/// 46089 is 8 March 2026.
MadeWorkbook beerBook()
{
    return {
        {{"Log", beerHeader + rowOf(numberCell("46089.25", 1) + numberCell("68.5")) +
                     rowOf(numberCell("46089.2916666667", 1) + numberCell("68.25000000000001"))}},
        {},
        {"yyyy\\-mm\\-dd hh:mm"}};
}

TEST_F(Workbook, ItsFirstSheetIsReadAsALog)
{
    const auto log = readBook(beerBook());
    ASSERT_TRUE(log) << log.error().sentence();
    EXPECT_EQ(timesOf(log->columns.at(0)), (Times{"2026-03-08T06:00", "2026-03-08T07:00"}));
    EXPECT_EQ(log->columns.at(0).raw, (Values{68.5, 68.25})) << "15 digits";
    EXPECT_EQ(log->columns.at(0).line, (std::vector<std::uint32_t>{2, 3})) << "rows of the sheet";
    EXPECT_TRUE(log->warnings.empty());
    write(workbookBytes(beerBook()), "log.csv");
    LogRequest named = requestOf({});
    named.path = path("log.csv");
    EXPECT_TRUE(readLog(named)) << "recognised by its bytes";
    named.path = write("Time,Beer\n2026-03-08 06:00,68.5\n", "plain.xlsx");
    EXPECT_TRUE(readLog(named)) << "a CSV stays one, whatever its name";
}

TEST_F(Workbook, AnotherSheetIsReadByItsName)
{
    MadeWorkbook made = beerBook();
    made.sheets.insert(made.sheets.begin(), {"Notes", rowOf(textCell("nothing here"))});
    made.sheets.insert(made.sheets.begin(), {"Old", "", "hidden"});
    EXPECT_EQ(readBook(made, "Log")->columns.at(0).raw, (Values{68.5, 68.25}));
    EXPECT_EQ(readBook(made, "log")->columns.at(0).raw, (Values{68.5, 68.25}));
    EXPECT_EQ(refusalOf(workbookBytes(made), "Beer"),
              "log.xlsx: there is no sheet \"Beer\"; the sheets are: Old, Notes, Log.");
    EXPECT_THAT(refusalOf(workbookBytes(made)), HasSubstr("no column of times")) << "it is Notes";
    EXPECT_EQ(refusalOf("Time,Beer\n2026-03-08 06:00,68.5\n", "Log"),
              "log.xlsx: this file is no workbook: it has no sheet \"Log\".");
}

TEST_F(Workbook, SaysWhichOfSeveralSheetsWasRead)
{
    MadeWorkbook made = beerBook();
    made.sheets.push_back({"Notes", ""});
    made.sheets.push_back({"Old", "", "hidden"});
    EXPECT_EQ(readBook(made)->warnings,
              std::vector<std::string>{"the sheet \"Log\" was read; the workbook also has: Notes"});
    EXPECT_TRUE(readBook(made, "Log")->warnings.empty());
}

TEST_F(Workbook, SharedTextsRunsOfTextAndBooleansAreRead)
{
    MadeWorkbook made;
    made.texts = {"<t>Time</t>",
                  "<r><t>Be</t></r><r><t xml:space=\"preserve\">er</t></r>"
                  "<rPh sb=\"0\" eb=\"1\"><t>sound</t></rPh>",
                  "<t>2026-03-08&#10;06:00, early</t>", "<t>Note</t>"};
    const auto shared = [](int i) { return "<c t=\"s\"><v>" + std::to_string(i) + "</v></c>"; };
    made.sheets = {{"Log", rowOf(shared(0) + shared(1) + shared(3)) +
                               rowOf("<c t=\"d\"><v>2026-03-08T05:00:00</v></c>" +
                                     numberCell("68") + shared(2)) +
                               rowOf(textCell("2026-03-08 06:00") + "<c t=\"b\"><v>1</v></c>")}};
    const auto log = readBook(made);
    ASSERT_TRUE(log) << log.error().sentence();
    EXPECT_EQ(log->columns.at(0).header, "Beer");
    EXPECT_EQ(log->columns.at(0).raw, Values{68});
    ASSERT_EQ(log->rejected.size(), 1u);
    EXPECT_EQ(log->rejected[0].text, "TRUE");
    EXPECT_EQ(log->rejected[0].line, 3);
}

TEST_F(Workbook, EmptyRowsAndCellsKeepTheirPlaces)
{
    MadeWorkbook made = beerBook();
    made.sheets[0].rows = "<row r=\"3\"><c r=\"B3\" t=\"inlineStr\"><is><t>Time</t></is></c>"
                          "<c r=\"D3\" t=\"inlineStr\"><is><t>Beer</t></is></c></row>"
                          "<row r=\"4\" hidden=\"1\"><c r=\"A4\" s=\"1\"/><c r=\"B4\" s=\"1\">"
                          "<v>46089.25</v></c><c r=\"D4\"><v>68.5</v></c></row>"
                          "<row r=\"9\"><c r=\"B9\" s=\"1\"><v>46089.5</v></c>"
                          "<c r=\"D9\"><v>warm</v></c></row>";
    const auto log = readBook(made);
    ASSERT_TRUE(log) << log.error().sentence();
    EXPECT_EQ(log->headerLine, 3);
    EXPECT_EQ(log->columns.at(0).line, std::vector<std::uint32_t>{4}) << "hidden rows count";
    ASSERT_EQ(log->rejected.size(), 1u);
    EXPECT_EQ(log->rejected[0].line, 9);
}

TEST_F(Workbook, TheSheetsToChooseFromAreThoseThatAreShown)
{
    const auto sheetsOf = [this](const std::string& bytes) {
        return LogBytes::sheetNames({write(bytes, "log.xlsx")});
    };
    MadeWorkbook made = beerBook();
    made.sheets.push_back({"Notes", "", "hidden"});
    made.sheets.push_back({"April", ""});
    EXPECT_EQ(*sheetsOf(workbookBytes(made)), (std::vector<std::string>{"Log", "April"}));
    made.sheets = {{"Notes", "", "hidden"}, {"More", "", "veryHidden"}};
    EXPECT_EQ(*sheetsOf(workbookBytes(made)), (std::vector<std::string>{"Notes", "More"}));
    EXPECT_TRUE(sheetsOf("Time,Beer\n2026-03-08 06:00,68.5\n")->empty());
    EXPECT_TRUE(sheetsOf(zipped({{"log.csv", "Time,Beer\n"}}))->empty());
    EXPECT_TRUE(sheetsOf(gzipped("Time,Beer\n"))->empty());
    EXPECT_FALSE(sheetsOf("PK\x03\x04 cut"));
}

TEST_F(Workbook, ADateAndATimeMayBeTwoColumns)
{
    MadeWorkbook made;
    made.formats = {"dd.mm.yy", "hh:mm"};
    made.sheets = {
        {"Log", rowOf(textCell("Date") + textCell("Clock") + textCell("Beer")) +
                    rowOf(numberCell("46089", 1) + numberCell("0.25", 2) + numberCell("68.5"))}};
    const auto log = readBook(made);
    ASSERT_TRUE(log) << log.error().sentence();
    EXPECT_EQ(timesOf(log->columns.at(0)), Times{"2026-03-08T06:00"});
}

TEST_F(Workbook, DaysMayCountFrom1904)
{
    MadeWorkbook made = beerBook();
    made.from1904 = true;
    made.sheets[0].rows = beerHeader + rowOf(numberCell("44627.25", 1) + numberCell("68.5"));
    EXPECT_EQ(timesOf(readBook(made)->columns.at(0)), Times{"2026-03-08T06:00"});
}

TEST_F(Workbook, FormulasGiveTheirStoredValues)
{
    MadeWorkbook made = beerBook();
    made.sheets[0].rows = beerHeader +
                          rowOf(numberCell("46089.25", 1) + "<c><f>A1+1</f><v>68.5</v></c>") +
                          rowOf(numberCell("46089.5", 1) + "<c r=\"B3\"><f>A1+1</f></c>");
    const auto log = readBook(made);
    ASSERT_TRUE(log) << log.error().sentence();
    EXPECT_EQ(log->columns.at(0).raw, Values{68.5});
    EXPECT_EQ(log->warnings,
              std::vector<std::string>{"1 formula has no stored value (B3): open the workbook, "
                                       "compute it and save it"});
}

TEST_F(Workbook, TextDatesThatFitTwoOrdersAreAskedFor)
{
    MadeWorkbook made;
    made.sheets = {{"Log", beerHeader + rowOf(textCell("03/04/26 00:00") + numberCell("68"))}};
    const auto log = readBook(made);
    ASSERT_FALSE(log);
    EXPECT_EQ(log.error().decision, Decision::dateOrder);
}

TEST_F(Workbook, BrokenOnesAreRefusedWithTheirPlace)
{
    const auto sheetOf = [](const std::string& rows) { return workbookBytes({{{"Log", rows}}}); };
    const std::pair<std::string, const char*> cases[] = {
        {sheetOf(""), "log.xlsx: the file is empty."},
        {sheetOf("<row r=\"5\"></row><row r=\"4\"></row>"),
         "log.xlsx, sheet Log, row 5: its rows are not in order"},
        {sheetOf("<row r=\"1048577\"></row>"), "its rows are not in order"},
        {sheetOf(rowOf("<c r=\"7\"><v>1</v></c>")), "row 1: a cell has no place in it"},
        {sheetOf(rowOf("<c r=\"XFE1\"><v>1</v></c>")), "row 1: a cell has no place in it"},
        {sheetOf(rowOf("<c r=\"ALM1\"><v>1</v></c>")), "row 1: it has more than 1000 columns"},
        {sheetOf(rowOf("<c r=\"A1\"><v>1</v></c><c r=\"A1\"><v>2</v></c>")), "same cell twice"},
        {sheetOf(rowOf("<c t=\"s\"><v>7</v></c>")), "a cell has a text that is missing"},
        {sheetOf("<row><c></row>"), "log.xlsx, xl/worksheets/sheet1.xml, line 1: the workbook is"},
        {sheetOf("</sheetData></worksheet>").substr(0, 300),
         "byte 300: the archive ends too early"},
        {workbookBytes({}), "there is no sheet of cells in it"},
        {zipped({{"[Content_Types].xml", "<Types/>"}}), "this is a document that can't be read"},
        {zipped({{"mimetype", "text"}, {"content.xml", "<x/>"}}), "save it as a workbook (.xlsx)"},
    };
    for (const auto& [bytes, says] : cases)
        EXPECT_THAT(refusalOf(bytes), HasSubstr(says));
}

TEST_F(Workbook, EntitiesThatUnfoldAreRefused)
{
    auto files = workbookFiles(beerBook());
    for (ZippedFile& file : files) {
        if (file.name == "xl/sharedStrings.xml")
            file.text = "<!DOCTYPE sst [<!ENTITY a \"xxxxxxxx\"><!ENTITY b \"&a;&a;&a;\">]>"
                        "<sst><si><t>&b;</t></si></sst>";
    }
    EXPECT_THAT(refusalOf(zipped(files)),
                HasSubstr("xl/sharedStrings.xml, line 1: the workbook is"));
}

TEST_F(Workbook, ADamagedPartIsNoticed)
{
    for (const char* name : {"xl/worksheets/sheet1.xml", "xl/styles.xml", "xl/workbook.xml"}) {
        auto files = workbookFiles(beerBook());
        for (ZippedFile& file : files)
            file.wrongBy = file.name == name ? 1 : 0;
        EXPECT_THAT(refusalOf(zipped(files)),
                    HasSubstr(std::string("log.xlsx, ") + name + ", byte"));
    }
}

TEST(CellFormat, KnowsDatesByTheirCodes)
{
    using enum CellForm;
    const std::pair<const char*, CellForm> codes[] = {
        {"General", number},
        {"0.00", number},
        {"#,##0.0", number},
        {"0.00E+00", number},
        {"0.0\" days\"", number},
        {"0.0 \\d\\a\\y\\s", number},
        {"[h]:mm", number},
        {"[Red]0.0;[Blue]-0.0", number},
        {"@", number},
        {"yyyy-mm-dd", date},
        {"d. mmmm yyyy", date},
        {"mmm yy", date},
        {"[$-409]m/d/yy h:mm AM/PM;@", dateTime},
        {"DD/MM/YYYY HH:MM:SS", dateTime},
        {"dd.mm.yyyy hh:mm:ss.000", dateTime},
        {"hh:mm:ss", time},
        {"mm:ss.0", time},
        {"h:mm AM/PM", time},
    };
    for (const auto& [code, form] : codes)
        EXPECT_EQ(formOfCode(code), form) << code;
    EXPECT_EQ(builtInForm(0), number);
    EXPECT_EQ(builtInForm(2), number);
    EXPECT_EQ(builtInForm(14), date);
    EXPECT_EQ(builtInForm(20), time);
    EXPECT_EQ(builtInForm(22), dateTime);
    EXPECT_EQ(builtInForm(46), number) << "elapsed";
}

TEST(CellFormat, CountsDays)
{
    using enum CellForm;
    EXPECT_EQ(serialText(46089, date, false), "2026-03-08");
    EXPECT_EQ(serialText(46089, dateTime, false), "2026-03-08 00:00:00");
    EXPECT_EQ(serialText(46089.5, date, false), "2026-03-08 12:00:00");
    EXPECT_EQ(serialText(0.5, time, false), "12:00:00");
    EXPECT_EQ(serialText(46089.5, time, false), "2026-03-08 12:00:00");
    EXPECT_EQ(serialText(46089.9999999999, dateTime, false), "2026-03-09 00:00:00");
    EXPECT_EQ(serialText(46089.0000115741, dateTime, false), "2026-03-08 00:00:01");
    EXPECT_EQ(serialText(46089 + 0.25 / 86400, dateTime, false), "2026-03-08 00:00:00.250");
    EXPECT_EQ(serialText(44627, date, true), "2026-03-08");
    EXPECT_EQ(serialText(1, date, false), "1900-01-01");
    EXPECT_EQ(serialText(59, date, false), "1900-02-28");
    EXPECT_EQ(serialText(60, date, false), std::nullopt) << "no such day";
    EXPECT_EQ(serialText(61, date, false), "1900-03-01");
    EXPECT_EQ(serialText(0, date, true), "1904-01-01");
    EXPECT_EQ(serialText(-1, date, false), std::nullopt);
    EXPECT_EQ(serialText(2'958'465, date, false), "9999-12-31");
    EXPECT_EQ(serialText(2'958'466, date, false), std::nullopt);
    EXPECT_EQ(serialText(46089, number, false), std::nullopt);
    EXPECT_EQ(cellNumber(143.27000000000001), "143.27");
    EXPECT_EQ(cellNumber(20.099999999999998), "20.1");
}

} // namespace
} // namespace holdband::test
