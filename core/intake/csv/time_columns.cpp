#include "core/intake/csv/time_columns.h"

#include "core/intake/csv/time_numbers.h"
#include "core/intake/log/values.h"
#include "core/intake/time/stamps.h"
#include "core/text/name_suggestions.h"
#include "core/text/numbers.h"

#include <algorithm>
#include <array>

namespace holdband {

namespace {

using CellTest = bool (*)(std::string_view);

bool isUnixTime(std::string_view text)
{
    return scanDecimal(text).has_value() && scanStamp(text).has_value();
}

/// Whether the first row below the header passes, most of the next ones pass, and the header
/// doesn't. Below a header that the user chose (`said`) it is enough that most rows pass.
bool columnPasses(const SampleRows& rows, std::size_t header, std::size_t column, CellTest test,
                  bool said)
{
    const std::span<const SampleRow> below = rowsBelow(rows, header);
    const std::string_view name = rows[header].cell(column);
    if (below.empty() || test(name) || isNumber(name))
        return false;
    const auto passed = std::count_if(below.begin(), below.end(),
                                      [&](const SampleRow& row) { return test(row.cell(column)); });
    return (said || test(below.front().cell(column))) &&
           static_cast<std::size_t>(passed) * 2 >= below.size();
}

/// Whether a row below the header has a number, or a mark for a missing value, outside the time
/// columns.
bool dataFollows(const SampleRows& rows, std::size_t header, const TimeColumns& time)
{
    for (const SampleRow& row : rowsBelow(rows, header)) {
        for (std::size_t i = 0; i < row.fields.size(); ++i) {
            const std::string_view text = row.cell(i);
            if (!time.has(i) && (isValue(text) || isMissing(text)))
                return true;
        }
    }
    return false;
}

std::optional<TimeColumns> timeBelow(const SampleRows& rows, std::size_t header, bool said,
                                     bool besideData)
{
    if (header + 1 >= rows.size())
        return std::nullopt;
    const std::size_t columns = rows[header + 1].fields.size();
    const auto first = [&](auto found) -> std::optional<TimeColumns> {
        for (std::size_t i = 0; i < columns; ++i) {
            const std::optional<TimeColumns> time = found(i);
            if (time && (!besideData || dataFollows(rows, header, *time)))
                return time;
        }
        return std::nullopt;
    };
    const auto passes = [&](std::size_t column, CellTest test) {
        return columnPasses(rows, header, column, test, said);
    };
    using Found = std::optional<TimeColumns>;
    if (const Found one = first([&](std::size_t i) {
            return passes(i, looksLikeTime) ? Found({i, std::nullopt}) : Found();
        }))
        return one;
    if (const Found two = first([&](std::size_t i) {
            const std::size_t clock = i + 1;
            return passes(i, isDateAlone) && passes(clock, isClockAlone) ? Found({i, clock})
                                                                         : Found();
        }))
        return two;
    if (!besideData)
        return std::nullopt;
    if (const Found unix = first([&](std::size_t i) {
            return passes(i, isUnixTime) ? Found({i, std::nullopt}) : Found();
        }))
        return unix;
    return first([&](std::size_t i) {
        return countsTime(rows, header, i) ? Found({i, std::nullopt}) : Found();
    });
}

template <std::size_t Size>
bool hasWord(std::string_view header, const std::array<std::string_view, Size>& words)
{
    const std::string name = folded(header);
    return std::any_of(words.begin(), words.end(),
                       [&](std::string_view word) { return name.find(word) != std::string::npos; });
}

} // namespace

std::optional<TimeColumns> timeByContent(const SampleRows& rows, std::size_t header, bool said)
{
    return timeBelow(rows, header, said, true);
}

std::optional<TimeColumns> timeWithoutData(const SampleRows& rows, std::size_t header)
{
    return timeBelow(rows, header, false, false);
}

std::optional<TimeColumns> datesByContent(const SampleRows& rows, std::size_t header)
{
    for (std::size_t i = 0; i < rows[header].fields.size(); ++i) {
        const TimeColumns dates{i, std::nullopt};
        if (columnPasses(rows, header, i, isDateAlone, false) && dataFollows(rows, header, dates))
            return dates;
    }
    return std::nullopt;
}

std::optional<TimeColumns> unixTimeWithoutData(const SampleRows& rows, std::size_t header)
{
    for (std::size_t i = 0; i < rows[header].fields.size(); ++i) {
        if (soundsLikeTime(rows[header].cell(i)) &&
            columnPasses(rows, header, i, isUnixTime, false))
            return TimeColumns{i, std::nullopt};
    }
    return std::nullopt;
}

bool soundsLikeTime(std::string_view header)
{
    constexpr std::array<std::string_view, 10> words{"time",   "date", "when",  "stamp", "clock",
                                                     "logged", "zeit", "datum", "uhr",   "unix"};
    return hasWord(header, words) || soundsLikeElapsed(header);
}

bool soundsLikeElapsed(std::string_view header)
{
    constexpr std::array<std::string_view, 5> words{"elapsed", "uptime", "duration", "dauer",
                                                    "laufzeit"};
    return hasWord(header, words);
}

} // namespace holdband
