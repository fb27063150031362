#include "core/intake/csv/encoding.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

using namespace holdband;
using namespace std::string_literals;

namespace {

std::string utf16(std::string_view ascii, bool bigEndian)
{
    std::string bytes;
    for (const char c : ascii)
        bytes += bigEndian ? std::string{'\0', c} : std::string{c, '\0'};
    return bytes;
}

std::string decoded(Decoder& decoder, std::string_view bytes, std::size_t piece)
{
    std::string text;
    do {
        const std::string_view part = bytes.substr(0, piece);
        bytes.remove_prefix(part.size());
        text += decoder.decode(part, bytes.empty());
    } while (!bytes.empty());
    return text;
}

} // namespace

TEST(Encoding, byteOrderMarksDecide)
{
    const auto expect = [](std::string_view bytes, std::string_view text, Encoding encoding) {
        Decoder decoder;
        EXPECT_EQ(decoder.decode(bytes, true), text);
        EXPECT_EQ(decoder.encoding(), encoding);
        EXPECT_TRUE(decoder.hadMark());
    };
    expect("\xEF\xBB\xBFTime", "Time", Encoding::utf8);
    expect("\xFF\xFE"s + utf16("Time", false), "Time", Encoding::utf16le);
    expect("\xFE\xFF"s + utf16("Time", true), "Time", Encoding::utf16be);
}

TEST(Encoding, utf16WithoutMarkByItsZeros)
{
    for (const bool bigEndian : {false, true}) {
        Decoder decoder;
        EXPECT_EQ(decoder.decode(utf16("Time,Beer\n2026", bigEndian), true), "Time,Beer\n2026");
        EXPECT_EQ(decoder.encoding(), bigEndian ? Encoding::utf16be : Encoding::utf16le);
        EXPECT_FALSE(decoder.hadMark());
    }
}

TEST(Encoding, utf16PiecesMayCutACharacter)
{
    Decoder decoder;
    const std::string bytes =
        "\xFF\xFE"s + utf16("Beer (", false) + "\xB0\x00"s + utf16("F)", false);
    EXPECT_EQ(decoder.decode(bytes.substr(0, 15), false), std::string("Beer ("));
    EXPECT_EQ(decoder.decode(bytes.substr(15), true), "°F)");
}

TEST(Encoding, invalidUtf8IsWindows1252)
{
    Decoder decoder;
    EXPECT_EQ(decoder.decode("Beer (\xB0"
                             "F) \x80\x92",
                             true),
              "Beer (°F) €’");
    EXPECT_EQ(decoder.encoding(), Encoding::windows1252);
}

TEST(Encoding, aLaterPieceMayDecide)
{
    Decoder decoder;
    EXPECT_EQ(decoder.decode("plain text ", false), "plain text ");
    EXPECT_EQ(decoder.decode("\xB0"
                             "F",
                             true),
              "°F");
    EXPECT_FALSE(decoder.contradicted());
}

TEST(Encoding, lettersThenNonsenseIsAContradiction)
{
    Decoder decoder;
    EXPECT_EQ(decoder.decode("°F ", false), "°F ");
    decoder.decode("\xB0"
                   "F",
                   true);
    EXPECT_TRUE(decoder.contradicted());
    Decoder again(Encoding::windows1252);
    EXPECT_EQ(again.decode("\xB0"
                           "F",
                           true),
              "°F");
}

TEST(Encoding, utf8IsStrict)
{
    // RFC 3629 §3, §4: overlong forms, surrogates, past U+10FFFF, stray and cut sequences.
    for (const char* bytes : {"\xC0\x80", "\xC1\xBF", "\xE0\x80\x80", "\xED\xA0\x80",
                              "\xF4\x90\x80\x80", "\xF5\x80\x80\x80", "\x80", "\xC3("}) {
        Utf8Check check;
        EXPECT_FALSE(check.take(bytes)) << bytes;
    }
    for (const char* bytes : {"é", "℉", "\xED\x9F\xBF", "\xF4\x8F\xBF\xBF", "😀"}) {
        Utf8Check check;
        EXPECT_TRUE(check.take(bytes) && !check.isOpen()) << bytes;
    }
    Utf8Check cut;
    EXPECT_TRUE(cut.take("\xE2\x84") && cut.isOpen());
}

RC_GTEST_PROP(EncodingProperty, utf8PassesUnchangedInAnyPieces, ())
{
    const auto letters = *rc::gen::container<std::vector<std::string>>(
        rc::gen::element<std::string>("a", ",", "°", "℉", "😀", "\n"));
    std::string text;
    for (const std::string& letter : letters)
        text += letter;
    Decoder decoder;
    RC_ASSERT(decoded(decoder, text, *rc::gen::inRange<std::size_t>(1, 20)) == text);
    RC_ASSERT(!decoder.contradicted());
}
