#include "app/table.h"

#include "core/text/visible.h"

#include <algorithm>

namespace holdband::app {

namespace {

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
    std::vector<std::size_t> widths(m_rows.front().size(), 0);
    for (const auto& row : m_rows) {
        for (std::size_t i = 0; i < row.size(); ++i)
            widths[i] = std::max(widths[i], widthOf(row[i]));
    }
    std::string text;
    for (const auto& row : m_rows) {
        std::string line;
        for (std::size_t i = 0; i < row.size(); ++i) {
            const std::string padding(widths[i] - widthOf(row[i]), ' ');
            const bool left = i == 0 || (m_wordsLast && i + 1 == row.size());
            line += (i == 0 ? "" : "  ") + (left ? row[i] + padding : padding + row[i]);
        }
        line.erase(line.find_last_not_of(' ') + 1);
        text += "  " + line + "\n";
    }
    return text;
}

} // namespace holdband::app
