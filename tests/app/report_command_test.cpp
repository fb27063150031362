// Reports from the command line: every form, read back with independent tools, and what is refused.
#include "tests/app/program.h"
#include "tests/needs.h"

#include <QStandardPaths>
#include <filesystem>
#include <gmock/gmock.h>

namespace holdband::test {

namespace {

using ::testing::HasSubstr;
using ::testing::Not;
using ::testing::StartsWith;

const char* const headline = "Left the band twice: 3 h of 8 h held";

class ReportCommandTest : public ::testing::Test {
protected:
    Outcome report(std::vector<std::string> arguments)
    {
        arguments.insert(arguments.begin(), {"report", "log.holdband"});
        return program.run(arguments);
    }

    void write(const std::string& file, const std::vector<std::string>& more = {})
    {
        std::vector<std::string> arguments{"Worked", "--out", file};
        arguments.insert(arguments.end(), more.begin(), more.end());
        const Outcome outcome = report(arguments);
        ASSERT_EQ(outcome.status, 0) << outcome.err;
    }

    static bool has(const char* tool)
    {
        return !QStandardPaths::findExecutable(QString::fromLatin1(tool)).isEmpty();
    }

    /// Width and height from the file's header (W3C PNG, 11.2.2).
    std::pair<int, int> sizeOfPng(const std::string& name) const
    {
        const std::string bytes = program.read(name);
        EXPECT_EQ(bytes.substr(1, 3) + bytes.substr(12, 4), "PNGIHDR");
        const auto number = [&](std::size_t at) {
            int value = 0;
            for (std::size_t i = at; i < at + 4; ++i)
                value = 256 * value + static_cast<unsigned char>(bytes.at(i));
            return value;
        };
        return {number(16), number(20)};
    }

    /// The number at the end of the line with that beginning.
    static double figureAfter(const std::string& csv, const std::string& beginning)
    {
        const std::size_t at = csv.find("\r\n" + beginning);
        EXPECT_NE(at, std::string::npos) << beginning;
        return at == std::string::npos ? 0.0 : std::atof(csv.c_str() + at + 2 + beginning.size());
    }

    std::size_t filesInFolder() const
    {
        std::size_t count = 0;
        for ([[maybe_unused]] const auto& entry :
             std::filesystem::directory_iterator(program.path(".")))
            ++count;
        return count;
    }

    WorkedProgram program;
};

#define NEEDS(tool) HOLDBAND_NEEDS(has(tool), tool)

} // namespace

TEST_F(ReportCommandTest, APdfHasTheVerdictAsText)
{
    NEEDS("pdftotext");
    write("run.pdf");
    EXPECT_THAT(program.read("run.pdf"), StartsWith("%PDF-"));
    const Outcome text = program.shell("pdftotext -layout run.pdf -");
    ASSERT_EQ(text.status, 0) << text.err;
    const std::string verdict = program.run({"verdict", "log.holdband", "Worked"}).out;
    const std::string first = verdict.substr(verdict.find('\n') + 1);
    EXPECT_THAT(text.out, HasSubstr(first.substr(0, first.find('('))));
    EXPECT_THAT(text.out, HasSubstr("page 1 of"));
    EXPECT_THAT(text.out, HasSubstr("Computed from"));
    EXPECT_THAT(text.out, HasSubstr("0.90")) << "kWh of the worked example";
    EXPECT_THAT(text.out, HasSubstr("Deviation from target")) << "the chart's own words";
}

TEST_F(ReportCommandTest, APdfEmbedsItsFonts)
{
    NEEDS("pdffonts");
    write("run.pdf");
    const Outcome fonts = program.shell("pdffonts run.pdf | tail -n +3 | awk '{print $(NF-4)}'");
    ASSERT_EQ(fonts.status, 0) << fonts.err;
    EXPECT_THAT(fonts.out, StartsWith("yes"));
    EXPECT_THAT(fonts.out, Not(HasSubstr("no")));
}

TEST_F(ReportCommandTest, ThePaperIsTheRequestedOne)
{
    NEEDS("pdfinfo");
    write("usual.pdf");
    write("letter.pdf", {"--paper", "letter"});
    write("a4.pdf", {"--paper", "A4"});
    EXPECT_THAT(program.shell("pdfinfo a4.pdf").out, HasSubstr("595 x 842 pts (A4)"));
    EXPECT_THAT(program.shell("pdfinfo usual.pdf").out, HasSubstr("595 x 842 pts (A4)"));
    EXPECT_THAT(program.shell("pdfinfo letter.pdf").out, HasSubstr("612 x 792 pts (letter)"));
}

TEST_F(ReportCommandTest, APdfDrawsItsChartAsVectors)
{
    NEEDS("pdfimages");
    write("run.pdf");
    const Outcome images = program.shell("pdfimages -list run.pdf | tail -n +3");
    EXPECT_EQ(images.status, 0);
    EXPECT_EQ(images.out, "");
}

TEST_F(ReportCommandTest, SpeaksTheLanguageOfTheLocaleWithItsDecimalSign)
{
    const Outcome outcome =
        program.shell("LC_ALL=de_DE.UTF-8 $HOLDBAND report log.holdband Worked --out de.html");
    ASSERT_EQ(outcome.status, 0) << outcome.err;
    EXPECT_THAT(outcome.out + outcome.err, HasSubstr("Wrote de.html")) << "commands speak English";
    const std::string page = program.read("de.html");
    EXPECT_THAT(page, HasSubstr("<html lang=\"de\">"));
    EXPECT_THAT(page, HasSubstr("Berechnet aus"));
    EXPECT_THAT(page, HasSubstr("0,90")) << "kWh of the worked example";
    EXPECT_THAT(page, Not(HasSubstr("Computed from")));
    write("en.html");
    EXPECT_THAT(program.read("en.html"), HasSubstr("<html lang=\"en\">"));
}

TEST_F(ReportCommandTest, APageIsValidAndNeedsNoNetwork)
{
    NEEDS("tidy");
    NEEDS("xmllint");
    write("run.html");
    const Outcome tidy = program.shell("tidy -e -q run.html");
    EXPECT_EQ(tidy.status, 0) << tidy.err;
    EXPECT_EQ(tidy.err, "");
    EXPECT_EQ(program.shell("xmllint --noout run.html").err, "");
    const std::string page = program.read("run.html");
    EXPECT_THAT(page, HasSubstr(headline));
    EXPECT_THAT(page, HasSubstr("<svg "));
    EXPECT_THAT(page, HasSubstr("role=\"img\" aria-label=\"Temperature"));
    EXPECT_THAT(page, HasSubstr("<th scope=\"col\""));
    EXPECT_THAT(page, HasSubstr("<th scope=\"row\""));
    for (const char* outside : {"src=", "href=", "@import", "url("})
        EXPECT_THAT(page, Not(HasSubstr(outside)));
}

TEST_F(ReportCommandTest, TheFiguresAreUnroundedAndOnePerLine)
{
    write("run.csv");
    const std::string csv = program.read("run.csv");
    EXPECT_THAT(csv, StartsWith("id,part,of,figure,value,unit\r\n"));
    // From the worked example in DEVELOPERS.md.
    EXPECT_DOUBLE_EQ(figureAfter(csv, "stages.mean_deviation,Stages,Hold,mean deviation,"),
                     0.21875);
    EXPECT_DOUBLE_EQ(figureAfter(csv, "stages.coverage,Stages,Hold,covered,"), 0.8);
    EXPECT_NEAR(figureAfter(csv, "energy.kwh,Energy,Whole run,kWh,"), 0.90, 1e-12);
    EXPECT_NEAR(figureAfter(csv, "energy.kwh_low,Energy,Whole run,minimum,"), 0.79, 1e-12);
    EXPECT_NEAR(figureAfter(csv, "energy.kwh_high,Energy,Whole run,maximum,"), 1.41, 1e-12);
    EXPECT_DOUBLE_EQ(
        figureAfter(csv, "excursions.outside,Excursions,2026-03-07T01:30:00+00:00,outside,"), 2.0);
    EXPECT_DOUBLE_EQ(
        figureAfter(csv, "excursions.outside,Excursions,2026-03-07T05:30:00+00:00,outside,"), 1.0);
    EXPECT_EQ(std::count(csv.begin(), csv.end(), '\n'), std::count(csv.begin(), csv.end(), '\r'));
}

TEST_F(ReportCommandTest, APictureHasTheRequestedSize)
{
    write("usual.png");
    write("upright.png", {"--size", "1080x1920", "--dark"});
    EXPECT_EQ(sizeOfPng("usual.png"), std::pair(1920, 1080));
    EXPECT_EQ(sizeOfPng("upright.png"), std::pair(1080, 1920));
}

TEST_F(ReportCommandTest, AnSvgIsWellFormed)
{
    NEEDS("xmllint");
    write("run.svg");
    EXPECT_EQ(program.shell("xmllint --noout run.svg").err, "");
    EXPECT_THAT(program.read("run.svg"), HasSubstr("Deviation from target"));
    EXPECT_THAT(program.read("run.svg"), HasSubstr("width=\"1920\" height=\"1080\""));
}

TEST_F(ReportCommandTest, ASetupIsASeason)
{
    const Outcome outcome = report({"Loop", "--out", "season.csv"});
    ASSERT_EQ(outcome.status, 0) << outcome.err;
    const std::string csv = program.read("season.csv");
    EXPECT_THAT(csv, HasSubstr("1 batch of Loop: 1 left it. It used 0.90 kWh"));
    EXPECT_NEAR(figureAfter(csv, "energy.sum.kwh,Energy and money,Sum,kWh,"), 0.90, 1e-12);
}

TEST_F(ReportCommandTest, AnUnknownBatchListsSuggestions)
{
    const Outcome outcome = report({"Wroked", "--out", "run.pdf"});
    EXPECT_EQ(outcome.status, 1);
    EXPECT_THAT(outcome.err, HasSubstr("Worked"));
    EXPECT_FALSE(std::filesystem::exists(program.path("run.pdf")));
}

TEST_F(ReportCommandTest, AnExistingFileIsUnchanged)
{
    program.write("run.csv", "mine");
    const Outcome refused = report({"Worked", "--out", "run.csv"});
    EXPECT_EQ(refused.status, 3);
    EXPECT_THAT(refused.err, HasSubstr("--force"));
    EXPECT_EQ(program.read("run.csv"), "mine");
    EXPECT_EQ(report({"Worked", "--out", "run.csv", "--force"}).status, 0);
    EXPECT_THAT(program.read("run.csv"), StartsWith("id,part,"));
}

TEST_F(ReportCommandTest, WrongCallsHaveStatusTwo)
{
    for (const std::vector<std::string>& arguments :
         {std::vector<std::string>{"Worked"},
          {"Worked", "--out", "run.doc"},
          {"Worked", "--out", ".pdf"},
          {"Worked", "--out", "run"},
          {"Worked", "--out", "r.png", "--size", "12x12"},
          {"Worked", "--out", "r.png", "--size", "big"},
          {"Worked", "--out", "r.pdf", "--paper", "a0"},
          {"Worked", "--out", "r.png", "--paper", "a4"},
          {"Worked", "--out", "r.pdf", "--size", "1920x1080"},
          {"Worked", "--out", "r.csv", "--dark"},
          {"Worked", "--out", "r.pdf", "--from", "Primary"},
          {"--out", "r.pdf"},
          {"Worked", "a", "b", "--out", "r.pdf"}}) {
        const Outcome outcome = report(arguments);
        EXPECT_EQ(outcome.status, 2) << arguments.back() << outcome.err;
        EXPECT_THAT(outcome.err, HasSubstr("usage: holdband report"));
    }
}

TEST_F(ReportCommandTest, PlacesThatCantBeWrittenHaveStatusThree)
{
    EXPECT_EQ(report({"Worked", "--out", "nowhere/run.pdf"}).status, 3);
    std::filesystem::create_directory(program.path("folder.pdf"));
    EXPECT_EQ(report({"Worked", "--out", "folder.pdf", "--force"}).status, 3);
    const std::string longName = std::string(300, 'n') + ".pdf";
    const std::size_t before = filesInFolder();
    EXPECT_EQ(report({"Worked", "--out", longName}).status, 3);
    EXPECT_EQ(filesInFolder(), before);
    EXPECT_EQ(program.run({"report", "none.holdband", "Worked", "--out", "r.pdf"}).status, 3);
}

TEST_F(ReportCommandTest, NeedsNoDisplayAndNoTheme)
{
    const Outcome outcome = program.shell("QT_QPA_PLATFORM=xcb QT_QPA_PLATFORMTHEME=gtk3 $HOLDBAND "
                                          "report log.holdband Worked --out run.pdf");
    EXPECT_EQ(outcome.status, 0) << outcome.err;
}

// The program's own type face is enough.
TEST_F(ReportCommandTest, NeedsNoFontOfTheDesktop)
{
    program.write("fonts.conf", "<?xml version=\"1.0\"?><!DOCTYPE fontconfig SYSTEM "
                                "\"fonts.dtd\"><fontconfig></fontconfig>");
    const std::string bare =
        "FONTCONFIG_FILE=$PWD/fonts.conf $HOLDBAND report log.holdband Worked ";
    const Outcome written = program.shell(bare + "--out run.pdf");
    EXPECT_EQ(written.status, 0) << written.err;
    const Outcome fonts = program.shell("grep -ac OpenSans run.pdf");
    EXPECT_NE(fonts.out, "0\n") << "the face is in the file";
    EXPECT_EQ(program.shell(bare + "--out run.csv").status, 0);
}

TEST_F(ReportCommandTest, AFullDiskLeavesTheOldFileUnchanged)
{
    NEEDS("unshare");
    if (program.shell("unshare -m true").status != 0)
        GTEST_SKIP() << "needs the right to mount";
    const Outcome outcome = program.shell(
        "unshare -m bash -c 'mkdir disk && mount -t tmpfs -o size=1m none disk && "
        "echo old > disk/run.png && head -c 1000000 /dev/zero > disk/fill; "
        "$HOLDBAND report log.holdband Worked --out disk/run.png --force --size 4000x4000; "
        "echo status $?; cat disk/run.png; ls -A disk | wc -l'");
    EXPECT_THAT(outcome.out, HasSubstr("status 3\nold\n2\n")) << outcome.err;
    EXPECT_THAT(outcome.err, HasSubstr("make room on the disk"));
}

} // namespace holdband::test
