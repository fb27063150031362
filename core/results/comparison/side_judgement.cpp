// The judgement sheet: criteria with weights and scores, who leads, and what would change that.
#include "core/analysis/bounded.h"
#include "core/results/comparison/side_models.h"
#include "core/results/comparison/side_sentences.h"

#include <algorithm>

namespace holdband::results {

using analysis::Measure;
using analysis::MeasureId;

namespace {

Measure inSameWeather(const SideBySide& review)
{
    Measure power = measureOf(review, MeasureId::meanPower);
    power.a = notNegative(review.weather.a.atReference->watts);
    power.b = notNegative(review.weather.b.atReference->watts);
    power.ahead = review.weather.ahead;
    return power;
}

/// By the same weather if that decides, else by degree-days, else as used.
ScoredFigure energyFigure(const SideBySide& review)
{
    if (review.weather.ahead)
        return {inSameWeather(review), EnergyBasis::sameWeather};
    const Measure& perDay = measureOf(review, MeasureId::energyPerDegreeDay);
    if (perDay.a && perDay.b)
        return {perDay, EnergyBasis::perDegreeDay};
    return {measureOf(review, MeasureId::energy)};
}

/// The energy's figure at the mean price that both paid for a kWh; as used it is what was paid.
ScoredFigure costFigure(const SideBySide& review, const ScoredFigure& energy)
{
    Measure cost = measureOf(review, MeasureId::cost);
    const std::optional<double> price = meanPriceOfBoth(review);
    if (energy.basis == EnergyBasis::asUsed || !price)
        return {cost};
    cost.a = analysis::scaled(*energy.measure.a, *price);
    cost.b = analysis::scaled(*energy.measure.b, *price);
    cost.ahead = energy.measure.ahead;
    return {cost, energy.basis};
}

ScoredFigure settlingFigure(const SideBySide& review)
{
    const Measure& crash = measureOf(review, MeasureId::settlingCrash);
    return {crash.a && crash.b ? crash : measureOf(review, MeasureId::settlingFirst)};
}

double weightOf(const SideBySide& review, const std::string& name)
{
    const auto found = review.weighing.weights.find(name);
    return found == review.weighing.weights.end() ? usualWeight : found->second;
}

Criterion criterionOf(const SideBySide& review, const std::string& name)
{
    Criterion criterion;
    criterion.name = name;
    criterion.weight = weightOf(review, name);
    return criterion;
}

Criterion ofFigure(const SideBySide& review, const char* name, ScoredFigure figure)
{
    Criterion criterion = criterionOf(review, name);
    criterion.scores = analysis::scoresOf(figure.measure);
    criterion.figure = std::move(figure);
    return criterion;
}

std::vector<Criterion> measuredCriteria(const SideBySide& review)
{
    const auto by = [&](const char* name, MeasureId id) {
        return ofFigure(review, name, {measureOf(review, id)});
    };
    const ScoredFigure energy = energyFigure(review);
    return {by("temperature", MeasureId::meanAbsoluteDeviation),
            by("time in the band", MeasureId::insideShare),
            ofFigure(review, "settling", settlingFigure(review)),
            ofFigure(review, "energy", energy),
            ofFigure(review, "energy cost", costFigure(review, energy)),
            by("parts", MeasureId::parts)};
}

std::optional<double> ratingOf(const Setup& setup, const std::string& name)
{
    const auto found = setup.ratings.find(name);
    return found == setup.ratings.end() ? std::nullopt : std::optional(found->second);
}

Criterion ofRating(const SideBySide& review, const std::string& name, const Setup& a,
                   const Setup& b)
{
    Criterion criterion = criterionOf(review, name);
    criterion.own =
        std::find(usualCriteria.begin(), usualCriteria.end(), name) == usualCriteria.end();
    criterion.ratedA = ratingOf(a, name);
    criterion.ratedB = ratingOf(b, name);
    if (criterion.ratedA && criterion.ratedB)
        criterion.scores = analysis::Scores{*criterion.ratedA, *criterion.ratedB};
    return criterion;
}

/// The predefined ones first, then those in either setup's ratings or in the weights.
std::vector<std::string> ratedCriteria(const SideBySide& review, const Setup& a, const Setup& b,
                                       const std::vector<Criterion>& measured)
{
    std::vector<std::string> names(usualCriteria.begin(), usualCriteria.end());
    const auto add = [&](const std::map<std::string, double>& more) {
        for (const auto& [name, value] : more) {
            const bool taken =
                std::find(names.begin(), names.end(), name) != names.end() ||
                std::any_of(measured.begin(), measured.end(),
                            [&, &name = name](const Criterion& each) { return each.name == name; });
            if (!taken)
                names.push_back(name);
        }
    };
    add(a.ratings);
    add(b.ratings);
    add(review.weighing.weights);
    return names;
}

} // namespace

void addJudgement(SideBySide& review, const Setup& setupA, const Setup& setupB)
{
    Judgement& judgement = review.judgement;
    judgement.criteria = measuredCriteria(review);
    for (const std::string& name : ratedCriteria(review, setupA, setupB, judgement.criteria))
        judgement.criteria.push_back(ofRating(review, name, setupA, setupB));
    std::vector<analysis::WeighedCriterion> weighed;
    for (const Criterion& criterion : judgement.criteria)
        weighed.push_back({criterion.weight, criterion.scores});
    judgement.sheet = analysis::judge(weighed);
}

} // namespace holdband::results
