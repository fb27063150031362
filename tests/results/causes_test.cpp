// Causes of excursions: given, found again after small changes of limits or data, removed, exported
// and loaded.
#include "core/exchange/export.h"
#include "core/exchange/file_writer.h"
#include "core/results/run/causes.h"
#include "core/results/run/explain.h"
#include "core/results/run/limits_trial.h"
#include "core/store/history/undo.h"
#include "core/store/records/batches.h"
#include "core/store/safety/soundness.h"
#include "tests/results/described_logbook.h"
#include "tests/store/saying.h"

#include <gmock/gmock.h>

namespace holdband::test {
namespace {

using results::RunReview;
using ::testing::AllOf;
using ::testing::ElementsAre;
using ::testing::EndsWith;
using ::testing::HasSubstr;
using ::testing::Not;

const char* const nowText = "2026-03-10T00:00:00Z";

std::string describedCauses(const std::string& causes)
{
    return R"json({"holdband":1,"setups":[{"name":"S"}],"sensors":[{"name":"Beer","reads":"beer"}],
        "batches":[{"name":"Ale","setup":"S","pitched":"2026-03-01 00:00",
          "ended":"2026-03-01 10:00","beer_sensor":"Beer","tolerance_c":1,"gap_limit_min":60,)json" +
           causes + R"json("schedule":[{"stage":"Hold","target_c":20}]}],
        "files":[{"file":"b.csv","columns":{"Beer":"Beer (C)"}}]})json";
}

/// Above from 1:40 to 3:20 (to 22 at 2:00, 22 at 3:00) with a dip to 21.2 at 2:30, below from 6:30
/// to 7:30 (18 at 7:00).
const char* const causesLog = "Time,Beer (C)\n2026-03-01 00:00,20\n2026-03-01 01:00,20\n"
                              "2026-03-01 01:30,20.5\n2026-03-01 02:00,22\n2026-03-01 02:30,21.2\n"
                              "2026-03-01 03:00,22\n2026-03-01 04:00,20\n2026-03-01 05:00,20\n"
                              "2026-03-01 06:00,20\n2026-03-01 07:00,18\n2026-03-01 08:00,20\n"
                              "2026-03-01 09:00,20\n2026-03-01 10:00,20\n";

class Causes : public ::testing::Test {
protected:
    void SetUp() override { open(""); }

    void open(const std::string& causes)
    {
        m_logbook.reset();
        QFile::remove(QString::fromStdString(m_files.path("d.holdband")));
        m_files.write("b.csv", causesLog);
        m_files.load(describedCauses(causes), nowText);
        auto opened = store::LogbookFile::open(m_files.path("d.holdband"), store::Access::write,
                                               [] { return *parseRfc3339(nowText); });
        ASSERT_TRUE(opened) << opened.error().sentence();
        m_logbook = std::move(*opened);
    }

    RunReview review() const
    {
        auto run = results::reviewRun(*m_logbook, "Ale");
        EXPECT_TRUE(run) << run.error().sentence();
        return run ? std::move(*run) : RunReview{};
    }

    void give(std::size_t excursion, std::optional<Cause> cause, const std::string& note) const
    {
        const RunReview run = review();
        auto change = store::Change::begin(*m_logbook, results::causeEntry(run, 0, excursion));
        ASSERT_TRUE(change);
        const Done given = results::giveCause(*change, run, 0, excursion, cause, note);
        ASSERT_TRUE(given) << given.error().sentence();
        ASSERT_TRUE(change->commit());
    }

    void judgeBy(double tolerance) const
    {
        auto change = store::Change::begin(*m_logbook, results::limitsEntry("Ale"));
        results::Limits limits = results::limitsOf(review());
        limits.tolerance = TemperatureDifference::kelvins(tolerance);
        ASSERT_TRUE(results::saveLimits(*change, "Ale", limits));
        ASSERT_TRUE(change->commit());
    }

    /// The cause of each excursion, in order.
    std::vector<std::string> texts() const
    {
        const RunReview run = review();
        std::vector<std::string> all;
        const auto& excursions = run.figures.judged.asPlanned.stages.at(0).excursions;
        for (std::size_t i = 0; i < excursions.size(); ++i)
            all.push_back(results::causeText(results::causeOf(run, 0, i)));
        return all;
    }

    DescribedLogbook m_files;
    std::unique_ptr<store::LogbookFile> m_logbook;
};

TEST_F(Causes, AreGivenChangedAndDeleted)
{
    EXPECT_THAT(texts(), ElementsAre("", ""));
    give(0, Cause::lidOpen, "");
    EXPECT_THAT(texts(), ElementsAre("lid open", ""));
    give(1, std::nullopt, "opened the garage");
    EXPECT_THAT(texts(), ElementsAre("lid open", "\"opened the garage\""));
    give(0, Cause::powerCut, "storm");
    EXPECT_THAT(texts(), ElementsAre("power cut, \"storm\"", "\"opened the garage\""));
    EXPECT_EQ(review().causes.size(), 2u);
    give(0, std::nullopt, "");
    EXPECT_THAT(texts(), ElementsAre("", "\"opened the garage\""));
}

TEST_F(Causes, AreUndoneAndRedone)
{
    give(0, Cause::lidOpen, "");
    give(0, Cause::warmRoom, "");
    EXPECT_EQ(undoText(*m_logbook), "set the cause of the excursion of Ale on 1 Mar 01:40");
    ASSERT_TRUE(store::undoLast(*m_logbook));
    EXPECT_THAT(texts(), ElementsAre("lid open", ""));
    ASSERT_TRUE(store::undoLast(*m_logbook));
    EXPECT_THAT(texts(), ElementsAre("", ""));
    ASSERT_TRUE(store::redoLast(*m_logbook));
    EXPECT_THAT(texts(), ElementsAre("lid open", ""));
    EXPECT_TRUE(store::findDamage(*m_logbook)->empty());
}

TEST_F(Causes, StayWithTheirExcursionWhenTheBandMoves)
{
    give(0, Cause::lidOpen, "");
    give(1, Cause::control, "");
    judgeBy(0.5); // both get longer
    EXPECT_THAT(texts(), ElementsAre("lid open", "control"));
    judgeBy(1.5); // the dip splits the first: both parts have the cause "lid"
    EXPECT_THAT(texts(), ElementsAre("lid open", "lid open", "control"));
    judgeBy(3.0);
    EXPECT_THAT(texts(), ElementsAre());
    EXPECT_THAT(review().findings,
                ElementsAre(HasSubstr("1 Mar 01:40, lid open, belongs to no excursion any more"),
                            HasSubstr("1 Mar 06:30, control, belongs to no excursion")));
    judgeBy(1.0);
    EXPECT_THAT(texts(), ElementsAre("lid open", "control"));
}

TEST_F(Causes, OneOfTwoThatSharedACauseGetsItsOwn)
{
    give(0, Cause::lidOpen, "");
    judgeBy(1.5);
    give(0, Cause::sensorMoved, "");
    EXPECT_THAT(texts(), ElementsAre("sensor moved", "lid open", ""));
    give(0, std::nullopt, "");
    EXPECT_THAT(texts(), ElementsAre("", "lid open", ""));
}

TEST_F(Causes, AreNamedWithTheExcursion)
{
    give(0, Cause::lidOpen, "took a sample");
    EXPECT_THAT(results::explainExcursion(review(), 0, 0),
                EndsWith("Cause given: lid open, \"took a sample\"."));
    EXPECT_THAT(results::explainExcursion(review(), 0, 1),
                AllOf(HasSubstr("when the beer came back."), Not(HasSubstr("Cause"))));
}

TEST_F(Causes, AreTriedAgainstOtherLimitsToo)
{
    give(0, Cause::lidOpen, "");
    const RunReview run = review();
    const Instant start = run.figures.judged.stages[0].span.start;
    const auto at = [&](int minutes) { return start + std::chrono::minutes{minutes}; };
    EXPECT_TRUE(results::causeAt(run.causes, {at(90), at(110)}, Side::above));
    EXPECT_FALSE(results::causeAt(run.causes, {at(90), at(110)}, Side::below));
    EXPECT_FALSE(results::causeAt(run.causes, {at(10), at(100)}, Side::above)) << "it only touches";
}

TEST_F(Causes, SurviveAnExportAndItsLoading)
{
    open(R"json("causes":[{"from":"2026-03-01 01:40","to":"2026-03-01 03:30","side":"above",
        "cause":"lid open","note":"took a sample"},
        {"from":"2026-03-01 06:30","to":"2026-03-01 07:30","side":"below","note":"fridge"}],)json");
    EXPECT_THAT(texts(), ElementsAre("lid open, \"took a sample\"", "\"fridge\""));
    const std::string folder = m_files.path("out");
    ASSERT_TRUE(exchange::exportLogbook(*m_logbook, folder));
    const auto again =
        exchange::loadDescription(m_files.path("again.holdband"), folder + "/logbook.json");
    ASSERT_TRUE(again) << again.error().sentence();
    const auto copy = store::LogbookFile::open(m_files.path("again.holdband"), store::Access::read);
    ASSERT_TRUE(copy);
    const auto run = results::reviewRun(**copy, "Ale");
    ASSERT_TRUE(run);
    ASSERT_EQ(run->causes.size(), 2u);
    EXPECT_EQ(run->causes[0].cause, review().causes[0].cause);
    EXPECT_EQ(run->causes[1].cause, review().causes[1].cause);
}

TEST_F(Causes, GoWithTheirBatch)
{
    give(0, Cause::other, "");
    auto change = store::Change::begin(*m_logbook, saying("removed Ale"));
    ASSERT_TRUE(store::removeBatch(*change, "Ale"));
    ASSERT_TRUE(change->commit());
    EXPECT_TRUE(store::findDamage(*m_logbook)->empty());
    ASSERT_TRUE(store::undoLast(*m_logbook));
    EXPECT_THAT(texts(), ElementsAre("other", ""));
}

TEST_F(Causes, RefuseInvalidOnes)
{
    auto change = store::Change::begin(*m_logbook, saying("x"));
    const Instant at = *parseRfc3339("2026-03-01T01:00:00Z");
    const auto add = [&](const ExcursionCause& cause) {
        const Done added = store::addCause(*change, "Ale", cause);
        return added ? std::string() : added.error().what;
    };
    EXPECT_EQ(add({{at, at}, Side::above, {}, " "}), "there is neither a cause nor a note");
    EXPECT_EQ(add({{at, at - Milliseconds{1}}, Side::above, Cause::other, ""}),
              "the excursion ends before it begins");
    EXPECT_FALSE(store::addCause(*change, "Nobody", {{at, at}, Side::above, Cause::other, ""}));
}

TEST(CausesInADescription, AreRefusedByName)
{
    const auto wrong = [](const std::string& cause) {
        const DescribedLogbook files;
        files.write("b.csv", causesLog);
        files.write("d.json", describedCauses("\"causes\":[" + cause + "],"));
        const auto loaded =
            exchange::loadDescription(files.path("d.holdband"), files.path("d.json"));
        EXPECT_FALSE(loaded);
        return loaded ? std::string() : loaded.error().sentence();
    };
    const std::string span = R"("from":"2026-03-01 01:40","to":"2026-03-01 03:30")";
    EXPECT_THAT(wrong("{" + span + R"(,"side":"above","cause":"gremlins"})"),
                HasSubstr("\"gremlins\" is none of lid open, power cut, sensor moved, warm room, "
                          "control, other"));
    EXPECT_THAT(wrong("{" + span + R"(,"cause":"other"})"), HasSubstr("side"));
    EXPECT_THAT(wrong("{" + span + R"(,"side":"below"})"), HasSubstr("neither a cause nor a note"));
    EXPECT_THAT(wrong(R"({"from":"2026-03-01 03:00","to":"2026-03-01 01:00","side":"above",
        "cause":"other"})"),
                HasSubstr("ends before it begins"));
}

} // namespace
} // namespace holdband::test
