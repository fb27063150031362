#include "core/analysis/statistics.h"

#include <algorithm>
#include <boost/math/distributions/students_t.hpp>
#include <cmath>
#include <limits>

namespace holdband::analysis {

namespace {

/// Mean of |x| over a straight piece from a to b.
double meanAbsoluteOfPiece(double a, double b)
{
    if ((a >= 0.0) == (b >= 0.0))
        return std::abs(a + b) / 2.0;
    const double left = std::abs(a);
    const double right = std::abs(b);
    return (left * left + right * right) / (2.0 * (left + right));
}

} // namespace

void TimeMoments::addPiece(double ms, double a, double b)
{
    if (!(ms > 0.0))
        return;
    const double mean = (a + b) / 2.0;
    const double total = m_weight + ms;
    const double delta = mean - m_mean;
    m_squares += ms * (b - a) * (b - a) / 12.0 + delta * delta * (m_weight * (ms / total));
    m_mean += delta * (ms / total);
    m_weight = total;
    m_absolute += ms * meanAbsoluteOfPiece(a, b);
}

void TimeMoments::add(const TimeMoments& other)
{
    if (other.empty())
        return;
    const double total = m_weight + other.m_weight;
    const double delta = other.m_mean - m_mean;
    m_squares += other.m_squares + delta * delta * (m_weight * (other.m_weight / total));
    m_mean += delta * (other.m_weight / total);
    m_weight = total;
    m_absolute += other.m_absolute;
}

double TimeMoments::standardDeviation() const
{
    return std::sqrt(std::max(0.0, m_squares / m_weight));
}

double TimeMoments::rootMeanSquare() const
{
    return std::sqrt(std::max(0.0, m_squares / m_weight + m_mean * m_mean));
}

double TimeMoments::meanAbsolute() const
{
    return m_absolute / m_weight;
}

TimeMoments momentsOf(const Track& track, double fromMs)
{
    TimeMoments moments;
    forEachPiece(track, fromMs, [&](double t0, double a, double t1, double b, bool) {
        moments.addPiece(t1 - t0, a, b);
    });
    return moments;
}

namespace {

/// A part of the time, spread evenly between low and high; low == high is a point mass.
struct Mass {
    double low;
    double high;
    double ms;
};

/// Time at or below x, of one mass.
double atOrBelow(const Mass& mass, double x)
{
    if (x >= mass.high)
        return mass.ms;
    if (x < mass.low)
        return 0.0;
    return mass.ms * ((x - mass.low) / (mass.high - mass.low));
}

/// Solves one quantile among few masses: the time at or below x is piecewise linear in x with
/// steps, so its corners are sorted and visited in order.
double solveQuantile(const std::vector<Mass>& masses, double before, double wanted)
{
    struct Corner {
        double x;
        double step;  ///< point mass at x, ms
        double slope; ///< change of ms per unit of x from here on
    };
    std::vector<Corner> corners;
    corners.reserve(2 * masses.size());
    for (const Mass& mass : masses) {
        if (mass.high > mass.low) {
            const double slope = mass.ms / (mass.high - mass.low);
            corners.push_back({mass.low, 0.0, slope});
            corners.push_back({mass.high, 0.0, -slope});
        } else {
            corners.push_back({mass.low, mass.ms, 0.0});
        }
    }
    std::sort(corners.begin(), corners.end(),
              [](const Corner& left, const Corner& right) { return left.x < right.x; });
    double reached = before;
    double slope = 0.0;
    for (std::size_t i = 0; i < corners.size(); ++i) {
        if (i > 0) {
            const double grown = slope * (corners[i].x - corners[i - 1].x);
            if (reached + grown >= wanted && slope > 0.0)
                return std::min(corners[i].x, corners[i - 1].x + (wanted - reached) / slope);
            reached += grown;
        }
        reached += corners[i].step;
        slope += corners[i].slope;
        if (reached >= wanted)
            return corners[i].x;
    }
    return corners.empty() ? std::numeric_limits<double>::quiet_NaN() : corners.back().x;
}

/// A histogram of time over value, with exact sums per bin; finds the bin that contains a quantile.
class TimeHistogram {
public:
    TimeHistogram(double low, double high)
        : m_low(low), m_width((high - low) / static_cast<double>(binCount)), m_bins(binCount, 0.0)
    {
    }

    std::size_t binOf(double x) const
    {
        const double position = (x - m_low) / m_width;
        return std::min(binCount - 1, static_cast<std::size_t>(std::max(0.0, position)));
    }

    void add(const Mass& mass)
    {
        const std::size_t first = binOf(mass.low);
        const std::size_t last = binOf(mass.high);
        if (first == last) {
            m_bins[first] += mass.ms;
            return;
        }
        const double msPerBin = mass.ms * (m_width / (mass.high - mass.low));
        const double inFirst = atOrBelow(mass, edge(first + 1));
        m_bins[first] += inFirst;
        for (std::size_t bin = first + 1; bin < last; ++bin)
            m_bins[bin] += msPerBin;
        m_bins[last] += mass.ms - inFirst - msPerBin * static_cast<double>(last - first - 1);
    }

    /// The bin in which the running sum reaches `wanted`, and the sum before it.
    std::pair<std::size_t, double> find(double wanted) const
    {
        double before = 0.0;
        for (std::size_t bin = 0; bin + 1 < binCount; ++bin) {
            if (before + m_bins[bin] >= wanted)
                return {bin, before};
            before += m_bins[bin];
        }
        return {binCount - 1, before};
    }

    double edge(std::size_t bin) const { return m_low + m_width * static_cast<double>(bin); }

    /// The part of a mass inside a bin, by the same rule that filled it.
    Mass part(const Mass& mass, std::size_t bin) const
    {
        const std::size_t first = binOf(mass.low);
        const std::size_t last = binOf(mass.high);
        if (bin < first || bin > last)
            return {0.0, 0.0, 0.0};
        if (first == last)
            return mass;
        const double low = bin == first ? mass.low : edge(bin);
        const double high = bin == last ? mass.high : edge(bin + 1);
        const double msBelow = bin == first ? 0.0 : atOrBelow(mass, low);
        const double msUpTo = bin == last ? mass.ms : atOrBelow(mass, high);
        return {low, high, msUpTo - msBelow};
    }

private:
    static constexpr std::size_t binCount = 512;
    double m_low;
    double m_width;
    std::vector<double> m_bins;
};

template <typename Visit>
void forEachMass(const Track& track, double fromMs, Visit visit)
{
    forEachPiece(track, fromMs, [&](double t0, double a, double t1, double b, bool) {
        visit(Mass{std::min(a, b), std::max(a, b), t1 - t0});
    });
}

} // namespace

std::vector<double> timeQuantiles(const Track& track, double fromMs, std::span<const double> shares)
{
    double low = std::numeric_limits<double>::infinity();
    double high = -low;
    double total = 0.0;
    forEachMass(track, fromMs, [&](const Mass& mass) {
        low = std::min(low, mass.low);
        high = std::max(high, mass.high);
        total += mass.ms;
    });
    if (!(total > 0.0))
        return {};
    if (!(high > low))
        return std::vector<double>(shares.size(), low);
    TimeHistogram histogram(low, high);
    forEachMass(track, fromMs, [&](const Mass& mass) { histogram.add(mass); });
    std::vector<std::pair<std::size_t, double>> found;
    for (const double share : shares)
        found.push_back(histogram.find(share * total));
    std::vector<std::vector<Mass>> masses(shares.size());
    forEachMass(track, fromMs, [&](const Mass& mass) {
        for (std::size_t i = 0; i < found.size(); ++i) {
            const Mass part = histogram.part(mass, found[i].first);
            if (part.ms > 0.0)
                masses[i].push_back(part);
        }
    });
    std::vector<double> quantiles;
    for (std::size_t i = 0; i < shares.size(); ++i)
        quantiles.push_back(solveQuantile(masses[i], found[i].second, shares[i] * total));
    return quantiles;
}

SampleSummary summarise(std::span<const double> values)
{
    SampleSummary summary;
    summary.count = values.size();
    const auto n = static_cast<double>(values.size());
    // Shifted by the first value, so that large numbers with small differences lose no digits.
    double shifted = 0.0;
    for (const double value : values)
        shifted += value - values.front();
    const double meanShift = shifted / n;
    summary.mean = values.front() + meanShift;
    double squares = 0.0;
    double leftover = 0.0;
    for (const double value : values) {
        const double deviation = (value - values.front()) - meanShift;
        squares += deviation * deviation;
        leftover += deviation;
    }
    if (values.size() > 1)
        summary.standardDeviation = std::sqrt((squares - leftover * leftover / n) / (n - 1.0));
    return summary;
}

std::optional<double> meanHalfWidth95(const SampleSummary& summary)
{
    if (summary.count < 3)
        return std::nullopt;
    const auto n = static_cast<double>(summary.count);
    const boost::math::students_t distribution(n - 1.0);
    return boost::math::quantile(distribution, 0.975) * summary.standardDeviation / std::sqrt(n);
}

} // namespace holdband::analysis
