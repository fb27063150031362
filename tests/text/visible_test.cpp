// Characters that a terminal would obey are escaped, and cells that a spreadsheet would run become
// text.
#include "core/text/csv_cell.h"
#include "core/text/visible.h"

#include <gtest/gtest.h>

using namespace holdband;
using namespace std::string_literals;

TEST(Visible, ControlsAreShownAsEscapes)
{
    EXPECT_EQ(visible("a\x1b[31mb\x07\x7f\t\r"s, LineEnds::stay), "a\\x1b[31mb\\x07\\x7f\\t\\r");
    EXPECT_EQ(visible("a\0b"s, LineEnds::stay), "a\\x00b");
    EXPECT_EQ(visible("\u0085\u009b31m", LineEnds::stay), "\\u0085\\u009b31m");
    EXPECT_EQ(visible("\u202e\u2066\u200f\u061c\u2028", LineEnds::stay),
              "\\u202e\\u2066\\u200f\\u061c\\u2028");
}

TEST(Visible, LineEndsStayOrAreShown)
{
    EXPECT_EQ(visible("a\nb", LineEnds::stay), "a\nb");
    EXPECT_EQ(visible("a\nb", LineEnds::escaped), "a\\nb");
}

TEST(Visible, LettersStayAndBytesThatAreNoUtf8AreShown)
{
    const std::string text = "Gärung °F − “α” שלום 🍺";
    EXPECT_EQ(visible(text, LineEnds::escaped), text);
    EXPECT_EQ(visible("\x9b\xff\xc3", LineEnds::stay), "\\x9b\\xff\\xc3");
    EXPECT_EQ(visible("\xe2\x80", LineEnds::stay), "\\xe2\\x80");
    EXPECT_EQ(visible("\xc1\x9b \xed\xa0\x80", LineEnds::stay), "\\xc1\\x9b \\xed\\xa0\\x80");
}

TEST(Visible, JsonHasItsOwnEscapes)
{
    EXPECT_EQ(visibleJson("{\n  \"ä\": \"\u009b\u202e\x7f\"\n}"),
              "{\n  \"ä\": \"\\u009b\\u202e\\u007f\"\n}");
}

TEST(CsvCell, FormulasGetAnApostrophe)
{
    for (const char* text : {"=1+1", "+1+2", "-2+3", "@a", "\tx", "\rx", "-", "-a", "-5"})
        EXPECT_EQ(withoutFormula(text), "'"s + text) << text;
    for (const char* text : {"", "a=1", "12", "'=1"})
        EXPECT_EQ(withoutFormula(text), text) << text;
    EXPECT_EQ(csvQuoted("a,\"b\""), "\"a,\"\"b\"\"\"");
    EXPECT_EQ(csvQuoted("plain"), "plain");
}
