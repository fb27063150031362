#include "core/store/records/judging_notice.h"

#include "core/store/safety/seal.h"
#include "core/store/sqlite/rows.h"

namespace holdband::store {

Result<std::optional<std::vector<std::string>>> batchesJudgedBefore(const LogbookFile& logbook)
{
    using Names = std::optional<std::vector<std::string>>;
    const Database& database = logbook.database();
    auto marks =
        database.integer("SELECT count(*) FROM settings WHERE key = 'judged_as_before_to'");
    HOLDBAND_TRY(marks);
    if (*marks == 0)
        return Names();
    auto names = query(database,
                       "SELECT name FROM batches WHERE id <= (SELECT CAST(value AS INTEGER) "
                       "FROM settings WHERE key = 'judged_as_before_to') ORDER BY pitched, id",
                       [](const Statement& row) { return row.text(0); });
    HOLDBAND_TRY(names);
    return Names(std::move(*names));
}

Done noteJudgingTold(const LogbookFile& logbook)
{
    const Database& database = logbook.database();
    auto transaction = Transaction::begin(database);
    HOLDBAND_TRY(transaction);
    HOLDBAND_TRY(database.execute("DELETE FROM settings WHERE key = 'judged_as_before_to'"));
    HOLDBAND_TRY(renewSeal(database));
    return transaction->commit();
}

} // namespace holdband::store
