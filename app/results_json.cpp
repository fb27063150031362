#include "app/results_json.h"

#include "app/json_values.h"
#include "core/results/run/arrival_text.h"
#include "core/results/run/causes.h"
#include "core/results/run/sampling_text.h"
#include "core/text/times.h"

namespace holdband::app {

namespace {

using analysis::EnergyFigure;

double hours(double ms)
{
    return ms / msPerHour;
}

Json instant(const std::optional<Instant>& at)
{
    return at ? Json(rfc3339Utc(*at)) : Json(nullptr);
}

Json excursionJson(const results::RunReview& review, std::size_t stage, std::size_t index)
{
    const analysis::JudgedBatch& judged = review.figures.judged;
    const analysis::Excursion& excursion = judged.asPlanned.stages[stage].excursions[index];
    const Span span = spanOf(judged.stages[stage], excursion);
    const ExcursionCause* cause = results::causeOf(review, stage, index);
    const analysis::SamplingDoubt hidden = results::samplingDoubtOf(judged, stage, excursion);
    const char* cut = excursion.cut == analysis::Cut::gap        ? "gap"
                      : excursion.cut == analysis::Cut::stageEnd ? "stage end"
                                                                 : "";
    return {
        {"start", rfc3339Utc(span.start)},
        {"end", rfc3339Utc(span.end)},
        {"side", excursion.side == analysis::Side::above ? "above" : "below"},
        {"hours", hours(excursion.outsideMs)},
        {"peak_c", excursion.peak},
        {"area_ch", hours(excursion.areaMs)},
        {"log_hides_c", hidden.peak},
        {"log_hides_h", hours(hidden.lengthMs)},
        {"cut", cut},
        {"cause", cause && cause->cause ? Json(results::causeName(*cause->cause)) : Json(nullptr)},
        {"note", cause ? cause->note : std::string()}};
}

void putStatistics(Json& json, const analysis::StageStatistics& statistics)
{
    const analysis::TimeMoments& moments = statistics.deviation;
    const auto of = [&](double value) { return moments.empty() ? Json(nullptr) : Json(value); };
    const auto quantile = [&](std::size_t index) {
        return statistics.quantiles ? Json((*statistics.quantiles)[index]) : Json(nullptr);
    };
    json["mean_dev_c"] = of(moments.mean());
    json["sd_c"] = moments.empty() ? Json(nullptr) : Json(moments.standardDeviation());
    json["rms_dev_c"] = moments.empty() ? Json(nullptr) : Json(moments.rootMeanSquare());
    json["mean_abs_dev_c"] = moments.empty() ? Json(nullptr) : Json(moments.meanAbsolute());
    json["min_c"] = jsonNumber(statistics.minimum);
    json["max_c"] = jsonNumber(statistics.maximum);
    json["p5_dev_c"] = quantile(0);
    json["p50_dev_c"] = quantile(1);
    json["p95_dev_c"] = quantile(2);
}

void putArrival(Json& json, const analysis::BandJudgement& judged, Instant start)
{
    json["arrived"] = judged.arrival ? instant(plusMs(start, judged.arrival->ms)) : Json(nullptr);
    json["arrival_seen"] = judged.arrival ? Json(judged.arrival->seen) : Json(nullptr);
}

Json stageJson(const results::RunReview& review, std::size_t i)
{
    const analysis::JudgedBatch& batch = review.figures.judged;
    const analysis::PlacedStage& stage = batch.stages[i];
    const analysis::BandJudgement& judged = batch.asPlanned.stages[i];
    const analysis::StageFigures& figures = review.figures.stages[i];
    const bool ramp = stage.kind == StageKind::ramp;
    Json json;
    json["stage"] = stage.label;
    json["target_c"] = ramp ? Json(nullptr) : Json(stage.startTarget.celsius());
    json["tolerance_c"] = stage.tolerance.kelvins();
    json["start"] = rfc3339Utc(stage.span.start);
    json["end"] = rfc3339Utc(stage.span.end);
    putArrival(json, judged, stage.span.start);
    json["settling_h"] = hours(figures.settlingMs);
    json["settled_in_h"] = figures.settledInMs ? Json(hours(*figures.settledInMs)) : Json(nullptr);
    json["hold_h"] = hours(judged.holdMs);
    json["covered_h"] = hours(judged.coveredMs);
    json["coverage"] = jsonNumber(figures.coverage);
    json["inside_h"] = hours(judged.insideMs);
    json["above_h"] = hours(judged.aboveMs);
    json["below_h"] = hours(judged.belowMs);
    putStatistics(json, batch.statistics[i]);
    json["overshoot_c"] = jsonNumber(figures.overshoot);
    json["settle_rate_c_per_h"] =
        figures.ratePerMs ? Json(*figures.ratePerMs * msPerHour) : Json(nullptr);
    json["excursions"] = Json::array();
    for (std::size_t k = 0; k < judged.excursions.size(); ++k)
        json["excursions"].push_back(excursionJson(review, i, k));
    return json;
}

/// null where nothing is on its way to a new target.
Json arrivalJson(const std::optional<results::ArrivalReview>& arrival)
{
    if (!arrival)
        return nullptr;
    const analysis::ArrivalForecast& forecast = arrival->forecast;
    return {{"stage", arrival->label},
            {"answer", results::arrivalAnswerName(forecast.answer)},
            {"as_of", rfc3339Utc(arrival->now)},
            {"low_h", jsonNumber(forecast.lowH)},
            {"middle_h", jsonNumber(forecast.middleH)},
            {"high_h", jsonNumber(forecast.highH)},
            {"at", instant(arrival->middle)},
            {"at_low", instant(arrival->low)},
            {"at_high", instant(arrival->high)},
            {"levels_off_c", jsonNumber(forecast.levelsOffC)},
            {"past_crashes", forecast.pastCrashes}};
}

void putEnergy(Json& json, const EnergyFigure& energy)
{
    const bool any = energy.any();
    json["kwh"] = any ? jsonNumber(energy.kwh) : Json(nullptr);
    json["kwh_low"] = any ? jsonNumber(energy.low) : Json(nullptr);
    json["kwh_high"] = any ? jsonNumber(energy.high) : Json(nullptr);
    json["metered_h"] = hours(energy.meteredMs());
}

Json stageEnergyJson(const analysis::SpanEnergy& stage)
{
    Json json;
    json["stage"] = stage.label;
    putEnergy(json, stage.energy);
    json["mean_w"] = jsonNumber(analysis::meanWatts(stage.energy));
    return json;
}

Json dayJson(const analysis::SpanEnergy& day)
{
    Json json;
    json["day"] = day.label;
    json["hours"] = day.span.hours();
    putEnergy(json, day.energy);
    return json;
}

} // namespace

std::string verdictJson(const results::RunReview& review)
{
    const analysis::JudgedBatch& judged = review.figures.judged;
    const analysis::BandTotals& totals = judged.asPlanned.totals;
    Json json = versionedJson();
    json["batch"] = review.batch().name;
    json["verdict"] = results::verdictName(judged.asPlanned.verdict);
    json["sure"] = judged.sure ? Json(*judged.sure) : Json(nullptr);
    json["missed"] = judged.asPlanned.missed;
    json["hold_h"] = hours(totals.holdMs);
    json["covered_h"] = hours(totals.coveredMs);
    json["coverage"] = jsonNumber(totals.coverage());
    json["inside_h"] = hours(totals.insideMs);
    json["above_h"] = hours(totals.aboveMs);
    json["below_h"] = hours(totals.belowMs);
    const auto& leftOut = review.figures.leftOut;
    json["excluded_h"] = hours(leftOut ? leftOut->ms : 0.0);
    json["excluded_changes_verdict"] = leftOut && leftOut->changesVerdict;
    json["arrival"] = arrivalJson(review.arrival);
    json["stages"] = Json::array();
    for (std::size_t i = 0; i < judged.stages.size(); ++i)
        json["stages"].push_back(stageJson(review, i));
    return jsonText(json);
}

std::string energyJson(const results::RunReview& review)
{
    const analysis::RunEnergy& energy = review.figures.energy;
    const auto& metered = energy.whole.metered;
    Json json = versionedJson();
    json["batch"] = review.batch().name;
    json["currency"] = jsonCurrency(review.settings.currency);
    putEnergy(json, energy.whole);
    json["partly_metered"] = energy.partlyMetered();
    json["metered_from"] = metered.empty() ? Json(nullptr) : instant(metered.front().start);
    json["metered_to"] = metered.empty() ? Json(nullptr) : instant(metered.back().end);
    json["mean_w"] = jsonNumber(energy.meanWatts());
    json["shared_with"] = Json::array();
    for (const analysis::SharedTime& shared : energy.sharedWith)
        json["shared_with"].push_back(shared.batch);
    json["cost"] = energy.cost ? jsonNumber(energy.cost->amount) : Json(nullptr);
    json["cost_low"] = energy.cost ? jsonNumber(energy.cost->low) : Json(nullptr);
    json["cost_high"] = energy.cost ? jsonNumber(energy.cost->high) : Json(nullptr);
    json["stages"] = Json::array();
    for (const analysis::SpanEnergy& stage : energy.stages)
        json["stages"].push_back(stageEnergyJson(stage));
    json["days"] = Json::array();
    for (const analysis::SpanEnergy& day : energy.days)
        json["days"].push_back(dayJson(day));
    json["cooling_lift_ch"] = energy.lift ? jsonNumber(energy.lift->coolingKh) : Json(nullptr);
    json["heating_lift_ch"] = energy.lift ? jsonNumber(energy.lift->heatingKh) : Json(nullptr);
    json["kwh_per_cday"] = jsonNumber(energy.kwhPerDegreeDay);
    return jsonText(json);
}

std::string batchesJson(const results::BatchList& list)
{
    Json json = Json::array();
    for (const results::BatchLine& line : list.batches)
        json.push_back({{"name", line.name},
                        {"setup", line.setup},
                        {"pitched", rfc3339Utc(line.pitched)},
                        {"ended", instant(line.ended)},
                        {"verdict", results::verdictName(line.verdict)}});
    return jsonText(json);
}

} // namespace holdband::app
