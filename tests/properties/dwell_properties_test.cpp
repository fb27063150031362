// Properties of the dwell and the return, and both compared with a slow reading of the definitions:
// sections 2 and 3 of the method.
#include "tests/properties/random_runs.h"

#include <algorithm>
#include <cmath>
#include <gtest/gtest.h>
#include <optional>
#include <rapidcheck/gtest.h>
#include <vector>

namespace holdband::test {
namespace {

using namespace analysis;

constexpr double tenthMs = 0.1;

BandTimes randomTimes()
{
    const auto length = [] { return std::chrono::minutes{below(3) == 0 ? 0 : between(1, 120)}; };
    return {length(), length()};
}

JudgedBatch judgeWith(Batch batch, const Series& beer, const BandTimes& times)
{
    batch.bandTimes = times;
    return judged(batch, beer, 45.0);
}

// ---- The definitions, read slowly

/// A stretch of a covered piece of time on one side of the band, or inside.
struct Stretch {
    int side; ///< 1 above, 0 inside, −1 below
    double from;
    double to;
    bool afterHole;
};

int sideOf(double deviation, double tolerance)
{
    if (std::abs(deviation) <= tolerance + edgeSlack)
        return 0;
    return deviation > 0.0 ? 1 : -1;
}

/// Cuts every piece at both edges; neighbours on the same side become one stretch. A stretch of no
/// length is a touch of the edge.
std::vector<Stretch> stretchesOf(const Track& track, double tolerance, double fromMs)
{
    std::vector<Stretch> all;
    const auto add = [&](int side, double from, double to, bool afterHole) {
        if (!all.empty() && !afterHole && all.back().side == side)
            all.back().to = to;
        else
            all.push_back({side, from, to, afterHole});
    };
    forEachPiece(track, fromMs, [&](double t0, double a, double t1, double b, bool joined) {
        const int sideA = sideOf(a, tolerance);
        const int sideB = sideOf(b, tolerance);
        if (sideA == sideB && sideA == 0)
            return add(0, t0, t1, !joined);
        const auto crossing = [&](double edge) {
            return std::clamp(t0 + (t1 - t0) * ((edge - a) / (b - a)), t0, t1);
        };
        if (sideA == sideB)
            return add(sideA, t0, t1, !joined);
        const double leaves = sideA == 0 ? t0 : crossing(sideA * tolerance);
        const double enters = sideB == 0 ? t1 : crossing(sideB * tolerance);
        if (sideA != 0)
            add(sideA, t0, leaves, !joined);
        add(0, leaves, enters, !joined && sideA == 0);
        if (sideB != 0)
            add(sideB, enters, t1, false);
    });
    return all;
}

/// The start of the first stay inside that lasts for the dwell or until the covered stretch ends.
std::optional<double> slowArrival(const std::vector<Stretch>& stretches, double dwellMs)
{
    for (std::size_t i = 0; i < stretches.size(); ++i) {
        const bool untilHole = i + 1 == stretches.size() || stretches[i + 1].afterHole;
        const Stretch& stay = stretches[i];
        if (stay.side == 0 && (untilHole || stay.to - stay.from >= dwellMs - lengthSlackMs))
            return stay.from;
    }
    return std::nullopt;
}

struct SlowExcursion {
    int side;
    double start;
    double end;
    double outside;
};

/// One event after the other: a stretch outside continues the one before on its side unless a hole,
/// the other side, or a stay inside for the return lies between.
std::vector<SlowExcursion> slowExcursions(const std::vector<Stretch>& stretches, double returnMs)
{
    std::vector<SlowExcursion> all;
    bool open = false;
    for (const Stretch& each : stretches) {
        open = open && !each.afterHole;
        if (each.side == 0) {
            open = open && each.to - each.from < std::max(returnMs, 1.0) - lengthSlackMs;
        } else if (open && all.back().side == each.side) {
            all.back().end = each.to;
            all.back().outside += each.to - each.from;
        } else {
            all.push_back({each.side, each.from, each.to, each.to - each.from});
            open = true;
        }
    }
    return all;
}

double msOf(Milliseconds length)
{
    return static_cast<double>(length.count());
}

RC_GTEST_PROP(DwellProperties, TheArrivalIsThatOfTheDefinition, ())
{
    const BandTimes times = randomTimes();
    const JudgedBatch batch = judgeWith(randomBatch(), randomBeer(), times);
    for (std::size_t i = 0; i < batch.stages.size(); ++i) {
        const BandJudgement& stage = batch.asPlanned.stages[i];
        if (!stage.settles)
            continue;
        const auto expected = slowArrival(
            stretchesOf(batch.tracks[i].deviation, stage.tolerance, 0.0), msOf(times.dwell));
        RC_ASSERT(stage.arrival.has_value() == expected.has_value());
        if (expected)
            RC_ASSERT(std::abs(stage.arrival->ms - *expected) < tenthMs);
    }
}

RC_GTEST_PROP(ReturnProperties, ExcursionsAreThoseOfTheDefinition, ())
{
    const BandTimes times = randomTimes();
    const JudgedBatch batch = judgeWith(randomBatch(), randomBeer(), times);
    for (std::size_t i = 0; i < batch.stages.size(); ++i) {
        const BandJudgement& stage = batch.asPlanned.stages[i];
        const auto expected = slowExcursions(
            stretchesOf(batch.tracks[i].deviation, stage.tolerance, stage.holdFromMs),
            msOf(times.returnTime));
        RC_ASSERT(stage.excursions.size() == expected.size());
        for (std::size_t k = 0; k < expected.size(); ++k) {
            const Excursion& excursion = stage.excursions[k];
            RC_ASSERT((excursion.side == Side::above) == (expected[k].side > 0));
            RC_ASSERT(std::abs(excursion.startMs - expected[k].start) < tenthMs);
            RC_ASSERT(std::abs(excursion.endMs - expected[k].end) < tenthMs);
            RC_ASSERT(std::abs(excursion.outsideMs - expected[k].outside) < tenthMs);
        }
    }
}

RC_GTEST_PROP(DwellProperties, WithoutBothTheFirstEntryArrivesAndEveryStretchIsAnExcursion, ())
{
    // The figures of the rules before: arrival at the first covered instant inside, an excursion
    // for each stretch beyond an edge.
    const JudgedBatch batch =
        judgeWith(randomBatch(), randomBeer(), {Milliseconds{0}, Milliseconds{0}});
    for (std::size_t i = 0; i < batch.stages.size(); ++i) {
        const BandJudgement& stage = batch.asPlanned.stages[i];
        const Track& track = batch.tracks[i].deviation;
        const auto all = stretchesOf(track, stage.tolerance, 0.0);
        const auto first = std::find_if(all.begin(), all.end(),
                                        [](const Stretch& each) { return each.side == 0; });
        if (stage.settles) {
            RC_ASSERT(stage.arrival.has_value() == (first != all.end()));
            if (stage.arrival)
                RC_ASSERT(std::abs(stage.arrival->ms - first->from) < tenthMs);
            RC_ASSERT(stage.visits == 0u);
        }
        for (const Excursion& excursion : stage.excursions)
            RC_ASSERT(std::abs(excursion.endMs - excursion.startMs - excursion.outsideMs) < 1.0);
    }
}

RC_GTEST_PROP(DwellProperties, ALongerDwellNeverEndsSettlingEarlier, ())
{
    const Batch batch = randomBatch();
    const Series beer = randomBeer();
    BandTimes times = randomTimes();
    const JudgedBatch shorter = judgeWith(batch, beer, times);
    times.dwell += std::chrono::minutes{between(1, 60)};
    const JudgedBatch longer = judgeWith(batch, beer, times);
    for (std::size_t i = 0; i < shorter.stages.size(); ++i) {
        const BandJudgement& a = shorter.asPlanned.stages[i];
        const BandJudgement& b = longer.asPlanned.stages[i];
        RC_ASSERT(a.settlingMs <= b.settlingMs);
        RC_ASSERT(a.holdFromMs <= b.holdFromMs);
        RC_ASSERT(a.arrival.has_value() >= b.arrival.has_value());
        if (b.arrival)
            RC_ASSERT(a.arrival->ms <= b.arrival->ms);
    }
}

RC_GTEST_PROP(ReturnProperties, ALongerReturnNeverGivesMoreExcursionsAndTheSameSums, ())
{
    const Batch batch = randomBatch();
    const Series beer = randomBeer();
    BandTimes times = randomTimes();
    const JudgedBatch shorter = judgeWith(batch, beer, times);
    times.returnTime += std::chrono::minutes{between(1, 60)};
    const JudgedBatch longer = judgeWith(batch, beer, times);
    RC_ASSERT(longer.asPlanned.totals.excursions <= shorter.asPlanned.totals.excursions);
    RC_ASSERT(longer.asPlanned.totals.worstPeak() == shorter.asPlanned.totals.worstPeak());
    RC_ASSERT(longer.asPlanned.missed == shorter.asPlanned.missed);
    RC_ASSERT(shorter.deviation.empty() == longer.deviation.empty());
    if (!shorter.deviation.empty())
        RC_ASSERT(shorter.deviation.mean() == longer.deviation.mean());
    for (std::size_t i = 0; i < shorter.stages.size(); ++i) {
        const BandJudgement& a = shorter.asPlanned.stages[i];
        const BandJudgement& b = longer.asPlanned.stages[i];
        RC_ASSERT(b.excursions.size() <= a.excursions.size());
        RC_ASSERT(a.arrival == b.arrival);
        RC_ASSERT(a.settlingMs == b.settlingMs);
        RC_ASSERT(a.coveredMs == b.coveredMs);
        RC_ASSERT(a.insideMs == b.insideMs);
        RC_ASSERT(a.aboveMs == b.aboveMs);
        RC_ASSERT(a.belowMs == b.belowMs);
        double areaA = 0.0;
        double areaB = 0.0;
        for (const Excursion& excursion : a.excursions)
            areaA += excursion.areaMs;
        for (const Excursion& excursion : b.excursions)
            areaB += excursion.areaMs;
        RC_ASSERT(std::abs(areaA - areaB) < 1e-3);
    }
}

} // namespace
} // namespace holdband::test
