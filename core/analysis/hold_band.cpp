#include "core/analysis/hold_band.h"

#include <algorithm>
#include <cmath>

namespace holdband::analysis {

namespace {

/// The shortest return into the band that ends an excursion, whatever the setting.
constexpr double shortestReturnMs = 1.0;

bool insideBand(double deviation, double tolerance)
{
    return std::abs(deviation) <= tolerance + edgeSlack;
}

/// The part of a straight piece beyond one edge, in terms of its excess over the edge.
struct Beyond {
    double start;
    double end;
    double peak;
    double peakMs;
    double area;
};

/// `a` and `b` are the excess over the edge (positive: beyond) at t0 and t1; max(a, b) > 0.
Beyond beyondEdge(double t0, double a, double t1, double b)
{
    Beyond part{t0, t1, std::max(a, b), a < b ? t1 : t0, 0.0};
    if (a <= 0.0)
        part.start = std::clamp(t0 + (t1 - t0) * (a / (a - b)), t0, t1);
    if (b <= 0.0)
        part.end = std::clamp(t0 + (t1 - t0) * (a / (a - b)), t0, t1);
    part.area = (std::max(a, 0.0) + std::max(b, 0.0)) / 2.0 * (part.end - part.start);
    return part;
}

/// Collects time outside and excursions piece by piece, in order of time.
class BandWalk {
public:
    BandWalk(double tolerance, double returnMs)
        : m_tolerance(tolerance), m_returnMs(std::max(returnMs, shortestReturnMs) - lengthSlackMs)
    {
    }

    void piece(double t0, double a, double t1, double b, bool joined)
    {
        if (!joined)
            closeAtHole(Cut::gap);
        m_covered += t1 - t0;
        m_lastEnd = t1;
        m_endsInside = insideBand(b, m_tolerance);
        if (insideBand(a, m_tolerance) && m_endsInside)
            return;
        if (a > b) {
            beyond(Side::above, t0, a, t1, b);
            beyond(Side::below, t0, -a, t1, -b);
        } else {
            beyond(Side::below, t0, -a, t1, -b);
            beyond(Side::above, t0, a, t1, b);
        }
    }

    /// The covered time ended at the stage's end, or at a gap before it.
    void finish(double stageEndMs)
    {
        closeAtHole(m_lastEnd >= stageEndMs ? Cut::stageEnd : Cut::gap);
    }

    void moveInto(BandJudgement& judged)
    {
        judged.coveredMs = m_covered;
        judged.aboveMs = m_above;
        judged.belowMs = m_below;
        judged.insideMs = std::max(0.0, m_covered - m_above - m_below);
        judged.excursions = std::move(m_excursions);
    }

private:
    void beyond(Side side, double t0, double a, double t1, double b)
    {
        if (std::max(a, b) <= m_tolerance + edgeSlack)
            return;
        const Beyond part = beyondEdge(t0, a - m_tolerance, t1, b - m_tolerance);
        const double length = part.end - part.start;
        (side == Side::above ? m_above : m_below) += length;
        if (!goesOn(side, part.start)) {
            m_excursions.push_back({side, part.start, part.end, part.peak, part.peakMs, part.area,
                                    Cut::cameBack, length});
            m_open = true;
            return;
        }
        Excursion& last = m_excursions.back();
        last.endMs = part.end;
        if (part.peak > last.peak) {
            last.peak = part.peak;
            last.peakMs = part.peakMs;
        }
        last.areaMs += part.area;
        last.outsideMs += length;
    }

    bool goesOn(Side side, double start) const
    {
        return m_open && m_excursions.back().side == side &&
               start - m_excursions.back().endMs < m_returnMs;
    }

    /// A beer that is inside at the last covered instant, be it on the edge, has come back, however
    /// short it was inside.
    void closeAtHole(Cut cut)
    {
        if (m_open && !m_endsInside && m_excursions.back().endMs >= m_lastEnd)
            m_excursions.back().cut = cut;
        m_open = false;
    }

    double m_tolerance;
    double m_returnMs;
    double m_covered = 0.0;
    double m_above = 0.0;
    double m_below = 0.0;
    double m_lastEnd = 0.0;
    bool m_endsInside = true;
    bool m_open = false; ///< the last excursion may continue
    std::vector<Excursion> m_excursions;
};

/// Where the straight piece from (t0, a) to (t1, b) crosses ± tolerance on the side of `edge`.
Arrival crossing(double t0, double a, double t1, double b, double edge)
{
    const double share = std::clamp((edge - a) / (b - a), 0.0, 1.0);
    return {t0 + share * (t1 - t0), a + share * (b - a), true};
}

/// Looks for the first stay inside the band that lasts for the dwell, or until the covered stretch
/// ends. Takes each covered stretch point by point, in order of time.
class ArrivalSearch {
public:
    ArrivalSearch(double tolerance, double dwellMs)
        : m_tolerance(tolerance), m_dwellMs(dwellMs - lengthSlackMs)
    {
    }

    /// The first point of a covered stretch.
    void begin(double ms, double deviation)
    {
        m_entry.reset();
        if (insideBand(deviation, m_tolerance))
            m_entry = Arrival{ms, deviation, false};
    }

    /// The piece that follows; true once the beer has arrived.
    bool arrives(double t0, double a, double t1, double b)
    {
        const bool endsInside = insideBand(b, m_tolerance);
        const bool crossesAll = !m_entry && !endsInside && (a > 0.0) != (b > 0.0);
        if (!m_entry && (endsInside || crossesAll))
            m_entry = crossing(t0, a, t1, b, std::copysign(m_tolerance, a));
        if (!m_entry)
            return false;
        if (endsInside)
            return stayedUntil(t1);
        if (stayedUntil(crossing(t0, a, t1, b, std::copysign(m_tolerance, b)).ms))
            return true;
        m_entry.reset();
        ++m_visits;
        return false;
    }

    /// The stay that lasts now; it has become the arrival once arrives() or stayedUntil() says so,
    /// or where the covered stretch ends.
    const std::optional<Arrival>& entry() const { return m_entry; }
    bool stayedUntil(double ms) const { return m_entry && ms - m_entry->ms >= m_dwellMs; }
    std::size_t visits() const { return m_visits; }

private:
    double m_tolerance;
    double m_dwellMs;
    std::optional<Arrival> m_entry;
    std::size_t m_visits = 0;
};

/// The arrival in a stage that begins outside the band, and how often the beer was inside before.
void searchArrival(const Track& deviation, double dwellMs, BandJudgement& judged)
{
    ArrivalSearch search(judged.tolerance, dwellMs);
    for (const Run& run : deviation.runs) {
        const double start = deviation.ms[run.first];
        search.begin(start, deviation.value[run.first]);
        bool arrived = search.stayedUntil(start);
        for (std::size_t i = run.first; i < run.last && !arrived; ++i)
            arrived = search.arrives(deviation.ms[i], deviation.value[i], deviation.ms[i + 1],
                                     deviation.value[i + 1]);
        judged.arrival = search.entry();
        if (judged.arrival)
            break;
    }
    judged.visits = search.visits();
}

/// Without a jump the beer has arrived at the stage's start; after a jump into its band, at the
/// first covered instant.
std::optional<Arrival> arrivalAtOnce(const StageTrack& track, const PlacedStage& stage)
{
    if (track.deviation.empty())
        return std::nullopt;
    const double ms = stage.jumps ? track.deviation.ms.front() : 0.0;
    return Arrival{ms, track.deviation.value.front(), ms <= 0.0 && track.coveredBefore};
}

/// The stage jumps, and the beer is outside at the first covered instant.
bool beginsOutside(const StageTrack& track, const PlacedStage& stage, double tolerance)
{
    return stage.jumps && !track.deviation.empty() &&
           !insideBand(track.deviation.value.front(), tolerance);
}

} // namespace

const Excursion* worstOf(const std::vector<Excursion>& excursions)
{
    // The first of equals.
    const auto worst =
        std::max_element(excursions.begin(), excursions.end(),
                         [](const Excursion& a, const Excursion& b) { return a.peak < b.peak; });
    return worst == excursions.end() ? nullptr : &*worst;
}

Span spanOf(const PlacedStage& stage, const Excursion& excursion)
{
    return {plusMs(stage.span.start, excursion.startMs), plusMs(stage.span.start, excursion.endMs)};
}

StageTrack stageTrack(const Series& beer, Milliseconds gapLimit, const PlacedStage& stage)
{
    StageTrack result{cover(beer, gapLimit, stage.span), false};
    Track& track = result.deviation;
    for (std::size_t i = 0; i < track.ms.size(); ++i)
        track.value[i] -= stage.targetCelsiusAt(track.ms[i]);
    const Span before{stage.span.start - Milliseconds{1}, stage.span.start};
    result.coveredBefore = !cover(beer, gapLimit, before).empty();
    return result;
}

BandJudgement judgeStage(const StageTrack& track, const PlacedStage& stage, double tolerance,
                         const BandTimes& times)
{
    BandJudgement judged;
    judged.tolerance = tolerance;
    judged.settles = beginsOutside(track, stage, tolerance);
    if (judged.settles)
        searchArrival(track.deviation, static_cast<double>(times.dwell.count()), judged);
    else
        judged.arrival = arrivalAtOnce(track, stage);
    const auto length = static_cast<double>((stage.span.end - stage.span.start).count());
    if (judged.settles) {
        const auto allowed = static_cast<double>(stage.settleAllowed.count());
        judged.holdFromMs =
            std::min({judged.arrival ? judged.arrival->ms : length, allowed, length});
        judged.settlingMs = track.deviation.coveredMsBefore(judged.holdFromMs);
    }
    judged.missed = stage.ended && !track.deviation.empty() && !judged.arrival;
    judged.holdMs = length - judged.settlingMs;
    BandWalk walk(tolerance, static_cast<double>(times.returnTime.count()));
    forEachPiece(track.deviation, judged.holdFromMs,
                 [&](double t0, double a, double t1, double b, bool joined) {
                     walk.piece(t0, a, t1, b, joined);
                 });
    walk.finish(length);
    walk.moveInto(judged);
    return judged;
}

namespace {

/// The largest excess past the target after the arrival, until the beer recrosses the target.
/// `sign` is +1 where the beer came from above.
double overshootAfter(const Track& deviation, double arrivalMs, double sign)
{
    double largest = 0.0;
    bool crossed = false;
    bool recrossed = false;
    forEachPiece(deviation, arrivalMs, [&](double, double a, double, double b, bool) {
        for (const double value : {a, b}) {
            const double past = -sign * value;
            if (recrossed)
                return;
            if (past > 0.0) {
                crossed = true;
                largest = std::max(largest, past);
            } else if (crossed) {
                recrossed = true;
            }
        }
    });
    return largest;
}

} // namespace

SettlingFigures settlingFigures(const StageTrack& track, const BandJudgement& judged)
{
    SettlingFigures figures;
    const Track& deviation = track.deviation;
    if (!judged.settles || !judged.arrival)
        return figures;
    figures.clockMs = judged.arrival->ms;
    const double first = deviation.value.front();
    const double travelled = judged.arrival->ms - deviation.ms.front();
    if (travelled > 0.0)
        figures.ratePerMs = (first - judged.arrival->deviation) / travelled;
    figures.overshoot = overshootAfter(deviation, judged.arrival->ms, first > 0.0 ? 1.0 : -1.0);
    return figures;
}

} // namespace holdband::analysis
