#include "core/intake/container/cell_format.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <chrono>
#include <cmath>
#include <cstdint>
#include <cstdio>

namespace holdband {

namespace {

/// A format code's letters, in lower case, without what is only shown: texts in quotes, escaped
/// characters, padding, colours, conditions and languages. "[h]" becomes "[".
std::string bareCode(std::string_view code)
{
    std::string bare;
    for (std::size_t i = 0; i < code.size() && code[i] != ';'; ++i) {
        const char c = code[i];
        if (c == '\\' || c == '_' || c == '*') {
            ++i;
        } else if (c == '"') {
            i = std::min(code.find('"', i + 1), code.size());
        } else if (c == '[') {
            const std::size_t end = std::min(code.find(']', i), code.size());
            const std::string_view inner = code.substr(i + 1, end - i - 1);
            if (!inner.empty() && inner.find_first_not_of("hHmMsS") == inner.npos)
                bare += '[';
            i = end;
        } else {
            bare += c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
        }
    }
    return bare;
}

void removeAll(std::string& text, std::string_view part)
{
    for (std::size_t at = text.find(part); at != text.npos; at = text.find(part, at))
        text.erase(at, part.size());
}

/// "ss.000" has zeros that are no digits of a number.
void removeFractions(std::string& text)
{
    for (std::size_t at = text.find("s.0"); at != text.npos; at = text.find("s.0", at + 1)) {
        const std::size_t end = std::min(text.find_first_not_of('0', at + 2), text.size());
        text.erase(at + 1, end - at - 1);
    }
}

CellForm formOf(bool hasDate, bool hasTime)
{
    if (hasDate)
        return hasTime ? CellForm::dateTime : CellForm::date;
    return hasTime ? CellForm::time : CellForm::number;
}

std::string clockText(std::int64_t msOfDay)
{
    std::array<char, 40> text{};
    const auto seconds = static_cast<int>(msOfDay / 1000), ms = static_cast<int>(msOfDay % 1000);
    std::snprintf(text.data(), text.size(), ms == 0 ? "%02d:%02d:%02d" : "%02d:%02d:%02d.%03d",
                  seconds / 3600, seconds / 60 % 60, seconds % 60, ms);
    return text.data();
}

/// Absent for 29 February 1900, which those days count but the calendar lacks.
std::optional<std::string> dayText(std::int64_t days, bool from1904)
{
    using namespace std::chrono;
    constexpr std::int64_t noSuchDay = 60;
    if (!from1904 && days == noSuchDay)
        return std::nullopt;
    const sys_days first = from1904           ? sys_days{year{1904} / 1 / 1}
                           : days < noSuchDay ? sys_days{year{1899} / 12 / 31}
                                              : sys_days{year{1899} / 12 / 30};
    const year_month_day date{first + std::chrono::days{days}};
    std::array<char, 40> text{};
    std::snprintf(text.data(), text.size(), "%04d-%02u-%02u", static_cast<int>(date.year()),
                  static_cast<unsigned>(date.month()), static_cast<unsigned>(date.day()));
    return std::string(text.data());
}

} // namespace

CellForm builtInForm(int id)
{
    const auto between = [id](int first, int last) { return id >= first && id <= last; };
    if (id == 22)
        return CellForm::dateTime;
    if (between(18, 21) || id == 45 || id == 47 || between(32, 35) || between(55, 56))
        return CellForm::time;
    if (between(14, 17) || between(27, 36) || between(50, 58))
        return CellForm::date;
    return CellForm::number;
}

CellForm formOfCode(std::string_view code)
{
    std::string bare = bareCode(code);
    removeAll(bare, "am/pm");
    removeAll(bare, "a/p");
    removeAll(bare, "general");
    removeFractions(bare);
    const auto has = [&](std::string_view any) { return bare.find_first_of(any) != bare.npos; };
    if (has("[0#?"))
        return CellForm::number;
    const bool hasTime = has("hs");
    return formOf(has("yd") || (has("m") && !hasTime), hasTime);
}

std::optional<std::string> serialText(double days, CellForm form, bool from1904)
{
    constexpr std::int64_t msPerDay = 86'400'000;
    constexpr double lastDay = 2'958'466; // the first of the year 10000
    if (form == CellForm::number || !(days >= 0 && days < lastDay - (from1904 ? 1462 : 0)))
        return std::nullopt;
    const std::int64_t ms = std::llround(days * static_cast<double>(msPerDay));
    const std::int64_t msOfDay = ms % msPerDay;
    if (form == CellForm::time && ms < msPerDay)
        return clockText(msOfDay);
    auto text = dayText(ms / msPerDay, from1904);
    if (text && (form != CellForm::date || msOfDay != 0))
        *text += " " + clockText(msOfDay);
    return text;
}

std::string cellNumber(double value)
{
    constexpr int digits = 15;
    std::array<char, 64> text{};
    const auto end = std::to_chars(text.data(), text.data() + text.size(), value,
                                   std::chars_format::general, digits);
    return {text.data(), end.ptr};
}

} // namespace holdband
