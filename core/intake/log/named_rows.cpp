#include "core/intake/log/named_rows.h"

#include "core/intake/log/rejects.h"
#include "core/text/name_suggestions.h"

namespace holdband {

NamedRows::NamedRows(std::size_t nameColumn, const std::vector<ReadColumn>& columns)
    : m_column(nameColumn)
{
    for (std::size_t i = 0; i < columns.size(); ++i)
        m_known.emplace(folded(columns[i].column.header), i);
}

std::optional<std::size_t> NamedRows::which(std::string_view name)
{
    if (m_any && name == m_lastName)
        return m_last;
    m_any = true;
    m_lastName = name;
    const auto found = m_known.find(folded(name));
    m_last = found == m_known.end() ? std::nullopt : std::optional(found->second);
    if (!m_last && m_ignored.size() < mostIgnored)
        m_ignored.insert(shownInList(name));
    return m_last;
}

} // namespace holdband
