#include "core/intake/csv/time_numbers.h"

#include "core/intake/csv/time_columns.h"
#include "core/intake/log/log_places.h"
#include "core/intake/log/values.h"
#include "core/intake/time/stamps.h"
#include "core/text/name_suggestions.h"
#include "core/text/numbers.h"
#include "core/text/phrase.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace holdband {

namespace {

constexpr double firstDay = 32874.0;  // 1990-01-01
constexpr double endOfDays = 73416.0; // 2101-01-01
constexpr std::int64_t msInSecond = 1000;
constexpr std::int64_t msInDay = 86'400'000;

struct NamedTimeUnit {
    std::string_view text; ///< folded
    TimeUnit unit;
};

constexpr std::array timeUnitNames{
    NamedTimeUnit{"s", TimeUnit::seconds},        NamedTimeUnit{"sec", TimeUnit::seconds},
    NamedTimeUnit{"secs", TimeUnit::seconds},     NamedTimeUnit{"second", TimeUnit::seconds},
    NamedTimeUnit{"seconds", TimeUnit::seconds},  NamedTimeUnit{"sek", TimeUnit::seconds},
    NamedTimeUnit{"sekunden", TimeUnit::seconds}, NamedTimeUnit{"min", TimeUnit::minutes},
    NamedTimeUnit{"mins", TimeUnit::minutes},     NamedTimeUnit{"minute", TimeUnit::minutes},
    NamedTimeUnit{"minutes", TimeUnit::minutes},  NamedTimeUnit{"minuten", TimeUnit::minutes},
    NamedTimeUnit{"h", TimeUnit::hours},          NamedTimeUnit{"hr", TimeUnit::hours},
    NamedTimeUnit{"hrs", TimeUnit::hours},        NamedTimeUnit{"hour", TimeUnit::hours},
    NamedTimeUnit{"hours", TimeUnit::hours},      NamedTimeUnit{"std", TimeUnit::hours},
    NamedTimeUnit{"stunden", TimeUnit::hours}};

std::optional<TimeUnit> unitOfWord(std::string_view word)
{
    const auto* found =
        std::find_if(timeUnitNames.begin(), timeUnitNames.end(),
                     [word](const NamedTimeUnit& each) { return each.text == word; });
    return found == timeUnitNames.end() ? std::nullopt : std::optional(found->unit);
}

std::optional<Decimal> numberIn(std::string_view text)
{
    const auto point = scanGrouped(text, '.');
    return point ? point : scanGrouped(text, ',');
}

bool isDay(double value)
{
    return value >= firstDay && value < endOfDays;
}

/// The numbers of a column in the rows below a header, without missing ones. Empty: one of them is
/// no number, or a Unix time.
std::vector<double> numbersBelow(const SampleRows& rows, std::size_t header, std::size_t column)
{
    std::vector<double> numbers;
    for (const SampleRow& row : rowsBelow(rows, header)) {
        if (isMissing(row.cell(column)))
            continue;
        const auto number = numberIn(row.cell(column));
        if (!number || scanStamp(row.cell(column)))
            return {};
        numbers.push_back(number->value);
    }
    return numbers;
}

/// Whole days are dates without a time of day.
bool areDaysWithTimes(const std::vector<double>& numbers)
{
    return std::all_of(numbers.begin(), numbers.end(), isDay) &&
           std::any_of(numbers.begin(), numbers.end(),
                       [](double number) { return number != std::floor(number); });
}

/// Whether another column is meant to have the times; if `asText`, as texts.
bool otherSoundsLikeTime(const SampleRows& rows, std::size_t header, std::size_t column,
                         bool asText)
{
    for (std::size_t i = 0; i < rows[header].fields.size(); ++i) {
        const std::string_view text = rows[header + 1].cell(i);
        const bool isText = !isMissing(text) && !isNumber(text);
        if (i != column && soundsLikeTime(rows[header].fields[i]) && (isText || !asText))
            return true;
    }
    return false;
}

} // namespace

std::string_view optionText(TimeUnit unit)
{
    static constexpr std::array<std::string_view, 4> texts{"seconds", "minutes", "hours", "days"};
    return texts[static_cast<std::size_t>(unit)];
}

std::optional<TimeUnit> timeUnitOption(std::string_view text)
{
    for (const TimeUnit unit :
         {TimeUnit::seconds, TimeUnit::minutes, TimeUnit::hours, TimeUnit::days}) {
        if (text == optionText(unit))
            return unit;
    }
    return std::nullopt;
}

std::string timeUnitText(TimeUnit unit)
{
    switch (unit) {
    case TimeUnit::seconds:
        return Phrase::tr("seconds");
    case TimeUnit::minutes:
        return Phrase::tr("minutes");
    case TimeUnit::hours:
        return Phrase::tr("hours");
    case TimeUnit::days:
        break;
    }
    return Phrase::tr("days");
}

std::optional<TimeUnit> timeUnitNamed(std::string_view header)
{
    std::string name = folded(header);
    if (name.ends_with(')') || name.ends_with(']'))
        name.pop_back();
    const std::size_t gap = name.find_last_of(" _-/([,");
    const std::string word = gap == name.npos ? name : name.substr(gap + 1);
    const std::string before = gap == name.npos
                                   ? std::string()
                                   : name.substr(0, name.find_last_not_of(" _-/([,", gap) + 1);
    // "Beer (min)" is a minimum, and "Vessel S" no time.
    const bool isTime = before.empty() || before == "t" || soundsLikeTime(before) ||
                        before.find("lauf") != before.npos;
    return isTime ? unitOfWord(word) : std::nullopt;
}

std::optional<TimeNumbers> timeNumbers(const SampleRows& rows, std::size_t header,
                                       std::size_t column)
{
    const std::vector<double> numbers = numbersBelow(rows, header, column);
    if (numbers.empty())
        return std::nullopt;
    const std::string_view name = rows[header].cell(column);
    TimeNumbers found{timeUnitNamed(name), areDaysWithTimes(numbers),
                      std::string(rows[header + 1].cell(column))};
    if (!found.unit && found.canBeDays && soundsLikeTime(name) && !soundsLikeElapsed(name))
        found.unit = TimeUnit::days;
    return found;
}

bool countsTime(const SampleRows& rows, std::size_t header, std::size_t column)
{
    const std::vector<double> numbers = numbersBelow(rows, header, column);
    const std::string_view name = rows[header].cell(column);
    if (numbers.empty() || isNumber(name) || numbers.front() < 0.0 ||
        otherSoundsLikeTime(rows, header, column, true))
        return false;
    if (timeUnitNamed(name))
        return true;
    const bool mayCount =
        areDaysWithTimes(numbers) || (numbers.front() == 0.0 && numbers.back() > 0.0);
    const bool onlyGuess = column == 0 && !otherSoundsLikeTime(rows, header, column, false);
    return mayCount && std::is_sorted(numbers.begin(), numbers.end()) &&
           (soundsLikeTime(name) || onlyGuess);
}

Done needTimeUnit(const TimeNumbers& numbers, const std::string& column)
{
    if (numbers.unit)
        return {};
    std::vector<std::string> options;
    for (const TimeUnit unit :
         {TimeUnit::days, TimeUnit::seconds, TimeUnit::minutes, TimeUnit::hours}) {
        if (unit != TimeUnit::days || numbers.canBeDays)
            options.emplace_back(optionText(unit));
    }
    return dataProblem(
        Phrase::tr("nothing says what the numbers in the column of times count, such as \"%1\"")
            .with(numbers.first),
        columnPlace(column),
        numbers.canBeDays
            ? Phrase::tr("say --time-unit days (of a spreadsheet's calendar), or --time-unit "
                         "seconds, minutes or hours and with --start when they began; or name the "
                         "column of the times with --time")
            : Phrase::tr("say --time-unit seconds, minutes or hours, and with --start when they "
                         "began; or name the column of the times with --time"),
        Decision::timeUnit, std::move(options));
}

std::int64_t msIn(TimeUnit unit)
{
    static constexpr std::array<std::int64_t, 4> lengths{msInSecond, 60 * msInSecond,
                                                         3600 * msInSecond, msInDay};
    return lengths[static_cast<std::size_t>(unit)];
}

std::optional<std::int64_t> wallOfDays(double days, int decimals)
{
    constexpr double dayOf1970 = 25569.0;
    constexpr int decimalsOfMs = 8;
    if (!isDay(days))
        return std::nullopt;
    const double ms = (days - dayOf1970) * static_cast<double>(msInDay);
    if (decimals >= decimalsOfMs)
        return std::llround(ms);
    return std::llround(ms / static_cast<double>(msInSecond)) * msInSecond;
}

} // namespace holdband
