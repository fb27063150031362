// Properties of intervals by batch.
#include "tests/analysis/lift_batches.h"

#include <algorithm>
#include <boost/math/distributions/students_t.hpp>
#include <cmath>
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace holdband::test {
namespace {

using namespace analysis;

struct Simulated {
    std::vector<std::vector<BatchPoint>> batches;

    std::vector<BatchPoint> all() const { return together(batches); }
};

rc::Gen<Simulated> someBatches(int fewest)
{
    return rc::gen::exec([fewest] {
        Simulated made;
        const int count = *rc::gen::inRange(fewest, 6);
        for (int i = 0; i < count; ++i) {
            std::vector<std::array<double, 2>> points;
            const int size = *rc::gen::inRange(3, 8);
            for (int k = 0; k < size; ++k)
                points.push_back({4.0 + k + *rc::gen::inRange(0, 100) / 100.0,
                                  20.0 + 2.0 * k + *rc::gen::inRange(-300, 300) / 100.0});
            made.batches.push_back(batch("b" + std::to_string(i), points));
        }
        return made;
    });
}

RC_GTEST_PROP(LiftIntervalProperty, TheOrderOfBatchesChangesNothing, ())
{
    Simulated made = *someBatches(2);
    const auto before = LiftInterval::of(made.all());
    std::reverse(made.batches.begin(), made.batches.end());
    const auto after = LiftInterval::of(made.all());
    RC_ASSERT(before.has_value() == after.has_value());
    if (!before)
        return;
    RC_ASSERT(std::abs(before->meanResponse(6.0).value - after->meanResponse(6.0).value) < 1e-6);
    RC_ASSERT(std::abs(before->meanResponse(6.0).halfWidth - after->meanResponse(6.0).halfWidth) <
              1e-6);
    RC_ASSERT(std::abs(before->slope().halfWidth - after->slope().halfWidth) < 1e-6);
}

// The same readings once more tell nothing new about how much batches differ.
RC_GTEST_PROP(LiftIntervalProperty, PointsCountedTwiceInTheirBatchChangeNothing, ())
{
    const std::vector<BatchPoint> points = (*someBatches(3)).all();
    const auto once = LiftInterval::of(points);
    if (!once || once->source() != SpreadSource::byBatch)
        return;
    std::vector<BatchPoint> twice = points;
    twice.insert(twice.end(), points.begin(), points.end());
    const auto doubled = LiftInterval::of(twice);
    RC_ASSERT(doubled.has_value());
    for (const double lift : {0.0, 6.0, 15.0}) {
        const double before = once->meanResponse(lift).halfWidth;
        RC_ASSERT(std::abs(doubled->meanResponse(lift).halfWidth - before) <= 1e-6 * (1 + before));
    }
}

double standardError(const LiftInterval& interval, double lift)
{
    const boost::math::students_t distribution(static_cast<double>(interval.groups()) - 1.0);
    return interval.meanResponse(lift).halfWidth / boost::math::quantile(distribution, 0.975);
}

// Batches at the same three lifts, so that the line's value at the middle one is the mean of the
// batches' means. For a mean of n values, one of which is given twice, the standard error falls by
// √2 at most: where that value is the mean of symmetric others.
RC_GTEST_PROP(LiftIntervalProperty, ABatchGivenTwiceNarrowsTheErrorByTheRootOfTwoAtMost, ())
{
    std::vector<std::vector<BatchPoint>> batches;
    const int count = *rc::gen::inRange(3, 7);
    for (int i = 0; i < count; ++i) {
        const double off = *rc::gen::inRange(-500, 500) / 100.0;
        batches.push_back(
            batch("b" + std::to_string(i), {{4, 18.0 + off}, {6, 22.0 + off}, {8, 26.0 + off}}));
    }
    const auto once = LiftInterval::of(together(batches));
    batches.push_back(batches[static_cast<std::size_t>(*rc::gen::inRange(0, count))]);
    for (BatchPoint& point : batches.back())
        point.of = {"again"};
    const auto twice = LiftInterval::of(together(batches));
    RC_ASSERT(once && twice && twice->source() == SpreadSource::byBatch);
    RC_ASSERT(standardError(*twice, 6.0) * std::sqrt(2.0) >= standardError(*once, 6.0) - 1e-6);
}

RC_GTEST_PROP(LiftIntervalProperty, OneMoreBatchIsLessSureThanTheMean, ())
{
    const Simulated made = *someBatches(1);
    const auto interval = LiftInterval::of(made.all());
    if (!interval)
        return;
    for (const double lift : {0.0, 6.0, 15.0})
        RC_ASSERT(interval->oneMoreBatch(lift).halfWidth >= interval->meanResponse(lift).halfWidth);
}

} // namespace
} // namespace holdband::test
