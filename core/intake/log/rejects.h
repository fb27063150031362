// Rows of a log that could not be read.
#pragma once

#include "core/intake/log/log.h"

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace holdband {

/// On one line, and not too long for a list.
std::string shownInList(std::string_view text);

/// The first rejected rows are stored, all are counted.
class Rejects {
public:
    /// `reason()` is called only if the row is stored, so that the text of all others costs
    /// nothing.
    template <typename Reason>
    void add(std::int64_t line, std::string_view column, std::string_view text,
             const Reason& reason)
    {
        ++m_total;
        if (m_rows.size() < maxRejectedStored)
            keep(line, column, text, reason());
    }
    void moveInto(LogFile& file);

private:
    void keep(std::int64_t line, std::string_view column, std::string_view text,
              std::string reason);

    std::vector<RejectedRow> m_rows;
    std::int64_t m_total = 0;
};

} // namespace holdband
