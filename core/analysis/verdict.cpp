#include "core/analysis/verdict.h"

#include <algorithm>

namespace holdband::analysis {

namespace {

/// An excursion that begins less than this after the stage's start continues one from the stage
/// before.
constexpr double atOnceMs = 1.0;
/// Coverage is compared to the millisecond.
constexpr double halfMs = 0.5;

BandTotals sumUp(const std::vector<BandJudgement>& stages)
{
    BandTotals totals;
    for (std::size_t i = 0; i < stages.size(); ++i) {
        totals += stages[i];
        totals.excursions += stages[i].excursions.size();
        const Excursion* worst = worstOf(stages[i].excursions);
        if (worst && (!totals.worst || worst->peak > totals.worstPeak()))
            totals.worst = StageExcursion{i, *worst};
    }
    return totals;
}

/// The number of excursions that are outside at least as long as the shortest that counts. One cut
/// by a stage's end counts together with the one that continues it at once, on the same side, in
/// the next stage.
std::size_t countedExcursions(const std::vector<BandJudgement>& stages, double ignoreShorterThanMs)
{
    std::size_t counted = 0;
    const Excursion* carried = nullptr;
    double carriedMs = 0.0;
    for (const BandJudgement& stage : stages) {
        const Excursion* cutAtEnd = nullptr;
        double cutMs = 0.0;
        for (const Excursion& excursion : stage.excursions) {
            double length = excursion.outsideMs;
            if (carried && carried->side == excursion.side && excursion.startMs < atOnceMs)
                length += carriedMs;
            if (length >= ignoreShorterThanMs - lengthSlackMs)
                ++counted;
            if (excursion.cut == Cut::stageEnd) {
                cutAtEnd = &excursion;
                cutMs = length;
            }
        }
        carried = cutAtEnd;
        carriedMs = cutMs;
    }
    return counted;
}

Verdict decide(const Judging& judging, const JudgingSettings& settings)
{
    if (judging.totals.counted > 0)
        return Verdict::left;
    const BandTotals& totals = judging.totals;
    const bool tooLittle = totals.coveredMs + halfMs < settings.coverageNeeded * totals.holdMs;
    if (totals.holdMs > 0.0 ? tooLittle : judging.missed.empty())
        return Verdict::notEnoughData;
    return judging.missed.empty() ? Verdict::stayed : Verdict::missed;
}

/// Judges every stage with its tolerance moved by `shift` (K). A tolerance is never below 0, where
/// only a beer exactly on target is inside.
Judging judgeAll(const JudgedBatch& batch, double shift, const JudgingRules& rules,
                 const JudgingSettings& settings)
{
    Judging judging;
    for (std::size_t i = 0; i < batch.stages.size(); ++i) {
        const PlacedStage& stage = batch.stages[i];
        const double tolerance = std::max(0.0, stage.tolerance.kelvins() + shift);
        judging.stages.push_back(judgeStage(batch.tracks[i], stage, tolerance, rules.bandTimes));
        if (judging.stages.back().missed)
            judging.missed.push_back(stage.label);
    }
    judging.totals = sumUp(judging.stages);
    judging.totals.counted =
        countedExcursions(judging.stages, static_cast<double>(rules.ignoreShorterThan.count()));
    judging.verdict = decide(judging, settings);
    return judging;
}

StageStatistics describe(const StageTrack& track, const PlacedStage& stage, double fromMs,
                         Detail detail)
{
    static constexpr std::array shares{0.05, 0.5, 0.95};
    StageStatistics statistics;
    forEachPiece(track.deviation, fromMs, [&](double t0, double a, double t1, double b, bool) {
        statistics.deviation.addPiece(t1 - t0, a, b);
        const double beerA = a + stage.targetCelsiusAt(t0);
        const double beerB = b + stage.targetCelsiusAt(t1);
        statistics.minimum = std::min({statistics.minimum.value_or(beerA), beerA, beerB});
        statistics.maximum = std::max({statistics.maximum.value_or(beerA), beerA, beerB});
    });
    if (detail == Detail::withoutQuantiles)
        return statistics;
    const std::vector<double> quantiles = timeQuantiles(track.deviation, fromMs, shares);
    if (!quantiles.empty())
        statistics.quantiles = {quantiles[0], quantiles[1], quantiles[2]};
    return statistics;
}

/// Sure where judging with less and with more tolerance gives the same verdict. Where the tighter
/// tolerance is not positive, only "left" can be sure.
std::optional<bool> howSure(const JudgedBatch& batch, double doubt)
{
    if (batch.asPlanned.verdict == Verdict::notEnoughData)
        return std::nullopt;
    const bool vanishes =
        std::any_of(batch.stages.begin(), batch.stages.end(), [&](const PlacedStage& stage) {
            return stage.tolerance.kelvins() - doubt <= 0.0;
        });
    const Verdict verdict = batch.asPlanned.verdict;
    if (vanishes)
        return verdict == Verdict::left && batch.wider->verdict == Verdict::left;
    return batch.tighter->verdict == verdict && batch.wider->verdict == verdict;
}

} // namespace

JudgedBatch judgeTracks(std::vector<PlacedStage> stages, std::vector<StageTrack> tracks,
                        const JudgingRules& rules, const JudgingSettings& settings, Detail detail)
{
    JudgedBatch batch;
    batch.stages = std::move(stages);
    batch.tracks = std::move(tracks);
    batch.asPlanned = judgeAll(batch, 0.0, rules, settings);
    for (std::size_t i = 0; i < batch.stages.size(); ++i) {
        batch.statistics.push_back(describe(batch.tracks[i], batch.stages[i],
                                            batch.asPlanned.stages[i].holdFromMs, detail));
        batch.deviation.add(batch.statistics.back().deviation);
    }
    if (rules.accuracy) {
        const double doubt = rules.accuracy->kelvins();
        batch.tighter = judgeAll(batch, -doubt, rules, settings);
        batch.wider = judgeAll(batch, doubt, rules, settings);
        batch.sure = howSure(batch, doubt);
    }
    return batch;
}

JudgedBatch judgeBatch(std::vector<PlacedStage> stages, const JudgingInput& input,
                       const JudgingSettings& settings, Detail detail)
{
    std::vector<StageTrack> tracks;
    tracks.reserve(stages.size());
    for (const PlacedStage& stage : stages)
        tracks.push_back(stageTrack(input.beer, input.gapLimit, stage));
    return judgeTracks(std::move(stages), std::move(tracks), input, settings, detail);
}

} // namespace holdband::analysis
