#include "core/text/numbers.h"

#include "core/text/phrase.h"
#include "core/text/trimmed.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <cstdint>

namespace holdband {

namespace {

constexpr std::string_view minusSign = "\xE2\x88\x92"; // U+2212

bool isDigit(char c)
{
    return c >= '0' && c <= '9';
}

/// Removes a leading sign; true for minus.
bool takeSign(std::string_view& text)
{
    if (text.starts_with(minusSign)) {
        text.remove_prefix(minusSign.size());
        return true;
    }
    if (text.empty() || (text.front() != '-' && text.front() != '+'))
        return false;
    const bool minus = text.front() == '-';
    text.remove_prefix(1);
    return minus;
}

/// For a long text or one with an exponent: the library rounds. The text begins with a digit or the
/// sign.
std::optional<double> scanSlowly(std::string_view text, char decimalSign)
{
    if (text.size() > 400 || (decimalSign != '.' && text.find('.') != text.npos))
        return std::nullopt;
    std::string copy(text);
    std::replace(copy.begin(), copy.end(), decimalSign, '.');
    double value = 0.0;
    const auto [end, error] = std::from_chars(copy.data(), copy.data() + copy.size(), value);
    if (error != std::errc{} || end != copy.data() + copy.size() || !std::isfinite(value))
        return std::nullopt;
    return value;
}

// Powers of ten that a double represents exactly.
constexpr std::array<double, 23> powersOfTen{1e0,  1e1,  1e2,  1e3,  1e4,  1e5,  1e6,  1e7,
                                             1e8,  1e9,  1e10, 1e11, 1e12, 1e13, 1e14, 1e15,
                                             1e16, 1e17, 1e18, 1e19, 1e20, 1e21, 1e22};

std::size_t countSigns(std::string_view text)
{
    return static_cast<std::size_t>(
        std::count_if(text.begin(), text.end(), [](char c) { return c == '.' || c == ','; }));
}

/// Has the form 1 to 3 digits without a leading zero, a sign, exactly three digits.
bool couldBeGroup(std::string_view text, char sign)
{
    takeSign(text);
    const std::size_t at = text.find(sign);
    return at != text.npos && at >= 1 && at <= 3 && text[0] != '0' && text.size() == at + 4;
}

tl::unexpected<Problem> noNumber(std::string_view text)
{
    return dataProblem(text.empty() ? Phrase::tr("a number is missing").text()
                                    : Phrase::tr("\"%1\" is not a number").with(text));
}

} // namespace

std::optional<Decimal> scanDecimal(std::string_view text, char decimalSign)
{
    const bool minus = takeSign(text);
    const char* at = text.data();
    const char* const end = at + text.size();
    std::uint64_t digits = 0;
    int count = 0;
    for (; at != end && isDigit(*at); ++at, ++count)
        digits = digits * 10 + static_cast<std::uint64_t>(*at - '0');
    int decimals = 0;
    if (at != end && *at == decimalSign) {
        for (++at; at != end && isDigit(*at); ++at, ++decimals)
            digits = digits * 10 + static_cast<std::uint64_t>(*at - '0');
        if (decimals == 0)
            return std::nullopt;
    }
    count += decimals;
    if (count == 0)
        return std::nullopt;
    // At most 15 digits are exact in a double, and one division by an exact power rounds once.
    if (at == end && count <= 15) {
        const double value =
            static_cast<double>(digits) / powersOfTen[static_cast<std::size_t>(decimals)];
        return Decimal{minus ? -value : value, decimals};
    }
    const auto value = scanSlowly(text, decimalSign);
    if (!value)
        return std::nullopt;
    return Decimal{minus ? -*value : *value, decimals};
}

Result<Decimal> parseDecimal(std::string_view text, char decimalSign)
{
    const std::string_view inner = trimmed(text);
    const auto number = scanDecimal(inner, decimalSign);
    if (!number)
        return noNumber(inner);
    return *number;
}

Result<Decimal> parseTypedNumber(std::string_view text, char usual)
{
    const std::string_view inner = trimmed(text);
    const char other = usual == '.' ? ',' : '.';
    const std::size_t signs = countSigns(inner);
    if (signs > 1)
        return dataProblem(Phrase::tr("\"%1\" has more than one decimal sign").with(inner), {},
                           Phrase::tr("write it without groups of thousands, such as %1")
                               .with(std::string("1234") + usual + "5"));
    const bool otherSign = signs == 1 && inner.find(other) != inner.npos;
    const auto number = scanDecimal(inner, otherSign ? other : usual);
    if (!number)
        return noNumber(inner);
    if (otherSign && couldBeGroup(inner, other)) {
        std::string decimal(inner), whole(inner);
        std::replace(decimal.begin(), decimal.end(), other, usual);
        std::erase(whole, other);
        return dataProblem(Phrase::tr("\"%1\" can be read in two ways").with(inner), {},
                           Phrase::tr("write %1 or %2").with(decimal, whole));
    }
    return *number;
}

std::string shortestText(double value, char decimalSign)
{
    std::array<char, 400> buffer{};
    const auto end = std::to_chars(buffer.data(), buffer.data() + buffer.size(), value).ptr;
    std::string text(buffer.data(), end);
    std::replace(text.begin(), text.end(), '.', decimalSign);
    return text;
}

std::string fixedText(double value, int decimals, char decimalSign)
{
    std::array<char, 400> buffer{};
    const int places = std::clamp(decimals, 0, 20);
    const auto end = std::to_chars(buffer.data(), buffer.data() + buffer.size(), value,
                                   std::chars_format::fixed, places)
                         .ptr;
    std::string text(buffer.data(), end);
    if (text.starts_with('-') && text.find_first_not_of("-0.") == text.npos)
        text.erase(0, 1);
    std::replace(text.begin(), text.end(), '.', decimalSign);
    return text;
}

} // namespace holdband
