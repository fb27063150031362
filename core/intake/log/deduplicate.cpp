#include "core/intake/log/deduplicate.h"

#include "core/text/numbers.h"
#include "core/text/phrase.h"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <optional>

namespace holdband {

namespace {

using RowNumbers = std::vector<std::uint32_t>;

/// RowNumbers with a value, in the order of their times; rows with the same time in the file's
/// order.
RowNumbers sortedRows(const std::vector<double>& value, const std::vector<std::int64_t>& at)
{
    RowNumbers rows;
    rows.reserve(value.size());
    for (std::uint32_t i = 0; i < value.size(); ++i) {
        if (!std::isnan(value[i]))
            rows.push_back(i);
    }
    const auto earlier = [&at](std::uint32_t a, std::uint32_t b) { return at[a] < at[b]; };
    if (!std::is_sorted(rows.begin(), rows.end(), earlier))
        std::stable_sort(rows.begin(), rows.end(), earlier);
    return rows;
}

void reserve(LogColumn& column, std::size_t count)
{
    column.at.reserve(count);
    column.raw.reserve(count);
    column.line.reserve(count);
    if (column.kind == SeriesKind::meter)
        column.decimals.reserve(count);
}

double powerOnValue(const LogColumn& column)
{
    return column.unit == ReadingUnit::celsius ? 85.0 : 185.0;
}

bool isPowerOn(const LogColumn& column, std::size_t i)
{
    return column.raw[i] == powerOnValue(column);
}

/// The nearest reading before (step −1) or after (+1) that is not a power-on value.
std::optional<double> neighbour(const LogColumn& column, std::size_t i, std::ptrdiff_t step)
{
    const auto size = static_cast<std::ptrdiff_t>(column.raw.size());
    for (auto k = static_cast<std::ptrdiff_t>(i) + step; k >= 0 && k < size; k += step) {
        if (!isPowerOn(column, static_cast<std::size_t>(k)))
            return column.raw[static_cast<std::size_t>(k)];
    }
    return std::nullopt;
}

/// Whether it is far from every existing neighbour, and has at least one.
bool jumps(const LogColumn& column, std::optional<double> before, std::optional<double> after)
{
    const double limit = column.unit == ReadingUnit::celsius ? 10.0 : 18.0;
    const double powerOn = powerOnValue(column);
    const auto far = [&](std::optional<double> value) {
        return !value || std::fabs(*value - powerOn) > limit;
    };
    return (before || after) && far(before) && far(after);
}

void dropRows(LogColumn& column, const std::vector<bool>& drop)
{
    std::size_t stored = 0;
    for (std::size_t i = 0; i < drop.size(); ++i) {
        if (drop[i])
            continue;
        column.at[stored] = column.at[i];
        column.raw[stored] = column.raw[i];
        column.line[stored] = column.line[i];
        ++stored;
    }
    column.at.resize(stored);
    column.raw.resize(stored);
    column.line.resize(stored);
}

} // namespace

void deduplicateInto(LogColumn& column, const ColumnInFileOrder& values,
                     const std::vector<std::int64_t>& at, const std::vector<std::uint32_t>& line)
{
    const RowNumbers rows = sortedRows(values.value, at);
    reserve(column, rows.size());
    for (const std::uint32_t row : rows) {
        const Instant when = instantFromMs(at[row]);
        const double value = values.value[row];
        if (!column.at.empty() && column.at.back() == when) {
            if (column.raw.back() == value) {
                ++column.duplicates;
                if (column.repeated.size() < maxRowsListed)
                    column.repeated.push_back(line[row]);
            } else {
                column.conflicts.push_back({line[row], when, column.raw.back(), value});
            }
            continue;
        }
        column.at.push_back(when);
        column.raw.push_back(value);
        column.line.push_back(line[row]);
        if (column.kind == SeriesKind::meter)
            column.decimals.push_back(values.decimals[row]);
    }
}

std::vector<RejectedRow> takeOutPowerOnValues(LogColumn& column)
{
    std::vector<RejectedRow> rejected;
    if (column.kind != SeriesKind::temperature)
        return rejected;
    const double powerOn = powerOnValue(column);
    auto next = std::find(column.raw.begin(), column.raw.end(), powerOn);
    if (next == column.raw.end())
        return rejected;
    std::vector<bool> drop(column.raw.size(), false);
    const std::string why =
        Phrase::tr("jumps from its neighbours to what a sensor gives after power-on");
    for (; next != column.raw.end(); next = std::find(next, column.raw.end(), powerOn)) {
        auto i = static_cast<std::size_t>(next - column.raw.begin());
        std::size_t end = i; // a run of them has the same neighbours
        while (end < column.raw.size() && isPowerOn(column, end))
            ++end;
        const bool jump = jumps(column, neighbour(column, i, -1), neighbour(column, end - 1, +1));
        for (; i < end; ++i) {
            drop[i] = jump;
            if (jump)
                rejected.push_back(
                    {column.line[i], column.header, shortestText(column.raw[i]), why});
        }
        next = column.raw.begin() + static_cast<std::ptrdiff_t>(end);
    }
    if (!rejected.empty())
        dropRows(column, drop);
    return rejected;
}

} // namespace holdband
