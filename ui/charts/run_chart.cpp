#include "ui/charts/run_chart.h"

#include "core/results/run/causes.h"
#include "core/text/phrase.h"
#include "core/text/quantities.h"

#include <algorithm>
#include <cmath>

namespace holdband::ui {

namespace {

using analysis::Track;

double temperatureIn(double celsius, TemperatureUnit unit)
{
    return valueIn(Temperature::celsius(celsius), unit);
}

double differenceIn(double kelvins, TemperatureUnit unit)
{
    return valueIn(TemperatureDifference::kelvins(kelvins), unit);
}

ChartLine lineOf(LineRole role, std::string name, const Series& series, Milliseconds gapLimit,
                 const RunChart& chart)
{
    ChartLine line{role, std::move(name), analysis::cover(series, gapLimit, chart.span)};
    for (double& value : line.track.value)
        value = temperatureIn(value, chart.unit);
    line.pyramid = TrackPyramid(line.track);
    return line;
}

LineRole roleOf(SensorKind reads)
{
    return reads == SensorKind::coolant ? LineRole::coolant : LineRole::chamber;
}

void addLines(const results::RunReview& review, RunChart& chart)
{
    const analysis::RunInput& input = review.input;
    for (const results::SideSeries& side : review.sides) {
        const LineRole role = roleOf(side.reads);
        chart.lines.push_back(
            lineOf(role, role == LineRole::coolant ? Phrase::tr("coolant") : Phrase::tr("chamber"),
                   side.series, side.gapLimit, chart));
    }
    if (!input.ambient.empty())
        chart.lines.push_back(
            lineOf(LineRole::ambient, Phrase::tr("room"), input.ambient, input.ambientGap, chart));
    chart.lines.push_back(lineOf(LineRole::beer, Phrase::tr("beer"), input.judging.beer,
                                 input.judging.gapLimit, chart));
}

void addLeftOut(const results::RunReview& review, RunChart& chart)
{
    if (!review.figures.leftOut)
        return;
    for (const analysis::LeftOut& each : review.figures.leftOut->stretches)
        chart.leftOut.push_back(
            {{chart.msOf(each.span.start), chart.msOf(each.span.end)}, each.why});
}

/// The holes without the stretches that were left out by hand.
std::vector<Stretch> gapsOf(const std::vector<Stretch>& holes,
                            const std::vector<LeftOutStretch>& leftOut)
{
    std::vector<Stretch> gaps;
    for (const Stretch& hole : holes) {
        double from = hole.fromMs;
        for (const LeftOutStretch& each : leftOut) {
            if (each.time.toMs <= from || each.time.fromMs >= hole.toMs)
                continue;
            if (each.time.fromMs > from)
                gaps.push_back({from, each.time.fromMs});
            from = each.time.toMs;
        }
        if (from < hole.toMs)
            gaps.push_back({from, hole.toMs});
    }
    return gaps;
}

/// The parts of [0, lengthMs] that the runs of the track don't cover.
std::vector<Stretch> holesOf(const Track& track, double lengthMs)
{
    std::vector<Stretch> holes;
    double from = 0.0;
    for (const analysis::Run& run : track.runs) {
        if (track.ms[run.first] > from)
            holes.push_back({from, track.ms[run.first]});
        from = track.ms[run.last];
    }
    if (from < lengthMs)
        holes.push_back({from, lengthMs});
    return holes;
}

Track shifted(const Track& track, double byMs, TemperatureUnit unit)
{
    Track moved = track;
    for (double& ms : moved.ms)
        ms += byMs;
    for (double& value : moved.value)
        value = differenceIn(value, unit);
    return moved;
}

std::string stageWords(const analysis::PlacedStage& stage, const BandPiece& band,
                       TemperatureUnit unit)
{
    const auto at = [unit](double value) {
        return temperatureText(temperatureFrom(value, unit), unit);
    };
    const std::string tolerance = differenceText(stage.tolerance, unit);
    if (stage.kind == StageKind::ramp)
        return Phrase::tr("%1: %2 to %3 ± %4")
            .with(stage.label, at(band.startTarget), at(band.endTarget), tolerance);
    return Phrase::tr("%1: %2 ± %3").with(stage.label, at(band.endTarget), tolerance);
}

ExcursionMark markOf(const analysis::Excursion& excursion, const BandPiece& band,
                     TemperatureUnit unit)
{
    const double offset = band.time.fromMs;
    ExcursionMark mark;
    mark.above = excursion.side == analysis::Side::above;
    mark.time = {offset + excursion.startMs, offset + excursion.endMs};
    mark.outsideMs = excursion.outsideMs;
    mark.peakMs = offset + excursion.peakMs;
    mark.edgeDeviation = mark.above ? band.tolerance : -band.tolerance;
    mark.peakDeviation = mark.edgeDeviation + differenceIn(excursion.signedPeak(), unit);
    mark.peakTemperature = band.targetAt(mark.peakMs) + mark.peakDeviation;
    return mark;
}

BandPiece bandOf(const analysis::PlacedStage& stage, const RunChart& chart)
{
    const double length = static_cast<double>((stage.span.end - stage.span.start).count());
    BandPiece band;
    band.time = {chart.msOf(stage.span.start), chart.msOf(stage.span.end)};
    band.startTarget = temperatureIn(stage.targetCelsiusAt(0.0), chart.unit);
    band.endTarget = temperatureIn(stage.targetCelsiusAt(length), chart.unit);
    band.tolerance = valueIn(stage.tolerance, chart.unit);
    return band;
}

void addExcursion(const analysis::Excursion& excursion, ExcursionMark mark, RunChart& chart)
{
    const Span span{chart.instantOf(mark.time.fromMs), chart.instantOf(mark.time.toMs)};
    mark.cause = results::causeText(results::causeAt(chart.causes, span, excursion.side));
    chart.excursions.push_back(std::move(mark));
}

void addStage(const analysis::JudgedBatch& judged, std::size_t i, RunChart& chart)
{
    const analysis::PlacedStage& stage = judged.stages[i];
    const analysis::BandJudgement& judgement = judged.asPlanned.stages[i];
    const Track& deviation = judged.tracks[i].deviation;
    const BandPiece band = bandOf(stage, chart);
    chart.bands.push_back(band);
    chart.stages.push_back({stage.label, stageWords(stage, band, chart.unit), band.time});
    chart.deviation.push_back(shifted(deviation, band.time.fromMs, chart.unit));
    chart.deviationPyramids.emplace_back(chart.deviation.back());
    if (judgement.settlingMs > 0.0)
        chart.settling.push_back({band.time.fromMs, band.time.fromMs + judgement.holdFromMs});
    for (const analysis::Excursion& excursion : judgement.excursions)
        addExcursion(excursion, markOf(excursion, band, chart.unit), chart);
}

void addEnergyDots(const results::RunReview& review, RunChart& chart)
{
    for (const results::EnergyPoint& point : review.energyCurve) {
        const bool joined = !chart.energy.empty() && !point.afterHole;
        chart.energy.push_back(
            {chart.msOf(point.at), point.kwh, point.read, joined, point.afterReset});
    }
}

void addEnergyBounds(const results::RunReview& review, RunChart& chart)
{
    chart.energyUnbounded = review.energyRange.unbounded;
    for (const results::EnergyBounds& bounds : review.energyRange.points)
        chart.energyBounds.push_back(
            {chart.msOf(bounds.at), bounds.low, bounds.high, bounds.joined});
}

void addUnmetered(const results::RunReview& review, RunChart& chart)
{
    const analysis::EnergyFigure& whole = review.figures.energy.whole;
    double from = 0.0;
    for (const Span& metered : whole.metered) {
        if (chart.msOf(metered.start) > from)
            chart.unmetered.push_back({from, chart.msOf(metered.start)});
        from = chart.msOf(metered.end);
    }
    if (whole.any() && from < chart.msOf(chart.span.end))
        chart.unmetered.push_back({from, chart.msOf(chart.span.end)});
}

void addNotes(const results::RunReview& review, RunChart& chart)
{
    for (const JournalNote& note : review.journal) {
        if (note.at >= chart.span.start && note.at <= chart.span.end)
            chart.notes.push_back({chart.msOf(note.at), note.text});
    }
}

} // namespace

double BandPiece::targetAt(double ms) const
{
    const double length = time.toMs - time.fromMs;
    const double share = length > 0.0 ? (ms - time.fromMs) / length : 0.0;
    return startTarget + (endTarget - startTarget) * std::clamp(share, 0.0, 1.0);
}

bool RunChart::hasReadings() const
{
    return std::any_of(lines.begin(), lines.end(),
                       [](const ChartLine& line) { return !line.track.empty(); });
}

bool RunChart::hasDeviation() const
{
    return std::any_of(deviation.begin(), deviation.end(),
                       [](const analysis::Track& track) { return !track.empty(); });
}

Span RunChart::wholeSpan() const
{
    return fan ? Span{span.start, std::max(span.end, instantOf(fan->endMs))} : span;
}

const ChartLine* RunChart::line(LineRole role) const
{
    const auto found = std::find_if(lines.begin(), lines.end(),
                                    [role](const ChartLine& line) { return line.role == role; });
    return found == lines.end() ? nullptr : &*found;
}

const LeftOutStretch* RunChart::leftOutAt(double ms) const
{
    const auto found =
        std::find_if(leftOut.begin(), leftOut.end(), [ms](const LeftOutStretch& each) {
            return ms >= each.time.fromMs && ms <= each.time.toMs;
        });
    return found == leftOut.end() ? nullptr : &*found;
}

void setJudged(RunChart& chart, const analysis::JudgedBatch& judged)
{
    chart.bands.clear();
    chart.stages.clear();
    chart.deviation.clear();
    chart.deviationPyramids.clear();
    chart.settling.clear();
    chart.excursions.clear();
    for (std::size_t i = 0; i < judged.stages.size(); ++i)
        addStage(judged, i, chart);
}

RunChart chartOf(const results::RunReview& review)
{
    RunChart chart;
    chart.batch = review.batch().name;
    chart.setup = review.setupIndex;
    chart.origin = review.input.span.start;
    chart.span = review.input.span;
    chart.zone = review.zone;
    chart.unit = review.settings.temperatureUnit();
    addLines(review, chart);
    chart.causes = review.causes;
    addLeftOut(review, chart);
    chart.gaps =
        gapsOf(holesOf(chart.lines.back().track, chart.msOf(chart.span.end)), chart.leftOut);
    setJudged(chart, review.figures.judged);
    addEnergyDots(review, chart);
    addEnergyBounds(review, chart);
    addUnmetered(review, chart);
    addNotes(review, chart);
    chart.fan = fanOf(review, chart.origin);
    return chart;
}

std::optional<double> valueAt(const Track& track, double ms)
{
    for (const analysis::Run& run : track.runs) {
        if (ms < track.ms[run.first] || ms > track.ms[run.last])
            continue;
        const auto begin = track.ms.begin() + static_cast<std::ptrdiff_t>(run.first);
        const auto end = track.ms.begin() + static_cast<std::ptrdiff_t>(run.last);
        const auto next =
            static_cast<std::size_t>(std::upper_bound(begin, end, ms) - track.ms.begin());
        return analysis::along(track.ms[next - 1], track.value[next - 1], track.ms[next],
                               track.value[next], ms);
    }
    return std::nullopt;
}

std::optional<double> adjacentReading(const RunChart& chart, double ms, bool after)
{
    const ChartLine* beer = chart.line(LineRole::beer);
    if (!beer)
        return std::nullopt;
    const std::vector<double>& at = beer->track.ms;
    const auto next = after ? std::upper_bound(at.begin(), at.end(), ms)
                            : std::lower_bound(at.begin(), at.end(), ms);
    if (after)
        return next == at.end() ? std::nullopt : std::optional(*next);
    return next == at.begin() ? std::nullopt : std::optional(*(next - 1));
}

std::optional<double> nearestReading(const RunChart& chart, double ms)
{
    std::optional<double> nearest;
    const auto consider = [&](std::optional<double> at) {
        if (at && (!nearest || std::abs(*at - ms) < std::abs(*nearest - ms)))
            nearest = at;
    };
    consider(adjacentReading(chart, ms, true));
    consider(adjacentReading(chart, std::nextafter(ms, ms + 1.0), false));
    for (const EnergyDot& dot : chart.energy)
        consider(dot.read ? std::optional(dot.ms) : std::nullopt);
    return nearest;
}

std::optional<EnergyBounds> boundsAt(const RunChart& chart, double ms)
{
    const auto& all = chart.energyBounds;
    for (std::size_t i = 1; i < all.size(); ++i) {
        if (!all[i].joined || ms < all[i - 1].ms || ms > all[i].ms)
            continue;
        const auto between = [&](double a, double b) {
            return analysis::along(all[i - 1].ms, a, all[i].ms, b, ms);
        };
        return EnergyBounds{ms, between(all[i - 1].low, all[i].low),
                            between(all[i - 1].high, all[i].high), true};
    }
    return std::nullopt;
}

std::optional<double> energyAt(const RunChart& chart, double ms)
{
    const auto& all = chart.energy;
    for (std::size_t i = 1; i < all.size(); ++i) {
        if (all[i].joined && ms >= all[i - 1].ms && ms <= all[i].ms && all[i].ms > all[i - 1].ms)
            return analysis::along(all[i - 1].ms, all[i - 1].kwh, all[i].ms, all[i].kwh, ms);
    }
    return std::nullopt;
}

} // namespace holdband::ui
