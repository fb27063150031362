#include "tests/faults/old_logbook.h"

#include "core/store/safety/seal.h"
#include "core/store/sqlite/schema.h"
#include "tests/store/older_schema.h"

#include <gtest/gtest.h>
#include <span>

namespace holdband::faults {

void makeOldLogbook(const std::string& path, int format)
{
    auto database = store::Database::open(path, store::Access::write, true);
    ASSERT_TRUE(database) << database.error().sentence();
    const std::span steps(store::schemaSteps());
    ASSERT_TRUE(store::migrate(**database, steps.first(1)));
    ASSERT_TRUE((*database)->execute(test::contentsOfFormat1));
    ASSERT_TRUE(store::migrate(**database, steps.first(static_cast<std::size_t>(format))));
    ASSERT_TRUE(store::renewSeal(**database));
}

} // namespace holdband::faults
