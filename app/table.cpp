#include "app/table.h"

#include "app/colors.h"
#include "app/console.h"
#include "core/text/visible.h"

#include <algorithm>
#include <limits>

namespace holdband::app {

namespace {

const std::string margin = "  ";
const std::string gap = "  ";

/// In letters, not bytes: continuation bytes of UTF-8 have no width.
std::size_t widthOf(const std::string& text)
{
    return static_cast<std::size_t>(std::count_if(text.begin(), text.end(), [](char c) {
        return (static_cast<unsigned char>(c) & 0xc0) != 0x80;
    }));
}

} // namespace

Table::Table(std::vector<std::string> headers, bool wordsLast) : m_wordsLast(wordsLast)
{
    m_rows.push_back(std::move(headers));
}

void Table::add(std::vector<std::string> cells)
{
    for (std::string& cell : cells) // before its width is measured
        cell = visible(cell, LineEnds::escaped);
    m_rows.push_back(std::move(cells));
}

std::string Table::text() const
{
    return text(terminalWidth().value_or(std::numeric_limits<std::size_t>::max()));
}

std::string Table::text(std::size_t mostWidth) const
{
    std::vector<std::size_t> widths(m_rows.front().size(), 0);
    for (const auto& row : m_rows) {
        for (std::size_t i = 0; i < row.size(); ++i)
            widths[i] = std::max(widths[i], widthOf(row[i]));
    }
    std::string text;
    std::size_t first = 1;
    do {
        std::size_t end = first;
        std::size_t width = margin.size() + widths.front();
        // At least one column besides the first, however narrow the terminal is.
        while (end < widths.size() &&
               (end == first || width + gap.size() + widths[end] <= mostWidth)) {
            width += gap.size() + widths[end];
            ++end;
        }
        text += (text.empty() ? "" : "\n") + block(widths, first, end);
        first = end;
    } while (first < widths.size());
    return text;
}

/// The first column, and those from `first` to before `end`.
std::string Table::block(const std::vector<std::size_t>& widths, std::size_t first,
                         std::size_t end) const
{
    std::string text;
    for (const auto& row : m_rows) {
        std::string line;
        const auto add = [&](std::size_t i) {
            const std::string padding(widths[i] - widthOf(row[i]), ' ');
            const bool left = i == 0 || (m_wordsLast && i + 1 == row.size());
            line += (i == 0 ? "" : gap) + (left ? row[i] + padding : padding + row[i]);
        };
        add(0);
        for (std::size_t i = first; i < end; ++i)
            add(i);
        line.erase(line.find_last_not_of(' ') + 1);
        text += margin + (&row == &m_rows.front() ? emphasized(line) : line) + "\n";
    }
    return text;
}

} // namespace holdband::app
