// A plain text table: columns as wide as their longest cell, numbers right-aligned. Columns that
// don't fit beside each other follow below, each time with the first column.
#pragma once

#include <string>
#include <vector>

namespace holdband::app {

class Table {
public:
    /// The first column is left-aligned, the others right-aligned; a last column of text is
    /// left-aligned too.
    explicit Table(std::vector<std::string> headers, bool wordsLast = false);

    void add(std::vector<std::string> cells);
    /// As wide as the terminal at most.
    std::string text() const;
    std::string text(std::size_t mostWidth) const;
    bool empty() const { return m_rows.size() < 2; }

private:
    std::string block(const std::vector<std::size_t>& widths, std::size_t first,
                      std::size_t end) const;

    std::vector<std::vector<std::string>> m_rows;
    bool m_wordsLast;
};

} // namespace holdband::app
