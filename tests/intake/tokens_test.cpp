#include "core/intake/csv/tokens.h"

#include <filesystem>
#include <fstream>
#include <gtest/gtest.h>
#include <nlohmann/json.hpp>
#include <rapidcheck/gtest.h>
#include <sstream>

using namespace holdband;

namespace {

struct Token {
    std::int64_t line;
    std::vector<std::string> fields;
    bool operator==(const Token&) const = default;
};

struct Tokens {
    std::vector<Token> rows;
    std::string problem;
    bool lastEnded = true;
};

Tokens split(std::string_view text, char delimiter = ',', std::size_t piece = std::string::npos)
{
    Tokens result;
    CsvTokens tokens(delimiter, [&](const CsvRow& row) {
        result.rows.push_back({row.line, {row.fields.begin(), row.fields.end()}});
        result.lastEnded = row.ended;
        return true;
    });
    Done done;
    for (; done && !text.empty(); text.remove_prefix(std::min(piece, text.size())))
        done = tokens.feed(text.substr(0, piece));
    if (done)
        done = tokens.finish();
    if (!done)
        result.problem = done.error().sentence();
    return result;
}

std::string contentOf(const std::filesystem::path& path)
{
    std::ifstream file(path, std::ios::binary);
    std::ostringstream text;
    text << file.rdbuf();
    return text.str();
}

nlohmann::json asObjects(const std::vector<Token>& rows)
{
    auto list = nlohmann::json::array();
    for (std::size_t i = 1; i < rows.size(); ++i) {
        auto object = nlohmann::json::object();
        for (std::size_t k = 0; k < rows[0].fields.size(); ++k)
            object[rows[0].fields[k]] = rows[i].fields.at(k);
        list.push_back(object);
    }
    return list;
}

} // namespace

TEST(CsvSpectrum, everyCaseGivesItsObjects)
{
    // The csv-spectrum set (BSD-2) as packaged in Debian's node-csv-spectrum.
    const std::filesystem::path folder(HOLDBAND_CSV_SPECTRUM_DIR);
    for (const char* name :
         {"comma_in_quotes", "empty", "empty_crlf", "escaped_quotes", "json", "newlines",
          "newlines_crlf", "quotes_and_newlines", "simple", "simple_crlf", "utf8"}) {
        const auto csv = folder / "csvs" / (std::string(name) + ".csv");
        const auto json = folder / "json" / (std::string(name) + ".json");
        ASSERT_TRUE(std::filesystem::exists(csv) && std::filesystem::exists(json)) << csv;
        const Tokens tokens = split(contentOf(csv));
        EXPECT_EQ(tokens.problem, "") << name;
        EXPECT_EQ(asObjects(tokens.rows), nlohmann::json::parse(contentOf(json))) << name;
    }
}

TEST(CsvTokens, rulesOfRfc4180)
{
    // RFC 4180 §2.
    EXPECT_EQ(split("aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n").rows,
              (std::vector<Token>{{1, {"aaa", "bbb", "ccc"}}, {2, {"zzz", "yyy", "xxx"}}}));
    EXPECT_EQ(split("a,b\r\nc,d").rows.size(), 2u);
    EXPECT_EQ(split(" a , b ").rows, (std::vector<Token>{{1, {" a ", " b "}}}));
    EXPECT_EQ(split("\"a,a\",\"b\r\nb\",\"c\"\"c\"").rows,
              (std::vector<Token>{{1, {"a,a", "b\r\nb", "c\"c"}}}));
}

TEST(CsvTokens, countsPhysicalLines)
{
    const std::vector<Token> lf{
        {1, {"a", "b"}}, {2, {"1\n2\n3", "x"}}, {5, {"c", ""}}, {7, {"d", "e"}}};
    EXPECT_EQ(split("a,b\n\"1\n2\n3\",x\nc,\n\nd,e\n").rows, lf);
    const auto lines = [](std::string_view text) {
        std::vector<std::int64_t> list;
        for (const Token& row : split(text).rows)
            list.push_back(row.line);
        return list;
    };
    EXPECT_EQ(lines("a\r\nb\r\n\r\nc\r\n"), (std::vector<std::int64_t>{1, 2, 4}));
    EXPECT_EQ(lines("a\rb\r\rc"), (std::vector<std::int64_t>{1, 2, 4}));
    EXPECT_EQ(lines("\"x\r\ny\"\r\nb"), (std::vector<std::int64_t>{1, 3}));
    EXPECT_EQ(lines("\n\na"), (std::vector<std::int64_t>{3}));
}

TEST(CsvTokens, reportsAnUnfinishedLastLine)
{
    EXPECT_TRUE(split("a,b\n").lastEnded);
    EXPECT_FALSE(split("a,b").lastEnded);
}

TEST(CsvTokens, faultsNameTheirLine)
{
    EXPECT_EQ(split("a\nb\n\"never closed\nc\n").problem,
              "line 3: the quote that opens here is never closed; close or remove it.");
    EXPECT_TRUE(split("a\nb \"c\"\n").problem.starts_with("line 2: there is a quote inside"));
    EXPECT_TRUE(split("a\n\"b\"c\n").problem.starts_with("line 2: there is text behind"));
    EXPECT_TRUE(
        split("a\n" + std::string(1500, ',') + "\n").problem.starts_with("line 2: the row"));
    EXPECT_TRUE(
        split("a\n\"" + std::string(3 << 20, 'x') + "\"\n").problem.starts_with("line 2: a field"));
}

TEST(CsvTokens, hugeCellIsRefusedEarly)
{
    // 200 MB in pieces, of which only the first two are read.
    CsvTokens tokens(',', [](const CsvRow&) { return true; });
    const std::string piece(std::size_t{1} << 20, 'x');
    int taken = 0;
    while (taken < 200 && tokens.feed(piece))
        ++taken;
    EXPECT_LE(taken, 2);
}

TEST(CsvTokens, stopsOnRequest)
{
    int rows = 0;
    CsvTokens tokens(',', [&rows](const CsvRow&) { return ++rows < 2; });
    EXPECT_TRUE(tokens.feed("a\nb\nc\nd\n").has_value());
    EXPECT_TRUE(tokens.stopped());
    EXPECT_EQ(rows, 2);
}

RC_GTEST_PROP(CsvProperty, rowsAreTheSameWithAndWithoutTheLibrary, ())
{
    const auto text =
        *rc::gen::container<std::string>(rc::gen::elementOf(std::string("ab,,\n\n\r\r \t;")));
    const auto piece = *rc::gen::inRange<std::size_t>(1, 9);
    const Tokens plain = split(text, ',', piece);
    // A quoted row before it makes the library parse the rest.
    Tokens library = split("\"q\"\n" + text, ',', 4 + piece);
    RC_ASSERT(library.problem.empty() && plain.problem.empty());
    library.rows.erase(library.rows.begin());
    for (Token& row : library.rows)
        --row.line;
    RC_ASSERT(plain.rows == library.rows);
    RC_ASSERT(plain.rows.empty() || plain.lastEnded == library.lastEnded);
}

TEST(CsvTokens, theFirstQuoteMayComeLate)
{
    const Tokens tokens = split("a,b\r\nc,\"d\r\ne\"\r\nf,g", ',', 7);
    EXPECT_EQ(tokens.rows,
              (std::vector<Token>{{1, {"a", "b"}}, {2, {"c", "d\r\ne"}}, {4, {"f", "g"}}}));
}

RC_GTEST_PROP(CsvProperty, quotedTextReadsBackFromAnyPieces, ())
{
    const auto field =
        rc::gen::container<std::string>(rc::gen::elementOf(std::string("ab,;\"\n\r\t |")));
    const auto rows = *rc::gen::container<std::vector<std::vector<std::string>>>(
        rc::gen::nonEmpty(rc::gen::container<std::vector<std::string>>(field)));
    std::string text;
    for (const auto& row : rows) {
        for (std::size_t i = 0; i < row.size(); ++i) {
            text += i > 0 ? ",\"" : "\"";
            for (const char c : row[i])
                text += c == '"' ? std::string("\"\"") : std::string(1, c);
            text += '"';
        }
        text += "\r\n";
    }
    const Tokens tokens = split(text, ',', *rc::gen::inRange<std::size_t>(1, 9));
    RC_ASSERT(tokens.problem.empty());
    RC_ASSERT(tokens.rows.size() == rows.size());
    for (std::size_t i = 0; i < rows.size(); ++i)
        RC_ASSERT(tokens.rows[i].fields == rows[i]);
}
