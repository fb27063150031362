#include "core/results/run/batch_events.h"

#include "core/results/run/arrival_text.h"
#include "core/results/snapshot.h"
#include "core/store/sqlite/transaction.h"
#include "core/text/durations.h"
#include "core/text/phrase.h"
#include "core/text/times.h"

#include <utility>

namespace holdband::results {

using analysis::BandJudgement;
using analysis::Excursion;
using analysis::PlacedStage;

namespace {

std::optional<BeerArrived> arrivedIn(const analysis::RunFigures& figures)
{
    const auto& stages = figures.judged.stages;
    const auto turns = analysis::targetTurns(stages);
    const std::size_t last = stages.size() - 1;
    if (turns.empty() || turns.back().stage != last ||
        figures.stages[last].settled != analysis::Settled::arrived)
        return std::nullopt;
    const Instant start = stages[last].span.start;
    return BeerArrived{start, plusMs(start, *figures.stages[last].settledInMs),
                       stages[last].startTarget};
}

/// The last excursion, if only the end of the readings cut it.
std::optional<BeerOutside> outsideNow(const analysis::RunInput& input,
                                      const analysis::RunFigures& figures)
{
    const PlacedStage& stage = figures.judged.stages.back();
    const auto& excursions = figures.judged.asPlanned.stages.back().excursions;
    const bool inProgress =
        !stage.ended && stage.span.end >= input.judgedTo.value_or(input.span.end);
    if (!inProgress || excursions.empty() || excursions.back().cut != analysis::Cut::stageEnd)
        return std::nullopt;
    const Excursion& last = excursions.back();
    const Milliseconds length = wholeMs(last.outsideMs);
    if (length < input.judging.ignoreShorterThan)
        return std::nullopt;
    return BeerOutside{last.side, spanOf(stage, last).start, length};
}

/// The time of day, with the date if it is not within some hours of now (after it only if the clock
/// is behind).
std::string timeBefore(const BatchState& state, Instant at, Instant now)
{
    constexpr std::chrono::hours near{20};
    return std::chrono::abs(now - at) < near ? localClockText(at, state.zone)
                                             : localShortText(at, state.zone);
}

std::string arrivedSentence(const BatchState& state, Instant now)
{
    return Phrase::tr("The beer has been in its band of %1 since %2.")
        .with(shortTemperatureText(state.arrived->target, {state.unit, state.decimalSign}),
              timeBefore(state, state.arrived->at, now));
}

std::string outsideSentence(const BatchState& state)
{
    const std::string length = durationText(state.outside->length, state.decimalSign);
    return (state.outside->side == analysis::Side::above
                ? Phrase::tr("The beer has been above its band for %1.")
                : Phrase::tr("The beer has been below its band for %1."))
        .with(length);
}

Result<BatchState> readState(const store::LogbookFile& logbook, const Snapshot& snapshot,
                             const Batch& batch)
{
    auto input = judgingInputFor(logbook, snapshot, batch);
    HOLDBAND_TRY(input);
    BatchState state =
        batchStateOf(*input, analysis::judgeRun(*input, analysis::Detail::withoutQuantiles));
    state.sensor = batch.beerUses.empty() ? batch.beerSensor : batch.beerUses.back().sensor;
    const Sensor* sensor = snapshot.sensor(state.sensor);
    state.readByHand = sensor && sensor->readByHand;
    state.unit = snapshot.settings.temperatureUnit();
    state.zone = snapshot.zone;
    return state;
}

} // namespace

BatchState batchStateOf(const analysis::RunInput& input, const analysis::RunFigures& figures)
{
    BatchState state;
    state.batch = input.batch.name;
    state.gapLimit = input.judging.gapLimit;
    if (!input.judging.beer.empty())
        state.lastReading = input.judging.beer.at.back();
    if (figures.judged.stages.empty())
        return state;
    state.arrived = arrivedIn(figures);
    state.outside = outsideNow(input, figures);
    return state;
}

Result<std::vector<BatchState>> openBatchStates(const store::LogbookFile& logbook, char decimalSign)
{
    auto steady = store::Transaction::beginReading(logbook.database());
    HOLDBAND_TRY(steady);
    auto snapshot = readSnapshot(logbook);
    HOLDBAND_TRY(snapshot);
    std::vector<BatchState> states;
    for (const Batch& batch : snapshot->batches) {
        if (batch.ended)
            continue;
        auto state = readState(logbook, *snapshot, batch);
        HOLDBAND_TRY(state);
        state->decimalSign = decimalSign;
        states.push_back(std::move(*state));
    }
    return states;
}

bool LookClock::ranEvenly(Instant now)
{
    const std::optional<Instant> last = std::exchange(m_last, now);
    return !last || (now >= *last && now - *last < 3 * m_every);
}

std::vector<BatchEvent> eventsOf(const BatchState& state, Instant now)
{
    std::vector<BatchEvent> events;
    if (state.arrived)
        events.push_back({BatchEventKind::arrived, state.batch, state.arrived->turnedAt,
                          arrivedSentence(state, now)});
    if (state.outside)
        events.push_back(
            {BatchEventKind::outOfBand, state.batch, state.outside->since, outsideSentence(state)});
    if (state.lastReading && !state.readByHand && now - *state.lastReading > state.gapLimit)
        events.push_back({BatchEventKind::silent, state.batch, *state.lastReading,
                          Phrase::tr("No reading of %1 since %2.")
                              .with(state.sensor, timeBefore(state, *state.lastReading, now))});
    return events;
}

} // namespace holdband::results
