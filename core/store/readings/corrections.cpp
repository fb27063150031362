#include "core/store/readings/corrections.h"

#include "core/store/sqlite/rows.h"

namespace holdband::store {

Done addCorrection(const Change& change, const CorrectedReadings& tables,
                   const Correction& correction)
{
    return execute(change.database(),
                   std::string("INSERT INTO ") + tables.corrections + " (reading, " + tables.value +
                       ", decimals, at, why, act) VALUES (?, ?, ?, ?, ?, ?)",
                   correction.reading, correction.value, correction.decimals, toMs(correction.at),
                   FreeText{correction.why}, change.entry().value);
}

Done setReadingNote(const Change& change, const CorrectedReadings& tables, std::int64_t reading,
                    const std::string& note)
{
    return execute(change.database(),
                   std::string("UPDATE ") + tables.readings + " SET note = ? WHERE id = ?",
                   FreeText{note}, reading);
}

Result<std::vector<Correction>> readCorrections(const Database& database,
                                                const CorrectedReadings& tables,
                                                const std::string& condition, std::int64_t owner)
{
    return query<BulkStatement>(
        database,
        std::string("SELECT c.reading, c.") + tables.value + ", c.decimals, c.at, c.why FROM " +
            tables.corrections + " c JOIN " + tables.readings + " r ON r.id = c.reading WHERE " +
            condition + " ORDER BY c.id",
        [](const BulkStatement& row) {
            return Correction{row.integer(0), row.real(1), static_cast<int>(row.integer(2)),
                              row.instant(3), row.text(4)};
        },
        owner);
}

} // namespace holdband::store
