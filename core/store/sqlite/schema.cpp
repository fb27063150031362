#include "core/store/sqlite/schema.h"

#include "core/store/sqlite/schema_steps.h" // generated from resources/schema by the build
#include "core/store/sqlite/transaction.h"
#include "core/text/phrase.h"

namespace holdband::store {

const std::vector<SchemaStep>& schemaSteps()
{
    static const std::vector<SchemaStep> steps{
        {1, schemaStep0001}, {2, schemaStep0002},  {3, schemaStep0003},  {4, schemaStep0004},
        {5, schemaStep0005}, {6, schemaStep0006},  {7, schemaStep0007},  {8, schemaStep0008},
        {9, schemaStep0009}, {10, schemaStep0010}, {11, schemaStep0011}, {12, schemaStep0012},
        {13, schemaStep0013}};
    return steps;
}

Done applySteps(const Database& database, std::span<const SchemaStep> steps)
{
    auto version = database.integer("PRAGMA user_version");
    HOLDBAND_TRY(version);
    for (const SchemaStep& step : steps) {
        if (step.version <= *version)
            continue;
        HOLDBAND_TRY(database.execute(step.script));
        HOLDBAND_TRY(database.execute("PRAGMA application_id = " + std::to_string(applicationId) +
                                      "; PRAGMA user_version = " + std::to_string(step.version)));
    }
    return {};
}

Done migrate(const Database& database, std::span<const SchemaStep> steps)
{
    auto transaction = Transaction::begin(database);
    HOLDBAND_TRY(transaction);
    HOLDBAND_TRY(applySteps(database, steps));
    return transaction->commit();
}

Done checkIdentity(const Database& database, int newest)
{
    auto id = database.integer("PRAGMA application_id");
    HOLDBAND_TRY(id);
    auto tables = database.integer("SELECT count(*) FROM sqlite_schema");
    HOLDBAND_TRY(tables);
    if (*id != applicationId && *tables == 0)
        return fileProblem(Phrase::tr("the file is empty: it is no logbook"), database.path(),
                           Phrase::tr("make one with `holdband new`"));
    if (*id != applicationId)
        return fileProblem(Phrase::tr("this is an SQLite file of another program, no logbook"),
                           database.path());
    auto version = database.integer("PRAGMA user_version");
    HOLDBAND_TRY(version);
    if (*version > newest)
        return fileProblem(
            Phrase::tr("this logbook was made by a newer Holdband (format %1, this program knows "
                       "up to %2)")
                .with(std::to_string(*version), std::to_string(newest)),
            database.path(), Phrase::tr("open it with that version"));
    if (*version < 1)
        return fileProblem(Phrase::tr("this logbook has no format number: it is damaged"),
                           database.path(), Phrase::tr("use a backup"));
    return {};
}

} // namespace holdband::store
