#include "core/analysis/lift_interval.h"

#include <algorithm>
#include <boost/math/distributions/students_t.hpp>
#include <cmath>
#include <map>
#include <numeric>
#include <string_view>
#include <unordered_map>

namespace holdband::analysis {

namespace {

using Group = std::vector<std::size_t>;

constexpr std::size_t fewestInGroup = 3; // points
constexpr std::size_t groupsNeeded = 3;  // for an interval by batch
constexpr double assumedSpread = 0.05;   // SD between batches, a share of the mean
constexpr double assumedFreedom = 4.0;   // degrees, the weight of that assumption
constexpr double alikeFactor = 2.5;      // variance of points that are alike: (1 + φ) / (1 − φ)

/// Batches that are connected by shared points, by union-find.
class Connected {
public:
    std::size_t indexOf(std::string_view batch)
    {
        const auto [found, isNew] = m_indices.try_emplace(batch, m_parent.size());
        if (isNew)
            m_parent.push_back(found->second);
        return found->second;
    }
    std::size_t root(std::size_t i) const
    {
        while (m_parent[i] != i)
            i = m_parent[i];
        return i;
    }
    void join(std::size_t a, std::size_t b) { m_parent[root(a)] = root(b); }

private:
    std::unordered_map<std::string_view, std::size_t> m_indices; ///< names of the points
    std::vector<std::size_t> m_parent;
};

std::vector<Group> connectedGroups(std::span<const BatchPoint> points)
{
    Connected batches;
    for (const BatchPoint& point : points) {
        for (const std::string& batch : point.of)
            batches.join(batches.indexOf(batch), batches.indexOf(point.of.front()));
    }
    std::vector<Group> groups;
    std::map<std::size_t, std::size_t> groupOfRoot;
    for (std::size_t i = 0; i < points.size(); ++i) {
        const std::size_t root = batches.root(batches.indexOf(points[i].of.front()));
        const auto [found, isNew] = groupOfRoot.try_emplace(root, groups.size());
        if (isNew)
            groups.emplace_back();
        groups[found->second].push_back(i);
    }
    return groups;
}

void append(Group& group, const Group& more)
{
    group.insert(group.end(), more.begin(), more.end());
}

/// The hours-weighted mean of how far a group lies above a line.
double meanResidual(std::span<const BatchPoint> points, const Group& group, const LinearFit& line)
{
    double sum = 0.0;
    double weights = 0.0;
    for (const std::size_t i : group) {
        const FitPoint& point = points[i].point;
        sum += point.weight * (point.y - line.at(point.x));
        weights += point.weight;
    }
    return sum / weights;
}

double squared(double value)
{
    return value * value;
}

std::optional<LinearFit> fitOf(std::span<const BatchPoint> points, const Group& without)
{
    std::vector<FitPoint> rest;
    for (std::size_t i = 0; i < points.size(); ++i) {
        if (std::find(without.begin(), without.end(), i) == without.end())
            rest.push_back(points[i].point);
    }
    return fitLine(rest);
}

} // namespace

std::vector<Group> batchGroups(std::span<const BatchPoint> points)
{
    std::vector<Group> groups;
    Group small; // before the first group that is large enough
    for (const Group& each : connectedGroups(points)) {
        if (each.size() < fewestInGroup && !groups.empty()) {
            append(groups.back(), each);
            continue;
        }
        append(small, each);
        if (small.size() >= fewestInGroup)
            groups.push_back(std::exchange(small, {}));
    }
    if (!small.empty())
        groups.push_back(std::move(small));
    return groups;
}

std::optional<LiftInterval> LiftInterval::of(std::span<const BatchPoint> points)
{
    std::optional<LinearFit> fit = fitOf(points, {});
    if (!fit)
        return std::nullopt;
    LiftInterval interval;
    interval.m_fit = *fit;
    const std::vector<Group> groups = batchGroups(points);
    interval.m_groups = groups.size();
    if (groups.size() < groupsNeeded || !interval.fitWithoutEach(points, groups))
        interval.assume(points, groups);
    return interval;
}

/// False where one of the fits has no line.
bool LiftInterval::fitWithoutEach(std::span<const BatchPoint> points,
                                  const std::vector<Group>& groups)
{
    std::vector<LinearFit> without;
    double squares = 0.0;
    for (const Group& group : groups) {
        const std::optional<LinearFit> line = fitOf(points, group);
        if (!line)
            return false;
        squares += squared(meanResidual(points, group, *line));
        without.push_back(*line);
    }
    const auto count = static_cast<double>(groups.size());
    m_without = std::move(without);
    m_batchVariance = (count - 1.0) / squared(count) * squares;
    m_source = SpreadSource::byBatch;
    return true;
}

void LiftInterval::assume(std::span<const BatchPoint> points, const std::vector<Group>& groups)
{
    const auto count = static_cast<double>(groups.size());
    const double noise = alikeFactor * squared(m_fit.residualSd);
    const double assumed =
        squared(assumedSpread * m_fit.meanY) + noise * count / static_cast<double>(points.size());
    double squares = 0.0;
    for (const Group& group : groups)
        squares += squared(meanResidual(points, group, m_fit));
    m_batchVariance = groups.size() < 2
                          ? assumed
                          : (assumedFreedom * assumed + squares) / (assumedFreedom - 1.0 + count);
    m_source = SpreadSource::assumed;
}

double LiftInterval::variance(double x) const
{
    const auto count = static_cast<double>(m_groups);
    if (m_source == SpreadSource::assumed)
        return m_batchVariance / count +
               alikeFactor * squared(m_fit.residualSd * (x - m_fit.meanX)) / m_fit.spreadX;
    double squares = 0.0;
    for (const LinearFit& line : m_without)
        squares += squared(line.at(x) - m_fit.at(x));
    return (count - 1.0) / count * squares;
}

double LiftInterval::quantile() const
{
    const auto count = static_cast<double>(m_groups);
    const double freedom =
        m_source == SpreadSource::byBatch ? count - 1.0 : assumedFreedom - 1.0 + count;
    return boost::math::quantile(boost::math::students_t(freedom), 0.975);
}

Interval95 LiftInterval::meanResponse(double x) const
{
    return {m_fit.at(x), quantile() * std::sqrt(variance(x))};
}

Interval95 LiftInterval::oneMoreBatch(double x) const
{
    return {m_fit.at(x), quantile() * std::sqrt(variance(x) + m_batchVariance)};
}

Interval95 LiftInterval::slope() const
{
    if (m_source == SpreadSource::assumed)
        return {m_fit.slope,
                quantile() * std::sqrt(alikeFactor / m_fit.spreadX) * m_fit.residualSd};
    const auto count = static_cast<double>(m_groups);
    double squares = 0.0;
    for (const LinearFit& line : m_without)
        squares += squared(line.slope - m_fit.slope);
    return {m_fit.slope, quantile() * std::sqrt((count - 1.0) / count * squares)};
}

} // namespace holdband::analysis
