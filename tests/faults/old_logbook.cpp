#include "tests/faults/old_logbook.h"

#include "core/store/safety/seal.h"
#include "core/store/sqlite/schema.h"

#include <gtest/gtest.h>
#include <span>

namespace holdband::faults {

namespace {

/// Made data, in the tables of format 1; the later steps bring it to the later formats.
constexpr const char* contents = R"sql(
INSERT INTO settings VALUES ('zone', 'America/Denver'), ('units', 'us'), ('currency', 'USD');
INSERT INTO acts VALUES (1, 1772000000000, 'loaded garage.json');
INSERT INTO setups VALUES (1, 'Loop', 'coolant loop', 2, 600.0, 1);
INSERT INTO sensors VALUES (1, 'Beer', 'beer', 1, 0.2, 'in the beer', 1);
INSERT INTO offsets VALUES (1, 1772000000000, 0.3, 0.1);
INSERT INTO meters VALUES (1, 'Meter', 1, 0.01, NULL, NULL, NULL, NULL, 1);
INSERT INTO batches VALUES (1, 'Ale', 1, 20.0, 1772000000000, NULL, 1, NULL, 1.5, NULL, 0, 1.050,
                            NULL, 1);
INSERT INTO stages VALUES (1, 0, 'Primary', 'hold', 19.0, NULL, NULL, NULL);
INSERT INTO meter_readings VALUES (1, 1, 1772000000000, 5.0, 2, NULL, 'first', NULL, NULL, 1),
                                  (2, 1, 1772100000000, 6.5, 2, NULL, '', NULL, NULL, 1);
)sql";

} // namespace

void makeOldLogbook(const std::string& path, int format)
{
    auto database = store::Database::open(path, store::Access::write, true);
    ASSERT_TRUE(database) << database.error().sentence();
    const std::span steps(store::schemaSteps());
    ASSERT_TRUE(store::migrate(**database, steps.first(1)));
    ASSERT_TRUE((*database)->execute(contents));
    ASSERT_TRUE(store::migrate(**database, steps.first(static_cast<std::size_t>(format))));
    ASSERT_TRUE(store::renewSeal(**database));
}

} // namespace holdband::faults
