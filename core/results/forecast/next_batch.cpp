#include "core/results/forecast/next_batch.h"

#include "core/analysis/gravity.h"
#include "core/analysis/heat.h"
#include "core/assign_result.h"
#include "core/results/forecast/setup_history.h"
#include "core/results/prices.h"
#include "core/store/records/weighing.h"
#include "core/text/name_suggestions.h"
#include "core/text/phrase.h"

#include <algorithm>

namespace holdband::results {

using analysis::BatchPart;
using analysis::Lift;
using analysis::PlacedStage;
using analysis::TypedRoom;

namespace {

constexpr std::size_t shapeSteps = 24;

/// The plan in its room: the mean over the possible beginnings, and the hardest of them to hold.
struct PlannedWeather {
    std::vector<Lift> lifts; ///< of each stage
    std::optional<double> neededK;
};

/// What one review needs.
struct ForecastReader {
    const store::LogbookFile& logbook;
    const Snapshot& snapshot;
    store::SeriesFingerprints fingerprints;
    ForecastRules rules;
    ForecastCache* cache;
};

PlannedWeather weatherAt(const std::vector<PlacedStage>& stages, const analysis::PlannedRoom& room)
{
    return {analysis::plannedLifts(stages, room), analysis::neededLift(stages, room)};
}

void add(Lift& sum, const Lift& lift, double share)
{
    sum.coolingKh += share * lift.coolingKh;
    sum.heatingKh += share * lift.heatingKh;
    sum.knownHours += share * lift.knownHours;
    sum.spanHours += share * lift.spanHours;
}

PlannedWeather weatherOverStarts(const PlacedPlan& placed, const RoomRecord& record,
                                 const std::vector<Instant>& starts)
{
    const analysis::PlannedRoom room = roomForPlan(record, placed.length());
    PlannedWeather mean{std::vector<Lift>(placed.stages.size()), std::nullopt};
    for (const Instant start : starts) {
        const PlannedWeather one = weatherAt(placed.at(start), room);
        for (std::size_t i = 0; i < one.lifts.size(); ++i)
            add(mean.lifts[i], one.lifts[i], 1.0 / static_cast<double>(starts.size()));
        if (one.neededK)
            mean.neededK = std::max(mean.neededK.value_or(*one.neededK), *one.neededK);
    }
    return mean;
}

Done checkTyped(const TypedRoom& room)
{
    if (!(room.meanCelsius >= -50.0 && room.meanCelsius <= 60.0))
        return dataProblem(Phrase::tr("no room is as cold or as warm as that"), {},
                           Phrase::tr("check the room's temperature and its unit"));
    if (!(room.swingK >= 0.0 && room.swingK <= 60.0))
        return dataProblem(Phrase::tr("the room's swing is the difference between the lowest and "
                                      "the highest temperature of a day, so it is not negative"));
    return {};
}

/// Fills in the room; the plan's weather in it.
Result<PlannedWeather> weatherOf(const ForecastReader& reader, const NextBatchRequest& request,
                                 NextBatch& review)
{
    if (const auto* typed = std::get_if<TypedRoom>(&request.room)) {
        HOLDBAND_TRY(checkTyped(*typed));
        review.room.meanCelsius = typed->meanCelsius;
        review.room.swingK = typed->swingK;
        return weatherAt(review.placed.stages, *typed);
    }
    const auto& stretch = std::get<RoomStretch>(request.room);
    auto record = roomRecord(reader.logbook, reader.snapshot, stretch.sensor, stretch.span);
    HOLDBAND_TRY(record);
    const std::vector<Instant> starts = possibleStarts(*record, review.placed.length());
    PlannedWeather weather = weatherOverStarts(review.placed, *record, starts);
    review.room.meanCelsius = record->meanCelsius;
    review.room.swingK = record->swingK();
    review.room.starts = starts.size();
    review.room.repeated = review.placed.length() > record->span.end - record->span.start;
    review.room.record = std::move(*record);
    return weather;
}

analysis::PartHeat heatOfPlan(const NextPlan& plan, const std::vector<PlacedStage>& stages)
{
    analysis::PartHeat heat;
    if (!plan.volume)
        return heat;
    if (plan.originalGravity && plan.finalGravity)
        heat[BatchPart::beforeCrash] = analysis::fermentationHeat(
            analysis::extractFermentedKg(*plan.volume, *plan.originalGravity, *plan.finalGravity));
    heat[BatchPart::crash] = analysis::crashTargetHeat(stages, *plan.volume);
    return heat;
}

std::optional<analysis::CrashPlan> crashPlanOf(const NextPlan& plan,
                                               const std::vector<PlacedStage>& stages)
{
    const std::optional<std::size_t> crash = analysis::crashStage(stages);
    if (!crash)
        return std::nullopt;
    const PlacedStage& before = stages[*crash - 1];
    const auto length = static_cast<double>((before.span.end - before.span.start).count());
    return analysis::CrashPlan{before.targetCelsiusAt(length),
                               stages[*crash].startTarget.celsius() +
                                   stages[*crash].tolerance.kelvins(),
                               plan.volume ? plan.volume->litres() : 0.0};
}

/// Where a volume is unknown, all count as alike.
void addCrash(SetupForecast& made, std::vector<analysis::PastCrash> past, analysis::CrashPlan plan,
              bool shared)
{
    const bool unknown = !(plan.litres > 0.0) ||
                         std::any_of(past.begin(), past.end(),
                                     [](const auto& crash) { return !(crash.litres > 0.0); });
    if (unknown) {
        plan.litres = 1.0;
        for (analysis::PastCrash& crash : past)
            crash.litres = 1.0;
    }
    if (!(plan.fromCelsius > plan.toCelsius))
        return;
    made.crash = analysis::crashDuration(past, plan, shared);
    made.crashShape = analysis::crashShape(past, plan, shapeSteps);
}

/// The tariff that applies at an instant.
const Tariff& tariffAt(const LogbookSettings& settings, Instant at)
{
    const Tariff* tariff = &settings.tariff;
    for (const TariffChange& change : settings.tariffChanges) {
        if (change.from <= at)
            tariff = &change.tariff;
    }
    return *tariff;
}

/// The mean price of each stage by its hours, at today's tariff; absent where some hour has none.
std::optional<std::vector<double>> meanPrices(const ForecastReader& reader,
                                              const std::vector<PlacedStage>& stages)
{
    const Tariff& tariff = tariffAt(reader.snapshot.settings, reader.logbook.now());
    std::vector<double> means;
    for (const PlacedStage& stage : stages) {
        double paid = 0.0;
        double hours = 0.0;
        for (const analysis::PricedSpan& part :
             pricesOver(tariff, reader.snapshot.zone, stage.span)) {
            paid += part.pricePerKwh * part.span.hours();
            hours += part.span.hours();
        }
        if (hours + 1e-6 < stage.span.hours() || !(hours > 0.0))
            return std::nullopt;
        means.push_back(paid / hours);
    }
    return means;
}

Result<SetupForecast> forecastOf(ForecastReader& reader, const Setup& setup,
                                 const NextBatch& review, const analysis::ForecastPlan& plan,
                                 const PlannedWeather& weather)
{
    const bool shared = review.plan.shared;
    auto history = loadHistory({&reader.logbook, &reader.snapshot, &reader.fingerprints}, setup,
                               shared, reader.rules, reader.cache);
    HOLDBAND_TRY(history);
    SetupForecast made;
    made.setup = setup;
    made.place = static_cast<std::size_t>(&setup - reader.snapshot.setups.data());
    made.batches = history->basis.batches.size();
    made.otherKind = history->otherKind;
    made.unmetered = history->unmetered;
    made.hasMeter = history->hasMeter;
    made.energy = analysis::forecast(history->basis, plan);
    if (review.crashPlan)
        addCrash(made, std::move(history->crashes), *review.crashPlan, shared);
    const auto arrival = made.crash ? std::optional(made.crash->hours) : std::nullopt;
    made.stages =
        analysis::stageForecasts(made.energy, review.placed.stages, weather.lifts, arrival);
    if (const auto prices = meanPrices(reader, review.placed.stages))
        made.cost = analysis::forecastCost(made.energy, made.stages, *prices);
    made.seenLiftK = history->seenLiftK;
    made.hold = analysis::holdOutlook(weather.neededK, made.seenLiftK);
    made.backtest = analysis::backtest(history->basis);
    return made;
}

Result<std::vector<const Setup*>> wantedSetups(const Snapshot& snapshot,
                                               const std::vector<std::string>& names)
{
    std::vector<const Setup*> wanted;
    std::vector<std::string> known;
    for (const Setup& setup : snapshot.setups) {
        known.push_back(setup.name);
        if (names.empty() && !setup.retired)
            wanted.push_back(&setup);
    }
    for (const std::string& name : names) {
        const Setup* setup = snapshot.setup(name);
        if (!setup)
            return dataProblem(Phrase::tr("there is no setup \"%1\"").with(name), {},
                               suggestion(name, known));
        if (std::find(wanted.begin(), wanted.end(), setup) == wanted.end())
            wanted.push_back(setup);
    }
    if (wanted.empty())
        return dataProblem(Phrase::tr("the logbook has no setup"), {},
                           Phrase::tr("add one under Equipment"));
    return wanted;
}

std::optional<analysis::Ahead> lessOf(const std::vector<SetupForecast>& setups)
{
    if (setups.size() != 2 || !setups[0].usable() || !setups[1].usable())
        return std::nullopt;
    const analysis::EnergyForecast& a = *setups[0].energy.total;
    const analysis::EnergyForecast& b = *setups[1].energy.total;
    if (a.high() < b.low())
        return analysis::Ahead::a;
    return b.high() < a.low() ? analysis::Ahead::b : analysis::Ahead::tooClose;
}

Instant startOf(const NextBatchRequest& request, Instant now)
{
    const auto* stretch = std::get_if<RoomStretch>(&request.room);
    return stretch ? stretch->span.start : now;
}

Result<NextBatch> reviewed(ForecastReader& reader, const NextBatchRequest& request)
{
    auto setups = wantedSetups(reader.snapshot, request.setups);
    HOLDBAND_TRY(setups);
    NextBatch review;
    review.settings = reader.snapshot.settings;
    review.zone = reader.snapshot.zone;
    review.plan = request.plan;
    HOLDBAND_TRY(assignResult(placedPlan(request.plan, startOf(request, reader.logbook.now())),
                              review.placed));
    auto weather = weatherOf(reader, request, review);
    HOLDBAND_TRY(weather);
    review.neededLiftK = weather->neededK;
    review.crashPlan = crashPlanOf(review.plan, review.placed.stages);
    const auto parts = analysis::plannedParts(review.placed.stages, weather->lifts,
                                              heatOfPlan(review.plan, review.placed.stages));
    if (!parts)
        return dataProblem(Phrase::tr("the room's record has too many gaps in that time"), {},
                           Phrase::tr("choose another stretch, or type its temperature"));
    const analysis::ForecastPlan plan{
        *parts, std::holds_alternative<TypedRoom>(request.room) ? analysis::typedRoomDoubtK : 0.0};
    for (const Setup* setup : *setups) {
        auto made = forecastOf(reader, *setup, review, plan, *weather);
        HOLDBAND_TRY(made);
        review.setups.push_back(std::move(*made));
    }
    review.less = lessOf(review.setups);
    review.text = nextBatchText(review, request.decimalSign);
    return review;
}

} // namespace

const analysis::EnergyForecast* partEnergy(const SetupForecast& setup, BatchPart part)
{
    const auto& figure = setup.energy.parts[part];
    return figure ? &figure->energy : nullptr;
}

std::optional<BatchForecast> batchForecast(const NextBatch& review, const SetupForecast& setup,
                                           Instant made)
{
    if (!setup.usable())
        return std::nullopt;
    const analysis::EnergyForecast& total = *setup.energy.total;
    BatchForecast kept;
    kept.made = made;
    kept.energy = {total.kwh, total.low(), total.high()};
    if (setup.crash)
        kept.crashHours = ForecastFigure{setup.crash->hours, setup.crash->low, setup.crash->high};
    kept.room = Temperature::celsius(review.room.meanCelsius);
    return kept;
}

Result<NextBatch> reviewNextBatch(const store::LogbookFile& logbook,
                                  const NextBatchRequest& request, ForecastCache* cache)
{
    auto steady = store::Transaction::beginReading(logbook.database());
    HOLDBAND_TRY(steady);
    auto snapshot = readSnapshot(logbook);
    HOLDBAND_TRY(snapshot);
    Weighing weighing;
    HOLDBAND_TRY(assignResult(store::readWeighing(logbook), weighing));
    if (cache)
        cache->begin(logbook, *snapshot);
    ForecastReader reader{logbook,
                          *snapshot,
                          store::SeriesFingerprints(logbook),
                          {toMilliseconds(weighing.quietAfter.value_or(usualQuietAfter))},
                          cache};
    return reviewed(reader, request);
}

} // namespace holdband::results
