// What the two sides of a comparison are weighed by, in a description.
#include "core/exchange/description.h"
#include "core/exchange/export.h"
#include "core/store/records/weighing.h"
#include "tests/results/described_logbook.h"

namespace holdband::test {
namespace {

constexpr const char* weighed = R"({"holdband":1,"units":"us",
    "weighing":{"weights":{"noise":2.5,"looks":4},"reference_lift_f":9,"reference_hours":168,
                "batches_per_year":6,"other_price_per_kwh":0.3,"quiet_after_hours":96}})";

TEST(ExportAndLoad, PreserveTheWeights)
{
    const DescribedLogbook files;
    const auto logbook = files.load(weighed, "2026-03-10T00:00:00Z");
    const Weighing stored = *store::readWeighing(*logbook);
    EXPECT_EQ(stored.weights, (std::map<std::string, double>{{"looks", 4.0}, {"noise", 2.5}}));
    EXPECT_DOUBLE_EQ(stored.referenceLift->kelvins(), 5.0);
    EXPECT_EQ(stored.referenceHours, Hours{168.0});
    EXPECT_EQ(stored.batchesPerYear, 6.0);
    EXPECT_EQ(stored.otherPricePerKwh, 0.3);
    EXPECT_EQ(stored.quietAfter, Hours{96.0});
    const DescribedLogbook exported;
    ASSERT_TRUE(exchange::exportLogbook(*logbook, exported.path("out")));
    const auto loaded =
        exchange::loadDescription(exported.path("d.holdband"), exported.path("out/logbook.json"));
    ASSERT_TRUE(loaded) << loaded.error().sentence();
    const auto again = store::LogbookFile::open(exported.path("d.holdband"), store::Access::read);
    EXPECT_EQ(*store::readWeighing(**again), stored);
}

TEST(Load, NeverChangesStoredWeights)
{
    const DescribedLogbook files;
    files.load(weighed, "2026-03-10T00:00:00Z");
    files.write("more.json", R"({"holdband":1,"weighing":{"weights":{"noise":1}}})");
    ASSERT_TRUE(exchange::loadDescription(files.path("d.holdband"), files.path("more.json")));
    const auto logbook = store::LogbookFile::open(files.path("d.holdband"), store::Access::read);
    EXPECT_EQ(store::readWeighing(**logbook)->weights.at("noise"), 2.5);
}

TEST(Load, RefusesAWeightBeyondFive)
{
    const auto parsed = exchange::parseDescription(
        R"({"holdband":1,"weighing":{"weights":{"noise":6}}})", "d.json");
    ASSERT_FALSE(parsed);
    EXPECT_NE(parsed.error().sentence().find("weighing.weights.noise"), std::string::npos)
        << parsed.error().sentence();
    EXPECT_FALSE(
        exchange::parseDescription(R"({"holdband":1,"weighing":{"reference_hours":0}})", "d.json"));
    EXPECT_FALSE(exchange::parseDescription(R"({"holdband":1,"weighing":{"colour":1}})", "d.json"));
}

} // namespace
} // namespace holdband::test
