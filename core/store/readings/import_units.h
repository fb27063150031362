// The unit of each import's column for one sensor. Not for use outside core/store.
#pragma once

#include "core/model/names.h"
#include "core/store/sqlite/rows.h"

#include <algorithm>
#include <map>
#include <optional>

namespace holdband::store {

/// Imports come in long runs, so the last one found is cached.
class ImportUnits {
public:
    static Result<ImportUnits> of(const Database& database, std::int64_t sensor)
    {
        ImportUnits units;
        auto rows = query(
            database, "SELECT import, unit FROM import_columns WHERE sensor = ?",
            [](const Statement& row) { return std::pair(row.integer(0), row.text(1)); }, sensor);
        HOLDBAND_TRY(rows);
        for (const auto& [import, name] : *rows)
            units.m_units[import] = choiceNamed<ReadingUnit>(name).value_or(ReadingUnit::celsius);
        return units;
    }

    /// The unit that all its imports share; absent if they differ, or there are none.
    std::optional<ReadingUnit> only() const
    {
        if (m_units.empty())
            return std::nullopt;
        const ReadingUnit first = m_units.begin()->second;
        const bool same = std::all_of(m_units.begin(), m_units.end(),
                                      [first](const auto& each) { return each.second == first; });
        return same ? std::optional(first) : std::nullopt;
    }

    ReadingUnit unitOf(std::int64_t import)
    {
        if (import != m_last) {
            const auto found = m_units.find(import);
            m_unit = found == m_units.end() ? ReadingUnit::celsius : found->second;
            m_last = import;
        }
        return m_unit;
    }

private:
    std::map<std::int64_t, ReadingUnit> m_units;
    std::int64_t m_last = -1;
    ReadingUnit m_unit = ReadingUnit::celsius;
};

} // namespace holdband::store
