#include "core/intake/log/values.h"

#include "core/intake/log/log_places.h"
#include "core/text/ascii.h"
#include "core/text/phrase.h"

#include <QtGlobal>
#include <algorithm>
#include <array>
#include <cmath>

namespace holdband {

namespace {

bool sameWord(std::string_view text, std::string_view lowerCase)
{
    return std::equal(text.begin(), text.end(), lowerCase.begin(), lowerCase.end(),
                      [](char a, char b) { return asciiLower(a) == b; });
}

/// Whether the text has the form "1,234" or "12,345,678": a leading 0 or other numbers of digits
/// exclude it.
bool couldBeGroups(std::string_view text)
{
    const std::size_t digits = text.find_first_of("0123456789");
    if (digits == text.npos)
        return false;
    text.remove_prefix(digits);
    const std::size_t comma = text.find(',');
    return comma >= 1 && comma <= 3 && text[0] != '0' && text.size() == comma + 4;
}

const char* impossibleTemperature(double celsius)
{
    return std::fabs(celsius + 127.0) < 0.05
               ? QT_TRANSLATE_NOOP("Phrase", "is what a disconnected sensor gives")
               : QT_TRANSLATE_NOOP("Phrase", "is no temperature that a sensor here can give");
}

const char* outside(double value, double low, double high, const char* reason)
{
    return value < low || value > high ? reason : nullptr;
}

} // namespace

bool isMissing(std::string_view text)
{
    static constexpr std::array<std::string_view, 6> words{"-", "--", "na", "n/a", "nan", "null"};
    return text.empty() || (text.size() <= 4 &&
                            std::any_of(words.begin(), words.end(), [text](std::string_view word) {
                                return sameWord(text, word);
                            }));
}

bool isNumber(std::string_view text)
{
    return scanDecimal(text, '.').has_value() || scanDecimal(text, ',').has_value();
}

/// With the separators of thousands removed, if all groups are complete.
std::optional<Decimal> NumberCells::takeSaid(std::string_view text, char sign)
{
    const char group = sign == '.' ? ',' : '.';
    if (text.find(group) == text.npos)
        return scanDecimal(text, sign);
    std::string plain;
    std::size_t digits = 0;
    bool inGroup = false;
    for (const char c : text.substr(0, text.find(sign))) {
        if (c == group && (digits == 0 || digits > 3 || (inGroup && digits != 3)))
            return std::nullopt;
        inGroup = inGroup || c == group;
        digits = c == group ? 0 : digits + (c >= '0' && c <= '9' ? 1 : 0);
        if (c != group)
            plain += c;
    }
    if (inGroup && digits != 3)
        return std::nullopt;
    plain += text.substr(std::min(text.find(sign), text.size()));
    return scanDecimal(plain, sign);
}

std::optional<Decimal> NumberCells::take(std::string_view text, SeriesKind kind, std::int64_t line)
{
    if (m_said)
        return takeSaid(text, *m_said);
    if (const auto number = scanDecimal(text, '.')) {
        if (number->decimals > 0 && m_point.line == 0)
            m_point = {line, std::string(text)};
        return number;
    }
    const auto number = scanDecimal(text, ',');
    if (number)
        noteComma(text, kind, line);
    return number;
}

void NumberCells::noteComma(std::string_view text, SeriesKind kind, std::int64_t line)
{
    // A specific gravity can't be 1050, so "1,050" has a decimal comma.
    m_commaIsDecimal = m_commaIsDecimal || kind == SeriesKind::gravity || !couldBeGroups(text);
    if (m_comma.line == 0)
        m_comma = {line, std::string(text)};
}

Result<char> NumberCells::decimalSign() const
{
    if (m_said)
        return *m_said;
    if (m_comma.line == 0)
        return '.';
    if (m_point.line != 0)
        return dataProblem(
            Phrase::tr("the log mixes decimal signs: \"%1\" here, \"%2\" in line %3")
                .with(m_comma.text, m_point.text, std::to_string(m_point.line)),
            linePlace(m_comma.line),
            Phrase::tr("write all numbers with one sign and without groups of thousands"),
            Decision::decimalSign);
    if (!m_commaIsDecimal)
        return dataProblem(
            Phrase::tr("\"%1\" can be read in two ways, and no other number shows which")
                .with(m_comma.text),
            linePlace(m_comma.line),
            Phrase::tr("say --decimal comma (a decimal comma) or --decimal point (groups of "
                       "thousands)"),
            Decision::decimalSign, {"comma", "point"});
    return ',';
}

const char* impossible(ReadingUnit unit, double value)
{
    switch (unit) {
    case ReadingUnit::celsius:
        return value >= -55.0 && value <= 125.0 ? nullptr : impossibleTemperature(value);
    case ReadingUnit::fahrenheit: // −67 and 257 °F
        return value >= -67.0 && value <= 257.0 ? nullptr
                                                : impossibleTemperature((value - 32.0) / 1.8);
    case ReadingUnit::specificGravity:
        return outside(value, 0.9, 1.3,
                       QT_TRANSLATE_NOOP("Phrase", "is no specific gravity of beer"));
    case ReadingUnit::degreePlato:
        return outside(value, -5.0, 50.0,
                       QT_TRANSLATE_NOOP("Phrase", "is no extract of beer in °P"));
    case ReadingUnit::watt:
    case ReadingUnit::kilowatt:
        return value < 0.0 ? QT_TRANSLATE_NOOP("Phrase", "is a power below 0") : nullptr;
    case ReadingUnit::wattHour:
    case ReadingUnit::kilowattHour:
        return value < 0.0 ? QT_TRANSLATE_NOOP("Phrase", "is a register below 0") : nullptr;
    }
    return nullptr;
}

} // namespace holdband
