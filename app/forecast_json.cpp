#include "app/forecast_json.h"

#include "app/compare_json.h"
#include "app/json_values.h"

namespace holdband::app {

namespace {

using analysis::BatchPart;
using analysis::HoldOutlook;
using results::NextBatch;
using results::SetupForecast;

void putEnergy(Json& json, const analysis::EnergyForecast* energy)
{
    json["kwh"] = energy ? jsonNumber(energy->kwh) : Json(nullptr);
    json["kwh_low"] = energy ? jsonNumber(energy->low()) : Json(nullptr);
    json["kwh_high"] = energy ? jsonNumber(energy->high()) : Json(nullptr);
}

Json partsJson(const SetupForecast& setup)
{
    Json parts = Json::array();
    for (const BatchPart part : analysis::bothParts) {
        if (!results::partEnergy(setup, part))
            continue;
        Json json;
        json["part"] = part == BatchPart::beforeCrash ? "before crash" : "crash";
        putEnergy(json, results::partEnergy(setup, part));
        parts.push_back(std::move(json));
    }
    return parts;
}

Json stagesJson(const SetupForecast& setup)
{
    Json stages = Json::array();
    for (const analysis::StageForecast& stage : setup.stages) {
        Json json;
        json["stage"] = stage.label;
        putEnergy(json, &stage.energy);
        stages.push_back(std::move(json));
    }
    return stages;
}

void putCrash(Json& json, const std::optional<analysis::CrashDuration>& crash)
{
    json["crash_h"] = crash ? jsonNumber(crash->hours) : Json(nullptr);
    json["crash_h_low"] = crash ? jsonNumber(crash->low) : Json(nullptr);
    json["crash_h_high"] = crash ? jsonNumber(crash->high) : Json(nullptr);
}

void putCost(Json& json, const SetupForecast& setup)
{
    const bool known = setup.usable() && setup.cost;
    json["cost"] = known ? jsonNumber(setup.cost->amount) : Json(nullptr);
    json["cost_low"] = known ? jsonNumber(setup.cost->low) : Json(nullptr);
    json["cost_high"] = known ? jsonNumber(setup.cost->high) : Json(nullptr);
}

Json holdsJson(HoldOutlook hold)
{
    switch (hold) {
    case HoldOutlook::heldMore:
        return "was seen holding more";
    case HoldOutlook::atEdge:
        return "at the edge";
    case HoldOutlook::beyondSeen:
        return "beyond what was seen";
    case HoldOutlook::unknown:
        break;
    }
    return nullptr;
}

Json backtestJson(const analysis::Backtest& backtest)
{
    Json batches = Json::array();
    for (const analysis::BacktestedBatch& batch : backtest.batches) {
        const auto& total = batch.forecast.total;
        Json json;
        json["batch"] = batch.batch;
        json["forecast"] = total ? jsonNumber(total->kwh) : Json(nullptr);
        json["low"] = total ? jsonNumber(total->low()) : Json(nullptr);
        json["high"] = total ? jsonNumber(total->high()) : Json(nullptr);
        json["came"] = jsonNumber(batch.cameKwh);
        json["inside"] = batch.judged() ? Json(batch.inside()) : Json(nullptr);
        batches.push_back(std::move(json));
    }
    return batches;
}

Json setupJson(const NextBatch& review, std::size_t index)
{
    const SetupForecast& setup = review.setups[index];
    Json json;
    json["name"] = setup.setup.name;
    json["batches"] = setup.batches;
    putEnergy(json, setup.usable() ? &*setup.energy.total : nullptr);
    putCost(json, setup);
    json["parts"] = partsJson(setup);
    json["stages"] = stagesJson(setup);
    putCrash(json, setup.crash);
    json["need_lift_k"] = jsonNumber(review.neededLiftK);
    json["seen_lift_k"] = jsonNumber(setup.seenLiftK);
    json["holds"] = holdsJson(setup.hold);
    json["assumed"] = review.text.setups[index].assumed;
    json["backtest"] = backtestJson(setup.backtest);
    return json;
}

} // namespace

std::string forecastJson(const NextBatch& review)
{
    Json json = versionedJson();
    json["plan"] = review.plan.name;
    json["currency"] = jsonCurrency(review.settings.currency);
    json["room_mean_c"] = jsonNumber(review.room.meanCelsius);
    json["room_swing_c"] = jsonNumber(review.room.swingK);
    json["setups"] = Json::array();
    for (std::size_t i = 0; i < review.setups.size(); ++i)
        json["setups"].push_back(setupJson(review, i));
    if (review.setups.size() == 2)
        json["less"] = aheadJson(review.less);
    return jsonText(json);
}

} // namespace holdband::app
