#include "core/intake/log/values.h"

#include "core/intake/log/log_places.h"
#include "core/text/ascii.h"
#include "core/text/phrase.h"
#include "core/text/trimmed.h"

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

/// Whether the text has the form "1,234" or "-12,345" with that sign: a leading 0 or another number
/// of digits excludes it.
bool couldBeGroups(std::string_view text, char sign)
{
    const std::size_t digits = text.find_first_of("0123456789");
    if (digits == text.npos)
        return false;
    text.remove_prefix(digits);
    const std::size_t at = text.find(sign);
    return at >= 1 && at <= 3 && text[0] != '0' && text.size() == at + 4;
}

/// No temperature or gravity is above a thousand. "1,050" as a gravity has a decimal comma; as a
/// temperature it may be the mistake of a logger.
bool canBeThousands(SeriesKind kind)
{
    return kind == SeriesKind::power || kind == SeriesKind::meter ||
           kind == SeriesKind::intervalEnergy;
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
    static constexpr std::array<std::string_view, 9> words{
        "-", "--", "---", "na", "n/a", "nan", "null", "err", "unavailable"};
    constexpr std::size_t longest = 11;
    return text.empty() || (text.size() <= longest &&
                            std::any_of(words.begin(), words.end(), [text](std::string_view word) {
                                return sameWord(text, word);
                            }));
}

bool isNumber(std::string_view text)
{
    return scanDecimal(text, '.').has_value() || scanDecimal(text, ',').has_value();
}

ValueCell valueCell(std::string_view text)
{
    constexpr std::string_view digits = "0123456789";
    const std::size_t last = text.find_last_of(digits);
    if (last == text.npos || last + 1 == text.size())
        return {text};
    std::string_view unitText = trimmed(text.substr(last + 1));
    for (const std::string_view space : {"\u00a0", "\u202f", "\u2009"}) {
        if (unitText.starts_with(space))
            unitText.remove_prefix(space.size());
    }
    const auto unit = unitNamed(unitText);
    return unit ? ValueCell{text.substr(0, last + 1), unit} : ValueCell{text};
}

bool isValue(std::string_view text)
{
    const std::string_view number = valueCell(text).number;
    return scanGrouped(number, '.').has_value() || scanGrouped(number, ',').has_value();
}

std::optional<Decimal> scanGrouped(std::string_view text, char decimalSign)
{
    const char group = decimalSign == '.' ? ',' : '.';
    if (text.find(group) == text.npos)
        return scanDecimal(text, decimalSign);
    std::string plain;
    std::size_t digits = 0;
    bool inGroup = false;
    for (const char c : text.substr(0, text.find(decimalSign))) {
        if (c == group && (digits == 0 || digits > 3 || (inGroup && digits != 3)))
            return std::nullopt;
        inGroup = inGroup || c == group;
        digits = c == group ? 0 : digits + (c >= '0' && c <= '9' ? 1 : 0);
        if (c != group)
            plain += c;
    }
    if (inGroup && digits != 3)
        return std::nullopt;
    plain += text.substr(std::min(text.find(decimalSign), text.size()));
    return scanDecimal(plain, decimalSign);
}

std::optional<Decimal> NumberCells::take(std::string_view text, SeriesKind kind, std::int64_t line,
                                         std::size_t column)
{
    if (m_said)
        return scanGrouped(text, *m_said);
    if (m_columns.size() <= column)
        m_columns.resize(column + 1);
    ColumnSigns& signs = m_columns[column];
    if (const auto number = scanDecimal(text, '.')) {
        if (number->decimals > 0)
            note(canBeThousands(kind) && couldBeGroups(text, '.') ? signs.pointOrGroups
                                                                  : signs.point,
                 text, line);
        return number;
    }
    if (const auto number = scanDecimal(text, ',')) {
        const bool open = kind != SeriesKind::gravity && couldBeGroups(text, ',');
        signs.commaNeverGroups = signs.commaNeverGroups || (open && !canBeThousands(kind));
        note(open ? signs.commaOrGroups : signs.comma, text, line);
        return number;
    }
    for (const char sign : {'.', ','}) {
        if (const auto number = scanGrouped(text, sign)) { // "1,234.5", "1.234.567"
            note(sign == '.' ? signs.point : signs.comma, text, line);
            return number;
        }
    }
    return std::nullopt;
}

void NumberCells::note(Seen& seen, std::string_view text, std::int64_t line)
{
    if (seen.line == 0)
        seen = {line, std::string(text)};
}

const NumberCells::Seen& NumberCells::first(Sign sign) const
{
    static const Seen none;
    const Seen* found = &none;
    for (const ColumnSigns& column : m_columns) {
        const Seen& seen = column.*sign;
        if (seen.line != 0 && (found->line == 0 || seen.line < found->line))
            found = &seen;
    }
    return *found;
}

const NumberCells::Seen& NumberCells::undecided(Sign open, Sign certain) const
{
    static const Seen none;
    for (const ColumnSigns& column : m_columns) {
        if ((column.*open).line != 0 && ((column.*certain).line == 0 || column.commaNeverGroups))
            return column.*open;
    }
    return none;
}

Result<char> NumberCells::decimalSign() const
{
    if (m_said)
        return *m_said;
    const Seen& certainPoint = first(&ColumnSigns::point);
    const Seen& certainComma = first(&ColumnSigns::comma);
    const bool isPoint = certainPoint.line != 0, isComma = certainComma.line != 0;
    // Of the other sign: one that is decimal, or of which another column alone could tell.
    const Seen& openComma = isPoint ? undecided(&ColumnSigns::commaOrGroups, &ColumnSigns::point)
                                    : first(&ColumnSigns::commaOrGroups);
    const Seen& openPoint = isComma ? undecided(&ColumnSigns::pointOrGroups, &ColumnSigns::comma)
                                    : first(&ColumnSigns::pointOrGroups);
    const Seen& point = isPoint ? certainPoint : openPoint;
    const Seen& comma = isComma ? certainComma : openComma;
    const bool certainlyMixed = isPoint && isComma;
    if (certainlyMixed || (point.line != 0 && comma.line != 0))
        return dataProblem(
            Phrase::tr("the log mixes decimal signs: \"%1\" here, \"%2\" in line %3")
                .with(comma.text, point.text, std::to_string(point.line)),
            linePlace(comma.line),
            certainlyMixed
                ? Phrase::tr("write all numbers with one sign and without groups of thousands")
                : Phrase::tr("say --decimal comma (a decimal comma) or --decimal point (groups of "
                             "thousands)"),
            Decision::decimalSign,
            certainlyMixed ? std::vector<std::string>{}
                           : std::vector<std::string>{"comma", "point"});
    if (!isPoint && !isComma && comma.line != 0)
        return dataProblem(
            Phrase::tr("\"%1\" can be read in two ways, and no other number shows which")
                .with(comma.text),
            linePlace(comma.line),
            Phrase::tr("say --decimal comma (a decimal comma) or --decimal point (groups of "
                       "thousands)"),
            Decision::decimalSign, {"comma", "point"});
    return isComma ? ',' : '.';
}

bool NumberCells::readGroupsWrong() const
{
    const auto sign = decimalSign();
    if (m_said || !sign)
        return false;
    return first(*sign == '.' ? &ColumnSigns::commaOrGroups : &ColumnSigns::pointOrGroups).line !=
           0;
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
