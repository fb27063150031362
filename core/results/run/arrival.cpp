#include "core/results/run/arrival.h"

#include "core/results/run/past_falls.h"
#include "core/results/snapshot.h"

#include <algorithm>

namespace holdband::results {

using analysis::ArrivalAnswer;
using analysis::ArrivalForecast;
using analysis::ArrivalQuestion;
using analysis::PlacedStage;
using analysis::TargetTurn;
using analysis::TemperatureAt;
using analysis::Turned;

namespace {

/// The stage in progress, if its target is new and the beer is still on its way to it.
const PlacedStage* settlingStage(const analysis::RunInput& input,
                                 const analysis::RunFigures& figures)
{
    const analysis::JudgedBatch& judged = figures.judged;
    if (input.batch.ended || judged.stages.empty())
        return nullptr;
    const std::size_t last = judged.stages.size() - 1;
    const std::vector<TargetTurn> turns = analysis::targetTurns(judged.stages);
    const bool turned = !turns.empty() && turns.back().stage == last;
    const bool settling = figures.stages[last].settled == analysis::Settled::notYet;
    return turned && settling ? &judged.stages[last] : nullptr;
}

Instant after(Instant now, double hours)
{
    constexpr Hours longest{24.0 * 365.0}; // so that the sum is a time that can be written
    return now + toMilliseconds(std::min(Hours{hours}, longest));
}

std::optional<Instant> after(Instant now, const std::optional<double>& hours)
{
    return hours ? std::optional(after(now, *hours)) : std::nullopt;
}

/// Everything but the forecast and what follows from it.
ArrivalReview wayOf(const analysis::RunFigures& figures, const PlacedStage& stage,
                    const std::vector<TemperatureAt>& fall)
{
    ArrivalReview review;
    review.stage = figures.judged.stages.size() - 1;
    review.label = stage.label;
    review.target = stage.startTarget;
    const bool down = fall.front().celsius > stage.startTarget.celsius();
    review.turned = down ? Turned::down : Turned::up;
    review.edge = down ? stage.startTarget + stage.tolerance : stage.startTarget - stage.tolerance;
    review.crash = down && figures.crash == review.stage;
    review.turnedAt = stage.span.start;
    review.now = after(stage.span.start, fall.back().hours);
    review.beer = Temperature::celsius(fall.back().celsius);
    return review;
}

void addForecast(ArrivalReview& review, const ArrivalForecast& forecast)
{
    review.forecast = forecast;
    review.middle = after(review.now, forecast.middleH);
    review.low = after(review.now, forecast.lowH);
    review.high = after(review.now, forecast.highH);
}

} // namespace

Result<std::optional<ArrivalReview>> arrivalOf(const store::LogbookFile& logbook,
                                               const Snapshot& snapshot,
                                               const analysis::RunInput& input,
                                               const analysis::RunFigures& figures)
{
    const PlacedStage* stage = settlingStage(input, figures);
    if (!stage)
        return std::nullopt;
    ArrivalQuestion question;
    question.readings = fallOf(input.judging.beer, stage->span, Milliseconds::max());
    if (question.readings.empty())
        return std::nullopt;
    ArrivalReview review = wayOf(figures, *stage, question.readings);
    review.shared = wasShared(snapshot, input.batch, {review.turnedAt, review.now});
    review.logSilent = logbook.now() - review.now > input.judging.gapLimit;
    question.targetC = review.target.celsius();
    question.toleranceK = stage->tolerance.kelvins();
    question.litres = litresOf(input.batch);
    question.shared = review.shared;
    auto past = pastFalls(logbook, snapshot, input.batch, review.turned);
    HOLDBAND_TRY(past);
    question.past = std::move(*past);
    const ArrivalForecast forecast = analysis::arrivalForecastOf(question);
    if (forecast.answer == ArrivalAnswer::arrived || forecast.answer == ArrivalAnswer::noQuestion)
        return std::nullopt;
    addForecast(review, forecast);
    return review;
}

} // namespace holdband::results
