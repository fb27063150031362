// A plain text table: columns as wide as their longest cell, numbers right-aligned.
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
    std::string text() const;
    bool empty() const { return m_rows.size() < 2; }

private:
    std::vector<std::vector<std::string>> m_rows;
    bool m_wordsLast;
};

} // namespace holdband::app
