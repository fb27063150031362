// The unit of each import's column for one sensor. Not for use outside core/store.
#pragma once

#include "core/logbook/names.h"
#include "core/store/rows.h"

#include <map>

namespace holdband::store {

/// Imports come in long runs, so the last one asked is kept at hand.
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
