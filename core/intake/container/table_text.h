// Writes rows of cells as CSV, so that tables of other kinds of files are read like a CSV log.
#pragma once

#include "core/text/csv_cell.h"

#include <algorithm>
#include <cstdint>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace holdband {

/// A table as CSV, and what to say about how it was made: sentences without their full stop.
struct TableText {
    std::string csv;
    std::vector<std::string> notes = {};
};

/// Each row is one line of the CSV: the numbers of rows and lines are the same.
class TableWriter {
public:
    /// Writes the row as that line (from 1, increasing); lines left out are empty. A row is at
    /// least as wide as those before it, because a log's short rows are rejected as incomplete.
    void writeRow(std::int64_t line, const std::vector<std::string>& cells)
    {
        m_text.append(static_cast<std::size_t>(line - m_next), '\n');
        for (std::size_t i = 0; i < cells.size(); ++i)
            m_text += (i > 0 ? "," : "") + csvQuoted(inOneLine(cells[i]));
        m_width = std::max(m_width, cells.size());
        m_text.append(m_width - cells.size(), ',');
        m_text += '\n';
        m_next = line + 1;
    }
    std::int64_t size() const { return static_cast<std::int64_t>(m_text.size()); }
    std::string take() { return std::move(m_text); }

private:
    static std::string inOneLine(std::string text)
    {
        std::replace_if(
            text.begin(), text.end(), [](char c) { return c == '\n' || c == '\r'; }, ' ');
        return text;
    }

    std::string m_text;
    std::int64_t m_next = 1;
    std::size_t m_width = 1;
};

} // namespace holdband
