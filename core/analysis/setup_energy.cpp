#include "core/analysis/setup_energy.h"

#include <algorithm>
#include <limits>

namespace holdband::analysis {

namespace {

Instant offsetBy(Instant origin, double ms)
{
    return origin + Milliseconds{static_cast<std::int64_t>(ms + 0.5)};
}

Span serviceOf(const EnergySource& source)
{
    return {source.from.value_or(Instant::min()), source.to.value_or(Instant::max())};
}

bool serves(const EnergySource& source, Span span)
{
    return !intersection(serviceOf(source), span).empty();
}

EnergyFigure curveOver(const EnergySource& source, Span span, const Widening& widening)
{
    EnergyFigure figure =
        std::visit([&](const auto& curve) { return curve.over(span); }, source.curve);
    if (widening.wanted && !widening.sharedMeters.contains(source.name)) {
        const double accuracy = source.accuracy.value_or(assumedMeterAccuracy);
        figure.low *= 1.0 - accuracy;
        figure.high *= 1.0 + accuracy;
    }
    return figure;
}

std::vector<Instant> edgesInside(std::vector<Instant> edges, Span span)
{
    std::erase_if(edges, [&](Instant at) { return at <= span.start || at >= span.end; });
    edges.push_back(span.start);
    edges.push_back(span.end);
    std::sort(edges.begin(), edges.end());
    edges.erase(std::unique(edges.begin(), edges.end()), edges.end());
    return edges;
}

} // namespace

PowerCurve::PowerCurve(Series watts, Milliseconds gapLimit)
    : m_watts(std::move(watts)), m_gapLimit(gapLimit)
{
}

EnergyFigure PowerCurve::over(Span span) const
{
    EnergyFigure figure;
    const Track track = cover(m_watts, m_gapLimit, span);
    forEachPiece(track, 0.0, [&](double t0, double a, double t1, double b, bool) {
        figure.kwh += (a + b) / 2.0 / 1000.0 * ((t1 - t0) / msPerHour);
    });
    for (const Run& run : track.runs)
        figure.metered.push_back({offsetBy(track.origin, track.ms[run.first]),
                                  offsetBy(track.origin, track.ms[run.last])});
    if (figure.any()) {
        figure.low = -unbounded;
        figure.high = unbounded;
    }
    return figure;
}

std::optional<Span> PowerCurve::readSpan() const
{
    if (m_watts.size() < 2)
        return std::nullopt;
    return Span{m_watts.at.front(), m_watts.at.back()};
}

Milliseconds largestTimeDoubt(const SetupEnergy& setup, Span span)
{
    Milliseconds largest{0};
    for (const EnergySource& source : setup.sources()) {
        const auto* curve = std::get_if<MeterCurve>(&source.curve);
        for (std::size_t i = 1; curve && i < curve->size(); ++i) {
            if (!intersection(Span{curve->at(i - 1), curve->at(i)}, span).empty())
                largest = std::max({largest, curve->timeDoubt(i - 1), curve->timeDoubt(i)});
        }
    }
    return largest;
}

std::optional<Span> readSpan(const SetupEnergy& setup)
{
    std::optional<Span> whole;
    for (const EnergySource& source : setup.sources()) {
        const std::optional<Span> read =
            std::visit([](const auto& curve) { return curve.readSpan(); }, source.curve);
        if (!read)
            continue;
        const Span served = intersection(*read, serviceOf(source));
        if (served.empty())
            continue;
        whole = whole ? Span{std::min(whole->start, served.start), std::max(whole->end, served.end)}
                      : served;
    }
    return whole;
}

std::vector<Span> SetupEnergy::constantService(Span span) const
{
    std::vector<Instant> changes;
    for (const EnergySource& source : m_sources) {
        if (source.from)
            changes.push_back(*source.from);
        if (source.to)
            changes.push_back(*source.to);
    }
    const std::vector<Instant> edges = edgesInside(std::move(changes), span);
    std::vector<Span> parts;
    for (std::size_t i = 1; i < edges.size(); ++i)
        parts.push_back({edges[i - 1], edges[i]});
    return parts;
}

std::vector<std::vector<Span>> SetupEnergy::meteredBySource(Span span) const
{
    std::vector<std::vector<Span>> bySource(m_sources.size());
    for (const Span& part : constantService(span)) {
        std::vector<Span> known{part};
        for (const EnergySource& source : m_sources) {
            if (serves(source, part))
                known = intersect(known, curveOver(source, part, {}).metered);
        }
        for (std::size_t i = 0; i < m_sources.size(); ++i) {
            if (serves(m_sources[i], part))
                bySource[i].insert(bySource[i].end(), known.begin(), known.end());
        }
    }
    return bySource;
}

EnergyFigure SetupEnergy::over(Span span, const Widening& widening) const
{
    EnergyFigure sum;
    if (span.empty())
        return sum;
    const std::vector<std::vector<Span>> bySource = meteredBySource(span);
    for (std::size_t i = 0; i < m_sources.size(); ++i) {
        for (const Span& known : unite(bySource[i]))
            sum.append(curveOver(m_sources[i], known, widening));
    }
    return sum;
}

std::set<std::string> SetupEnergy::inService(Span span) const
{
    std::set<std::string> names;
    for (const EnergySource& source : m_sources) {
        if (serves(source, span))
            names.insert(source.name);
    }
    return names;
}

std::vector<WeightedSpan> sharesOf(const std::vector<ConcurrentBatch>& concurrentBatches,
                                   std::size_t which)
{
    const ConcurrentBatch& own = concurrentBatches[which];
    std::vector<Instant> changes;
    for (const ConcurrentBatch& concurrent : concurrentBatches) {
        changes.push_back(concurrent.span.start);
        changes.push_back(concurrent.span.end);
    }
    std::vector<WeightedSpan> shares;
    if (own.span.empty())
        return shares;
    const std::vector<Instant> edges = edgesInside(std::move(changes), own.span);
    for (std::size_t i = 1; i < edges.size(); ++i) {
        const Span part{edges[i - 1], edges[i]};
        double all = 0.0;
        for (const ConcurrentBatch& concurrent : concurrentBatches)
            all += intersection(concurrent.span, part).empty() ? 0.0 : concurrent.part;
        const double weight = own.part / all;
        if (!shares.empty() && shares.back().weight == weight)
            shares.back().span.end = part.end;
        else
            shares.push_back({part, weight});
    }
    return shares;
}

std::vector<SharedTime> sharedTimes(const std::vector<ConcurrentBatch>& concurrentBatches,
                                    std::size_t which, Span span)
{
    std::vector<SharedTime> shared;
    const Span own = intersection(concurrentBatches[which].span, span);
    for (std::size_t i = 0; i < concurrentBatches.size(); ++i) {
        const Span both = intersection(concurrentBatches[i].span, own);
        if (i != which && !both.empty())
            shared.push_back({concurrentBatches[i].batch, both.end - both.start});
    }
    return shared;
}

std::vector<Span> idleSpans(const std::vector<ConcurrentBatch>& concurrentBatches, Span span)
{
    std::vector<Span> busy;
    for (const ConcurrentBatch& concurrent : concurrentBatches)
        busy.push_back(intersection(concurrent.span, span));
    std::vector<Span> idle;
    Instant from = span.start;
    for (const Span& taken : unite(std::move(busy))) {
        if (from < taken.start)
            idle.push_back({from, taken.start});
        from = taken.end;
    }
    if (from < span.end)
        idle.push_back({from, span.end});
    return idle;
}

EnergyFigure shareOver(const SetupEnergy& setup, const std::vector<WeightedSpan>& shares, Span span,
                       const Widening& widening)
{
    EnergyFigure sum;
    for (const WeightedSpan& share : shares) {
        const Span part = intersection(share.span, span);
        if (!part.empty())
            sum.append(setup.over(part, widening).times(share.weight));
    }
    return sum;
}

} // namespace holdband::analysis
