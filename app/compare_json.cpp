#include "app/compare_json.h"

#include "core/text/times.h"

namespace holdband::app {

Json aheadJson(const std::optional<analysis::Ahead>& ahead)
{
    if (!ahead)
        return nullptr;
    if (*ahead == analysis::Ahead::tooClose)
        return "too close to call";
    return *ahead == analysis::Ahead::a ? "a" : "b";
}

namespace {

using analysis::Bounded;
using results::SideBySide;

void putBounded(Json& json, const std::string& name, const std::optional<Bounded>& figure)
{
    json[name] = figure ? jsonNumber(figure->value) : Json(nullptr);
    json[name + "_low"] = figure ? jsonNumber(figure->low) : Json(nullptr);
    json[name + "_high"] = figure ? jsonNumber(figure->high) : Json(nullptr);
}

void putInterval(Json& json, const std::string& name, const analysis::Interval95& interval)
{
    json[name] = jsonNumber(interval.value);
    json[name + "_low"] = jsonNumber(interval.low());
    json[name + "_high"] = jsonNumber(interval.high());
}

Json measureJson(const analysis::Measure& measure, const LogbookSettings& settings)
{
    const bool money = measure.rule.unit == "money";
    Json json;
    json["measure"] = measure.rule.name;
    json["unit"] = money ? settings.currency : std::string(measure.rule.unit);
    json["better"] = measure.rule.better == analysis::Better::less ? "less" : "more";
    putBounded(json, "a", measure.a);
    putBounded(json, "b", measure.b);
    json["ratio_a_to_b"] = measure.ratio ? jsonNumber(measure.ratio->value) : Json(nullptr);
    json["ratio_low"] = measure.ratio ? jsonNumber(measure.ratio->low) : Json(nullptr);
    json["ratio_high"] = measure.ratio ? jsonNumber(measure.ratio->high) : Json(nullptr);
    json["ahead"] = aheadJson(measure.ahead);
    return json;
}

Json alignmentJson(const SideBySide& review)
{
    const results::Alignment& alignment = review.alignment;
    return {{"from", alignment.stage ? Json(*alignment.stage) : Json(nullptr)},
            {"common_stages", alignment.offered},
            {"common_metered_h", review.ofSetups ? Json(nullptr) : Json(alignment.commonHours)}};
}

Json curveJson(const SideBySide& review)
{
    Json curve = Json::array();
    for (const analysis::RatioPoint& point : review.ratioCurve) {
        Json json;
        json["elapsed_h"] = point.elapsedHours;
        putBounded(json, "a_kwh", point.a);
        putBounded(json, "b_kwh", point.b);
        putBounded(json, "ratio", point.ratio);
        curve.push_back(std::move(json));
    }
    return curve;
}

Json setupFiguresJson(const results::SetupFigures& figures)
{
    Json json;
    json["batches"] = Json::array();
    for (const results::BatchFigure& batch : figures.batches)
        json["batches"].push_back({{"batch", batch.batch}, {"value", batch.value}});
    json["mean"] = jsonNumber(figures.mean);
    json["low_uncut"] = jsonNumber(figures.low);
    json["high_uncut"] = jsonNumber(figures.high);
    json["cut"] = figures.cut;
    return json;
}

Json batchesJson(const SideBySide& review)
{
    Json json = Json::array();
    for (std::size_t i = 0; i < review.batchFigures.size(); ++i)
        json.push_back({{"measure", review.measures[i].rule.name},
                        {"a", setupFiguresJson(review.batchFigures[i].a)},
                        {"b", setupFiguresJson(review.batchFigures[i].b)}});
    return json;
}

Json idleJson(const SideBySide& review)
{
    Json json = Json::array();
    for (const results::IdleFigures& idle : review.idle) {
        Json one;
        one["setup"] = idle.setup;
        one["idle_h"] = idle.hours;
        one["metered_h"] = idle.meteredHours;
        putBounded(one, "kwh", idle.kwh);
        one["mean_w"] = jsonNumber(idle.meanWatts);
        json.push_back(std::move(one));
    }
    return json;
}

Json pairsJson(const analysis::LiftModel& model)
{
    Json json = Json::array();
    for (const analysis::WeatherPair& pair : model.pairs)
        json.push_back({{"from", rfc3339Utc(pair.span.start)},
                        {"to", rfc3339Utc(pair.span.end)},
                        {"batches", pair.of},
                        {"lift_c", pair.liftK},
                        {"mean_w", pair.watts},
                        {"hours", pair.hours()}});
    return json;
}

void putLine(Json& json, const analysis::LiftInterval& line)
{
    const analysis::LinearFit& fit = line.fit();
    putInterval(json, "standing_w", line.intercept());
    putInterval(json, "w_per_c", line.slope());
    json["interval_from"] =
        line.source() == analysis::SpreadSource::byBatch ? "batches" : "assumed spread";
    json["groups"] = line.groups();
    json["residual_sd_w"] = fit.residualSd;
    json["r_squared"] = fit.rSquared;
    json["cv_rmse"] = jsonNumber(fit.cvRmse());
}

Json modelJson(const results::SideModel& side, const results::SideModelText& text)
{
    Json json;
    json["n"] = side.model.pairs.size();
    json["least_lift_c"] = side.model.pairs.empty() ? Json(nullptr) : Json(side.model.leastLift);
    json["most_lift_c"] = side.model.pairs.empty() ? Json(nullptr) : Json(side.model.mostLift);
    if (side.model.interval)
        putLine(json, *side.model.interval);
    if (side.atReference) {
        putInterval(json, "mean_w", side.atReference->watts);
        putInterval(json, "one_more_w", side.atReference->oneMoreWatts);
        putInterval(json, "kwh", side.atReference->kwh);
        putInterval(json, "one_more_kwh", side.atReference->oneMoreKwh);
        json["outside_seen_lift"] = side.atReference->outside;
    }
    json["decides"] = side.model.decides();
    json["cautions"] = text.cautions;
    json["points"] = pairsJson(side.model);
    return json;
}

Json weatherJson(const SideBySide& review)
{
    const results::SameWeather& weather = review.weather;
    const results::SameWeatherText& text = review.text.weather;
    Json json;
    json["reference_lift_c"] = weather.hold ? Json(weather.hold->liftK) : Json(nullptr);
    json["reference_h"] = weather.hold ? Json(weather.hold->hours) : Json(nullptr);
    json["reference_lift_is_mean"] = weather.liftIsMean;
    json["reference_h_is_mean"] = weather.hoursAreMean;
    json["a"] = modelJson(weather.a, text.a);
    json["b"] = modelJson(weather.b, text.b);
    putBounded(json, "difference_w", weather.difference);
    putBounded(json, "ratio_a_to_b", weather.ratio);
    json["ahead"] = aheadJson(weather.ahead);
    json["sentence"] = text.sentence;
    json["remarks"] = text.remarks;
    return json;
}

Json crossingJson(const analysis::Crossing& crossing)
{
    const bool crosses = crossing.kind == analysis::CrossingKind::crosses;
    return {{"batches", crosses ? Json(crossing.batches) : Json("never")},
            {"batches_low", jsonNumber(crossing.earliest)},
            {"batches_high", jsonNumber(crossing.latest)},
            {"sure", crossing.sure},
            {"cheaper_first", aheadJson(crossing.cheaperFirst)}};
}

Json moneyJson(const SideBySide& review)
{
    const results::Money& money = review.money;
    const results::MoneyText& text = review.text.money;
    Json json;
    json["parts_a"] = jsonNumber(money.partsA);
    json["parts_b"] = jsonNumber(money.partsB);
    json["batches_per_year"] = jsonNumber(money.batchesPerYear);
    json["scenarios"] = Json::array();
    for (std::size_t i = 0; i < money.scenarios.size(); ++i) {
        const results::CostScenario& scenario = money.scenarios[i];
        Json one;
        one["name"] = text.scenarios[i].name;
        putBounded(one, "per_batch_a", scenario.a.perBatch);
        putBounded(one, "per_batch_b", scenario.b.perBatch);
        one["crossing"] = crossingJson(scenario.crossing);
        one["sentence"] = text.scenarios[i].sentence;
        json["scenarios"].push_back(std::move(one));
    }
    json["why_none"] = text.why.empty() ? Json(nullptr) : Json(text.why);
    return json;
}

Json criterionJson(const results::Criterion& criterion, const std::string& how,
                   const analysis::Turn& turn)
{
    return {{"criterion", criterion.name},
            {"measured", criterion.measured()},
            {"weight", criterion.weight},
            {"a", criterion.scores ? Json(criterion.scores->a) : Json(nullptr)},
            {"b", criterion.scores ? Json(criterion.scores->b) : Json(nullptr)},
            {"how", how},
            {"removal_changes_lead", turn.byRemoval},
            {"level_at_weight", jsonNumber(turn.weightToTie)}};
}

Json judgementJson(const SideBySide& review)
{
    const results::Judgement& judgement = review.judgement;
    const results::JudgementText& text = review.text.judgement;
    const auto& totals = judgement.sheet.totals;
    Json json;
    json["criteria"] = Json::array();
    for (std::size_t i = 0; i < judgement.criteria.size(); ++i)
        json["criteria"].push_back(
            criterionJson(judgement.criteria[i], text.criteria[i].how, judgement.sheet.turns[i]));
    json["total_a"] = totals ? Json(totals->a) : Json(nullptr);
    json["total_b"] = totals ? Json(totals->b) : Json(nullptr);
    json["lead"] = !totals ? Json(nullptr)
                   : judgement.sheet.lead == analysis::Ahead::tooClose
                       ? Json("level")
                       : aheadJson(judgement.sheet.lead);
    json["sentence"] = text.sentence;
    json["turning"] = text.turning;
    return json;
}

} // namespace

std::string compareJson(const SideBySide& review)
{
    Json json = versionedJson();
    json["a"] = review.a;
    json["b"] = review.b;
    json["currency"] = jsonCurrency(review.settings.currency);
    json["headline"] = review.glance.answer;
    json["measures"] = Json::array();
    for (const analysis::Measure& measure : review.measures)
        json["measures"].push_back(measureJson(measure, review.settings));
    json["notes"] = Json::array();
    for (std::size_t i = 0; i < review.notes.size(); ++i)
        json["notes"].push_back({{"note", review.text.notes[i].note},
                                 {"effect", review.text.notes[i].effect},
                                 {"measure", results::measureName(review.notes[i].touches)}});
    json["energy_sentence"] = review.text.energySentence;
    json["temperature_sentence"] = review.text.temperatureSentence;
    json["of_setups"] = review.ofSetups;
    json["alignment"] = alignmentJson(review);
    json["ratio_curve"] = curveJson(review);
    json["batches_a"] = review.batchesA;
    json["batches_b"] = review.batchesB;
    json["each_batch"] = batchesJson(review);
    json["idle"] = idleJson(review);
    json["same_weather"] = weatherJson(review);
    json["money"] = moneyJson(review);
    json["judgement"] = judgementJson(review);
    return jsonText(json);
}

} // namespace holdband::app
