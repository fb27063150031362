#include "core/intake/log/rejects.h"

#include "core/intake/csv/cells.h"

#include <algorithm>
#include <utility>

namespace holdband {

std::string shownInList(std::string_view text)
{
    constexpr std::size_t mostBytes = 60;
    std::string line = clipped(text, mostBytes);
    std::replace_if(
        line.begin(), line.end(), [](char c) { return static_cast<unsigned char>(c) < ' '; }, ' ');
    return line;
}

void Rejects::keep(std::int64_t line, std::string_view column, std::string_view text,
                   std::string reason)
{
    m_rows.push_back({line, std::string(column), shownInList(text), std::move(reason)});
}

void Rejects::moveInto(LogFile& file)
{
    std::stable_sort(m_rows.begin(), m_rows.end(),
                     [](const RejectedRow& a, const RejectedRow& b) { return a.line < b.line; });
    file.rejected = std::move(m_rows);
    file.rejectedTotal = m_total;
}

} // namespace holdband
