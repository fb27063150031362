#include "core/store/sqlite/rows.h"

#include "core/store/history/record_messages.h"
#include "core/text/name_suggestions.h"
#include "core/text/phrase.h"

namespace holdband::store {

Result<std::int64_t> idOf(const Database& database, std::string_view table, std::string_view what,
                          const std::string& name)
{
    const std::string from = " FROM " + std::string(table);
    auto found = query(
        database, "SELECT id" + from + " WHERE name = ?",
        [](const Statement& row) { return row.integer(0); }, std::string_view(name));
    HOLDBAND_TRY(found);
    if (!found->empty())
        return found->front();
    auto names = query(database, "SELECT name" + from + " ORDER BY name",
                       [](const Statement& row) { return row.text(0); });
    HOLDBAND_TRY(names);
    return dataProblem(Phrase::tr(thingWords(what).missing).with(name), {},
                       suggestion(name, *names));
}

} // namespace holdband::store
