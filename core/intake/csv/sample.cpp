#include "core/intake/csv/sample.h"

#include "core/intake/csv/tokens.h"
#include "core/text/trimmed.h"

#include <algorithm>

namespace holdband {

std::string_view SampleRow::cell(std::size_t column) const
{
    return column < fields.size() ? trimmed(fields[column]) : std::string_view{};
}

Sample sampleRows(std::string_view text, bool isWhole, char delimiter)
{
    constexpr std::size_t most = std::size_t{64} << 10;
    Sample sample{delimiter, {}, std::nullopt, text.size() > most};
    CsvTokens tokens(delimiter, [&sample](const CsvRow& row) {
        if (!row.isBlank())
            sample.rows.push_back({row.line, {row.fields.begin(), row.fields.end()}});
        return sample.rows.size() < maxSampleRows;
    });
    Done done = tokens.feed(text.substr(0, most));
    if (done && isWhole && text.size() <= most)
        done = tokens.finish();
    if (!done)
        sample.problem = done.error();
    return sample;
}

std::span<const SampleRow> rowsBelow(const SampleRows& rows, std::size_t header)
{
    const std::size_t first = std::min(rows.size(), header + 1);
    return std::span(rows).subspan(first, std::min(rowsExamined, rows.size() - first));
}

std::vector<std::string> headerNames(const SampleRow& row)
{
    std::vector<std::string> names;
    for (const std::string& field : row.fields)
        names.emplace_back(trimmed(field));
    while (!names.empty() && names.back().empty())
        names.pop_back();
    return names;
}

std::vector<std::string> numberedColumns(std::size_t count)
{
    std::vector<std::string> names;
    for (std::size_t i = 1; i <= count; ++i)
        names.push_back("column " + std::to_string(i));
    return names;
}

} // namespace holdband
