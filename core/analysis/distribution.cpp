#include "core/analysis/distribution.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace holdband::analysis {

double Distribution::totalMs() const
{
    return std::accumulate(binMs.begin(), binMs.end(), belowMs + aboveMs);
}

namespace {

double shareOf(double ms, double total)
{
    return total > 0.0 ? ms / total : 0.0;
}

class Binning {
public:
    explicit Binning(Distribution& into) : m_into(into) {}

    void addPiece(double ms, double a, double b)
    {
        const auto [low, high] = std::minmax(a, b);
        if (high > low)
            addSlope(ms, low, high);
        else
            addLevel(ms, low);
    }

private:
    double first() const { return m_into.edges.front(); }
    double last() const { return m_into.edges.back(); }

    /// The bin that contains x, which is between the outermost edges.
    std::size_t binOf(double x) const
    {
        const auto above = std::upper_bound(m_into.edges.begin(), m_into.edges.end(), x);
        const auto index = static_cast<std::size_t>(above - m_into.edges.begin());
        return std::clamp<std::size_t>(index, 1, m_into.binMs.size()) - 1;
    }

    void addLevel(double ms, double x)
    {
        if (x < first() - edgeSlack)
            m_into.belowMs += ms;
        else if (x > last() + edgeSlack)
            m_into.aboveMs += ms;
        else
            m_into.binMs[binOf(std::clamp(x, first(), last()))] += ms;
    }

    void addSlope(double ms, double low, double high)
    {
        const double msPerUnit = ms / (high - low);
        double rest = ms;
        if (low < first() - edgeSlack) {
            const double part = high <= first() ? ms : (first() - low) * msPerUnit;
            m_into.belowMs += part;
            rest -= part;
        }
        if (high > last() + edgeSlack) {
            const double part = low >= last() ? ms : (high - last()) * msPerUnit;
            m_into.aboveMs += part;
            rest -= part;
        }
        if (rest > 0.0)
            addInside(rest, std::clamp(low, first(), last()), std::clamp(high, first(), last()));
    }

    /// Spreads the time evenly from low to high. The last bin gets the remainder, so that rounding
    /// loses nothing.
    void addInside(double ms, double low, double high)
    {
        const std::size_t end = binOf(high);
        double rest = ms;
        for (std::size_t bin = binOf(low); bin < end; ++bin) {
            const double from = std::max(low, m_into.edges[bin]);
            const double part =
                std::min(rest, ms * ((m_into.edges[bin + 1] - from) / (high - low)));
            m_into.binMs[bin] += part;
            rest -= part;
        }
        m_into.binMs[end] += rest;
    }

    Distribution& m_into;
};

Distribution emptyOver(std::span<const double> edges)
{
    Distribution distribution;
    distribution.edges.assign(edges.begin(), edges.end());
    distribution.binMs.assign(edges.size() - 1, 0.0);
    return distribution;
}

void addTrack(Distribution& distribution, const Track& track, double fromMs)
{
    Binning binning(distribution);
    forEachPiece(track, fromMs, [&](double t0, double a, double t1, double b, bool) {
        binning.addPiece(t1 - t0, a, b);
    });
}

} // namespace

double Distribution::share(std::size_t bin) const
{
    return shareOf(binMs[bin], totalMs());
}

double Distribution::shareBelow() const
{
    return shareOf(belowMs, totalMs());
}

double Distribution::shareAbove() const
{
    return shareOf(aboveMs, totalMs());
}

Distribution distributionOf(const Track& track, double fromMs, std::span<const double> edges)
{
    Distribution distribution = emptyOver(edges);
    addTrack(distribution, track, fromMs);
    return distribution;
}

Distribution distributionOf(const JudgedBatch& batch, std::span<const double> edges)
{
    Distribution distribution = emptyOver(edges);
    for (std::size_t i = 0; i < batch.stages.size(); ++i)
        addTrack(distribution, batch.tracks[i].deviation, batch.asPlanned.stages[i].holdFromMs);
    return distribution;
}

std::optional<Extent> extentOf(const Track& track, double fromMs)
{
    std::optional<Extent> extent;
    forEachPiece(track, fromMs, [&](double, double a, double, double b, bool) {
        if (!extent)
            extent = Extent{a, a};
        extent->least = std::min({extent->least, a, b});
        extent->most = std::max({extent->most, a, b});
    });
    return extent;
}

std::optional<Extent> extentOf(const JudgedBatch& batch)
{
    std::optional<Extent> all;
    for (std::size_t i = 0; i < batch.stages.size(); ++i) {
        const auto part = extentOf(batch.tracks[i].deviation, batch.asPlanned.stages[i].holdFromMs);
        if (!part)
            continue;
        all = all ? Extent{std::min(all->least, part->least), std::max(all->most, part->most)}
                  : *part;
    }
    return all;
}

std::vector<double> bandEdges(double tolerance, Extent extent, int binsInTolerance,
                              int mostTolerances)
{
    const double width = tolerance / binsInTolerance;
    const int most = mostTolerances * binsInTolerance;
    const auto steps = [&](double reach) {
        const double wanted = std::ceil(std::min(reach / width, static_cast<double>(most)));
        return std::clamp(static_cast<int>(wanted), binsInTolerance, most);
    };
    const int below = steps(std::max(0.0, -extent.least));
    const int above = steps(std::max(0.0, extent.most));
    std::vector<double> edges;
    for (int step = -below; step <= above; ++step)
        // Sets the band's edges exactly, however the division rounds.
        edges.push_back(step % binsInTolerance == 0 ? tolerance * (step / binsInTolerance)
                                                    : width * step);
    return edges;
}

} // namespace holdband::analysis
