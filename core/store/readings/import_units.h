// The imports that have a column for one sensor, and its unit in each. Not for use outside
// core/store.
#pragma once

#include "core/model/names.h"
#include "core/store/sqlite/rows.h"

#include <algorithm>
#include <map>
#include <optional>
#include <string>
#include <vector>

namespace holdband::store {

/// Imports come in long runs, so the last one found is cached.
class ImportUnits {
public:
    static Result<ImportUnits> of(const Database& database, std::int64_t sensor)
    {
        ImportUnits units;
        auto rows = query<BulkStatement>(
            database,
            "SELECT c.import, c.unit, i.id IS NOT NULL AND i.taken_back_at IS NULL "
            "FROM import_columns c LEFT JOIN imports i ON i.id = c.import WHERE c.sensor = ?",
            [&](const BulkStatement& row) {
                units.add(row.integer(0), row.text(1), row.integer(2) != 0);
                return true;
            },
            sensor);
        HOLDBAND_TRY(rows);
        return units;
    }

    /// The imports that are not withdrawn.
    const std::vector<std::int64_t>& inForce() const { return m_inForce; }

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
    void add(std::int64_t import, const std::string& unit, bool inForce)
    {
        m_units[import] = choiceNamed<ReadingUnit>(unit).value_or(ReadingUnit::celsius);
        if (inForce)
            m_inForce.push_back(import);
    }

    std::map<std::int64_t, ReadingUnit> m_units;
    std::vector<std::int64_t> m_inForce;
    std::int64_t m_last = -1;
    ReadingUnit m_unit = ReadingUnit::celsius;
};

} // namespace holdband::store
