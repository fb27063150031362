#include "core/intake/time/clock_scan.h"

#include "core/text/ascii.h"

#include <array>

namespace holdband {

using namespace std::chrono;

namespace {

/// 1 … 12 for an English month's name or its first three letters (also "Sept"); 0 for another word.
int monthOf(std::string_view word)
{
    static constexpr std::array<std::string_view, 12> names{
        "january", "february", "march",     "april",   "may",      "june",
        "july",    "august",   "september", "october", "november", "december"};
    if (word.size() < 3)
        return 0;
    for (std::size_t i = 0; i < names.size(); ++i) {
        const std::string_view name = names[i];
        bool same = word.size() == 3 || word.size() == name.size() ||
                    (word.size() == 4 && name == "september");
        for (std::size_t k = 0; same && k < word.size(); ++k)
            same = asciiLower(word[k]) == name[k];
        if (same)
            return static_cast<int>(i) + 1;
    }
    return 0;
}

int scanMonthName(TextCursor& cursor)
{
    const std::string_view rest = cursor.rest();
    std::size_t size = 0;
    for (; cursor.onLetter(); ++size)
        cursor.skip();
    cursor.take('.');
    return monthOf(rest.substr(0, size));
}

void skipDateSeparators(TextCursor& cursor)
{
    while (cursor.peek() == ' ' || cursor.peek() == '-' || cursor.peek() == ',' ||
           cursor.peek() == '/')
        cursor.skip();
}

/// The name comes after the day ("7 Mar 2026") or before it ("Mar 7, 2026").
std::optional<ScannedDate> scanNamedDate(TextCursor& cursor, std::optional<int> day)
{
    ScannedDate date;
    date.named = true;
    date.second = scanMonthName(cursor);
    skipDateSeparators(cursor);
    int width = 1;
    date.first = day ? *day : cursor.digits(2, width);
    if (!day)
        skipDateSeparators(cursor);
    date.third = cursor.digits(4, date.thirdWidth);
    if (date.second == 0 || width == 0 || (date.thirdWidth != 4 && date.thirdWidth != 2))
        return std::nullopt;
    if (date.thirdWidth == 2)
        date.third += 2000;
    return date;
}

std::optional<ScannedDate> compactDate(int digits)
{
    ScannedDate date{digits / 10000, digits / 100 % 100, digits % 100, 4, 2, true, false, true};
    return date;
}

/// Digits after the decimal sign, rounded; absent if there is none.
std::optional<int> scanThousandths(TextCursor& cursor)
{
    int width = 0;
    int value = cursor.digits(3, width);
    if (width == 0)
        return std::nullopt;
    for (; width < 3; ++width)
        value *= 10;
    if (cursor.onDigit() && cursor.peek() >= '5')
        ++value;
    while (cursor.onDigit())
        cursor.skip();
    return value;
}

/// Converts the hour by a following "AM", "p.m.", … to the 24-hour clock. Without such a mark the
/// hour is unchanged.
std::optional<int> halfDayHour(TextCursor& cursor, int hour)
{
    const char half = asciiLower(cursor.peek());
    if (half != 'a' && half != 'p')
        return hour;
    cursor.skip();
    if (cursor.take('.'))
        cursor.skipSpaces(); // "p. m."
    if (!cursor.take('m') && !cursor.take('M'))
        return std::nullopt;
    cursor.take('.');
    if (hour < 1 || hour > 12)
        return std::nullopt;
    return hour % 12 + (half == 'p' ? 12 : 0);
}

bool takeWord(TextCursor& cursor, std::string_view word)
{
    if (!cursor.rest().starts_with(word))
        return false;
    for (std::size_t i = 0; i < word.size(); ++i)
        cursor.skip();
    return true;
}

/// Leaves `offset` absent if there is none; returns false for an invalid one.
bool scanOffset(TextCursor& cursor, std::optional<Milliseconds>& offset)
{
    if (takeWord(cursor, "Z") || takeWord(cursor, "z")) {
        offset = Milliseconds{0};
        return true;
    }
    const bool behindUtc = takeWord(cursor, "UTC") || takeWord(cursor, "GMT");
    if (behindUtc) {
        offset = Milliseconds{0};
        cursor.skipSpaces();
    }
    const bool minus = cursor.peek() == '-' || takeWord(cursor, "\u2212");
    if (!minus && cursor.peek() != '+')
        return true;
    if (cursor.peek() == '-' || cursor.peek() == '+')
        cursor.skip();
    int width = 0;
    const int hour = cursor.digits(2, width);
    if ((width != 2 && !(behindUtc && width == 1)) || hour > 23)
        return false;
    const bool colon = cursor.take(':');
    const int minute = cursor.digits(2, width);
    if ((width != 2 && (width != 0 || colon)) || minute > 59)
        return false;
    const Milliseconds size = hours{hour} + minutes{minute};
    offset = minus ? -size : size;
    return true;
}

std::optional<ScannedClock> finishClock(TextCursor& cursor, int hour, int minute, int second,
                                        int thousandths)
{
    ScannedClock clock;
    cursor.skipSpaces();
    const auto fullHour = halfDayHour(cursor, hour);
    cursor.skipSpaces();
    if (!fullHour || *fullHour > 23 || minute > 59 || second > 59 ||
        !scanOffset(cursor, clock.offset))
        return std::nullopt;
    clock.msOfDay = ((*fullHour * 60 + minute) * 60 + second) * 1000 + thousandths;
    return clock;
}

/// "0630" or "063015" after a compact date.
std::optional<ScannedClock> scanCompactClock(TextCursor& cursor)
{
    int width = 0;
    const int digits = cursor.digits(6, width);
    if (width != 4 && width != 6)
        return std::nullopt;
    const int all = width == 4 ? digits * 100 : digits;
    int thousandths = 0;
    if (width == 6 && (cursor.take('.') || cursor.take(','))) {
        const auto fraction = scanThousandths(cursor);
        if (!fraction)
            return std::nullopt;
        thousandths = *fraction;
    }
    return finishClock(cursor, all / 10000, all / 100 % 100, all % 100, thousandths);
}

} // namespace

std::optional<ScannedDate> scanDate(TextCursor& cursor)
{
    if (cursor.onLetter())
        return scanNamedDate(cursor, std::nullopt);
    ScannedDate date;
    date.first = cursor.digits(8, date.firstWidth);
    if (date.firstWidth == 8 && !cursor.onDigit() && cursor.peek() != '.')
        return compactDate(date.first);
    const char separator = cursor.peek();
    if (date.firstWidth == 0 || (date.firstWidth > 2 && date.firstWidth != 4))
        return std::nullopt;
    if (separator != '-' && separator != '/' && separator != '.' && separator != ' ')
        return std::nullopt;
    cursor.skip();
    if (cursor.onLetter() && date.firstWidth <= 2)
        return scanNamedDate(cursor, date.first);
    int width = 0;
    date.second = cursor.digits(2, width);
    if (separator == ' ' || width == 0 || !cursor.take(separator))
        return std::nullopt;
    date.third = cursor.digits(4, date.thirdWidth);
    date.yearFirst = date.firstWidth == 4;
    const bool goodThird = date.yearFirst ? date.thirdWidth == 1 || date.thirdWidth == 2
                                          : date.thirdWidth == 2 || date.thirdWidth == 4;
    return goodThird ? std::optional{date} : std::nullopt;
}

std::optional<ScannedClock> scanClock(TextCursor& cursor)
{
    int width = 0;
    const int hour = cursor.digits(2, width);
    if (width == 0 || !cursor.take(':'))
        return std::nullopt;
    const int minute = cursor.digits(2, width);
    if (width != 2)
        return std::nullopt;
    int second = 0;
    int thousandths = 0;
    if (cursor.take(':')) {
        second = cursor.digits(2, width);
        if (width != 2)
            return std::nullopt;
        if (cursor.take('.') || cursor.take(',')) {
            const auto fraction = scanThousandths(cursor);
            if (!fraction)
                return std::nullopt;
            thousandths = *fraction;
        }
    }
    return finishClock(cursor, hour, minute, second, thousandths);
}

std::optional<ScannedClock> scanClockBehindDate(TextCursor& cursor, bool compactDate)
{
    if (!cursor.take('T') && !cursor.take('t')) {
        const bool comma = cursor.take(',');
        if (!comma && cursor.peek() != ' ')
            return std::nullopt;
        cursor.skipSpaces();
    }
    if (compactDate && cursor.rest().substr(0, 3).find(':') == std::string_view::npos)
        return scanCompactClock(cursor);
    return scanClock(cursor);
}

} // namespace holdband
