#include "core/intake/time/time_pattern.h"

#include "core/intake/time/clock_scan.h"
#include "core/text/ascii.h"
#include "core/text/phrase.h"
#include "core/text/times.h"
#include "core/text/trimmed.h"

#include <QtGlobal>
#include <algorithm>
#include <array>

namespace holdband {

using namespace std::chrono;

namespace {

constexpr std::array<std::string_view, 12> monthNames{
    "january", "february", "march",     "april",   "may",      "june",
    "july",    "august",   "september", "october", "november", "december"};
constexpr std::size_t shortName = 3;

bool beginsWith(std::string_view text, std::string_view lowerCase)
{
    return text.size() >= lowerCase.size() &&
           std::equal(lowerCase.begin(), lowerCase.end(), text.begin(),
                      [](char a, char b) { return a == asciiLower(b); });
}

/// Takes the digits off the front of the text; absent if there are fewer than wanted.
std::optional<int> takeDigits(std::string_view& text, int least, int most)
{
    int value = 0, count = 0;
    while (count < most && !text.empty() && text.front() >= '0' && text.front() <= '9') {
        value = value * 10 + (text.front() - '0');
        text.remove_prefix(1);
        ++count;
    }
    return count >= least ? std::optional(value) : std::nullopt;
}

/// "Z", "+02:00", "-0700", "+02"
std::optional<Milliseconds> takeOffset(std::string_view& text)
{
    if (text.empty())
        return std::nullopt;
    const char sign = text.front();
    text.remove_prefix(1);
    if (sign == 'Z' || sign == 'z')
        return Milliseconds{0};
    if (sign != '+' && sign != '-')
        return std::nullopt;
    const auto hour = takeDigits(text, 2, 2);
    if (text.starts_with(':'))
        text.remove_prefix(1);
    const auto minute = takeDigits(text, 0, 2);
    if (!hour || !minute || *hour > 14 || *minute > 59)
        return std::nullopt;
    const Milliseconds size = hours{*hour} + minutes{*minute};
    return sign == '-' ? -size : size;
}

/// Takes a month's name, long or short, off the text and returns its number.
std::optional<int> takeMonthName(std::string_view& text, bool whole)
{
    for (std::size_t i = 0; i < monthNames.size(); ++i) {
        const std::string_view name = whole ? monthNames[i] : monthNames[i].substr(0, shortName);
        if (beginsWith(text, name)) {
            text.remove_prefix(name.size());
            return static_cast<int>(i) + 1;
        }
    }
    return std::nullopt;
}

} // namespace

struct TimePattern::Fields {
    int year = 0;
    int month = 0;
    int day = 0;
    int hour = 0;
    int minute = 0;
    int second = 0;
    int milliseconds = 0;
    std::optional<bool> afternoon;
    std::optional<Milliseconds> offset;
};

Result<TimePattern> TimePattern::compile(std::string_view text)
{
    TimePattern pattern;
    text = trimmed(text);
    for (std::size_t i = 0; i < text.size();) {
        const char c = text[i];
        if (c == '\'') {
            const std::size_t end = text.find('\'', i + 1);
            if (end == text.npos)
                return dataProblem(Phrase::tr("a quote in the pattern is left open"));
            for (const char inside : text.substr(i + 1, end - i - 1))
                pattern.m_parts.push_back({Piece::literal, 1, inside});
            i = end + 1;
            continue;
        }
        const std::size_t end = std::min(text.find_first_not_of(c, i), text.size());
        const bool letter = asciiLower(c) >= 'a' && asciiLower(c) <= 'z' && c != 'T' && c != 'Z';
        if (letter)
            HOLDBAND_TRY(pattern.addLetters(c, static_cast<int>(end - i)));
        for (std::size_t k = i; !letter && k < end; ++k)
            pattern.m_parts.push_back({Piece::literal, 1, c});
        i = end;
    }
    HOLDBAND_TRY(pattern.checkComplete());
    return pattern;
}

Done TimePattern::addLetters(char letter, int count)
{
    struct Known {
        char letter;
        int least, most;
        Piece piece;
    };
    static constexpr std::array known{
        Known{'y', 2, 2, Piece::shortYear},    Known{'y', 4, 4, Piece::year},
        Known{'M', 1, 2, Piece::month},        Known{'M', 3, 4, Piece::monthName},
        Known{'d', 1, 2, Piece::day},          Known{'H', 1, 2, Piece::hour},
        Known{'h', 1, 2, Piece::hour12},       Known{'a', 1, 1, Piece::halfDay},
        Known{'m', 1, 2, Piece::minute},       Known{'s', 1, 2, Piece::second},
        Known{'z', 3, 3, Piece::milliseconds}, Known{'x', 1, 1, Piece::offset}};
    const auto* found = std::find_if(known.begin(), known.end(), [&](const Known& each) {
        return each.letter == letter && count >= each.least && count <= each.most;
    });
    const std::string letters(static_cast<std::size_t>(count), letter);
    if (found == known.end())
        return dataProblem(Phrase::tr("\"%1\" means nothing in a pattern").with(letters), {},
                           Phrase::tr("write words in 'quotes'"));
    if (has(found->piece))
        return dataProblem(Phrase::tr("\"%1\" repeats a part of the pattern").with(letters));
    m_parts.push_back({found->piece, count, 0});
    return {};
}

bool TimePattern::has(Piece piece) const
{
    return std::any_of(m_parts.begin(), m_parts.end(),
                       [piece](const Part& part) { return part.piece == piece; });
}

Done TimePattern::checkComplete() const
{
    if (has(Piece::year) == has(Piece::shortYear))
        return has(Piece::year)
                   ? dataProblem(Phrase::tr("the pattern has the year twice"))
                   : dataProblem(Phrase::tr("the pattern lacks the year (yyyy or yy)"));
    if (has(Piece::month) == has(Piece::monthName))
        return has(Piece::month)
                   ? dataProblem(Phrase::tr("the pattern has the month twice"))
                   : dataProblem(Phrase::tr("the pattern lacks the month (MM or MMM)"));
    if (!has(Piece::day))
        return dataProblem(Phrase::tr("the pattern lacks the day (dd)"));
    if (has(Piece::hour) == has(Piece::hour12))
        return has(Piece::hour) ? dataProblem(Phrase::tr("the pattern has the hour twice"))
                                : dataProblem(Phrase::tr("the pattern lacks the hour (HH)"));
    if (has(Piece::hour12) != has(Piece::halfDay))
        return has(Piece::hour12)
                   ? dataProblem(
                         Phrase::tr("the pattern lacks the half of the day (a) that belongs to hh"))
                   : dataProblem(Phrase::tr("AM and PM go with hh, not with HH"));
    return has(Piece::minute) ? Done()
                              : dataProblem(Phrase::tr("the pattern lacks the minute (mm)"));
}

bool TimePattern::readPart(const Part& part, std::string_view& text, Fields& fields)
{
    const auto number = [&](int& field) {
        const auto value =
            part.width == 1 ? takeDigits(text, 1, 2) : takeDigits(text, part.width, part.width);
        field = value.value_or(0);
        return value.has_value();
    };
    switch (part.piece) {
    case Piece::literal:
        if (!text.starts_with(part.text))
            return false;
        text.remove_prefix(1);
        return true;
    case Piece::year:
        return number(fields.year);
    case Piece::shortYear:
        if (!number(fields.year))
            return false;
        fields.year += 2000;
        return true;
    case Piece::month:
        return number(fields.month);
    case Piece::monthName:
        fields.month = takeMonthName(text, part.width == 4).value_or(0);
        return fields.month > 0;
    case Piece::day:
        return number(fields.day);
    case Piece::hour:
    case Piece::hour12:
        return number(fields.hour);
    case Piece::halfDay:
        if (!beginsWith(text, "am") && !beginsWith(text, "pm"))
            return false;
        fields.afternoon = asciiLower(text.front()) == 'p';
        text.remove_prefix(2);
        return true;
    case Piece::minute:
        return number(fields.minute);
    case Piece::second:
        return number(fields.second);
    case Piece::milliseconds:
        return number(fields.milliseconds);
    case Piece::offset:
        fields.offset = takeOffset(text);
        return fields.offset.has_value();
    }
    return false;
}

tl::expected<Stamp, const char*> TimePattern::read(std::string_view text) const
{
    const auto reason = [](const char* why) { return tl::unexpected<const char*>(why); };
    text = trimmed(text);
    if (text.empty())
        return reason(QT_TRANSLATE_NOOP("Phrase", "is missing"));
    Fields fields;
    for (const Part& part : m_parts) {
        if (!readPart(part, text, fields))
            return reason(QT_TRANSLATE_NOOP("Phrase", "does not fit the pattern"));
    }
    if (!text.empty())
        return reason(QT_TRANSLATE_NOOP("Phrase", "goes on where the pattern ends"));
    if (fields.afternoon) {
        if (fields.hour < 1 || fields.hour > 12)
            return reason(QT_TRANSLATE_NOOP("Phrase", "has an hour that is not 1 … 12"));
        fields.hour = fields.hour % 12 + (*fields.afternoon ? 12 : 0);
    }
    if (fields.hour > 23 || fields.minute > 59 || fields.second > 59)
        return reason(QT_TRANSLATE_NOOP("Phrase", "is no time of day"));
    if (fields.year < firstPlausibleYear || fields.year > lastPlausibleYear)
        return reason(QT_TRANSLATE_NOOP("Phrase", "its year is not between 1990 and 2100"));
    const year_month_day date{year{fields.year}, month{static_cast<unsigned>(fields.month)},
                              day{static_cast<unsigned>(fields.day)}};
    if (!date.ok())
        return reason(QT_TRANSLATE_NOOP("Phrase", "is no date of the calendar"));
    const Milliseconds wall = local_days{date}.time_since_epoch() + hours{fields.hour} +
                              minutes{fields.minute} + seconds{fields.second} +
                              milliseconds{fields.milliseconds};
    return fields.offset ? Stamp{StampKind::instant, (wall - *fields.offset).count()}
                         : Stamp{StampKind::local, wall.count()};
}

} // namespace holdband
