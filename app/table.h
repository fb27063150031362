// A plain text table: columns as wide as their longest cell, numbers to the right.
#pragma once

#include <string>
#include <vector>

namespace holdband::app {

class Table {
public:
    /// The first column is set to the left, the others to the right; a last one of words to the
    /// left too.
    explicit Table(std::vector<std::string> headers, bool wordsLast = false);

    void add(std::vector<std::string> cells);
    std::string text() const;
    bool empty() const { return m_rows.size() < 2; }

private:
    std::vector<std::vector<std::string>> m_rows;
    bool m_wordsLast;
};

} // namespace holdband::app
