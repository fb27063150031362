// The judgement sheet: criteria with weights and scores, who leads, and what would turn it.
#include "core/analysis/bounded.h"
#include "core/results/comparison/measure_words.h"
#include "core/results/comparison/side_models.h"
#include "core/results/comparison/side_sentences.h"
#include "core/text/phrase.h"

#include <algorithm>

namespace holdband::results {

using analysis::Ahead;
using analysis::Measure;
using analysis::MeasureId;

namespace {

/// A criterion that is scored from a figure.
struct Measured {
    std::string_view name;
    Measure measure;
    std::string of;   ///< the figure, in words
    std::string and_; ///< what else to say of it; may be empty
};

Measure inSameWeather(const SideBySide& review)
{
    Measure power = measureOf(review, MeasureId::meanPower);
    power.a = notNegative(review.weather.a.atReference->watts);
    power.b = notNegative(review.weather.b.atReference->watts);
    power.ahead = review.weather.ahead;
    return power;
}

std::string quoted(const std::string& title)
{
    return Phrase::tr("\"%1\"").with(title);
}

/// By the same weather where that decides, else by degree-days, else as it was used.
Measured energyCriterion(const SideBySide& review, const SideFormat& manner)
{
    if (review.weather.ahead)
        return {
            "energy", inSameWeather(review), Phrase::tr("the power drawn in the same weather"), {}};
    const Measure& perDay = measureOf(review, MeasureId::energyPerDegreeDay);
    const bool known = perDay.a && perDay.b;
    const MeasureId id = known ? MeasureId::energyPerDegreeDay : MeasureId::energy;
    const std::string title = measureTitle(id, manner);
    return {"energy",
            measureOf(review, id),
            known ? Phrase::tr("\"Energy %1\"", "%1: per degree-day of lift").with(title)
                  : quoted(title),
            {}};
}

Measured settlingCriterion(const SideBySide& review, const SideFormat& manner)
{
    const Measure& crash = measureOf(review, MeasureId::settlingCrash);
    const MeasureId id = crash.a && crash.b ? MeasureId::settlingCrash : MeasureId::settlingFirst;
    return {"settling", measureOf(review, id), quoted(measureTitle(id, manner)), {}};
}

std::vector<Measured> measuredCriteria(const SideBySide& review, const SideFormat& manner)
{
    const auto by = [&](std::string_view name, MeasureId id, std::string more = {}) {
        return Measured{name, measureOf(review, id), quoted(measureTitle(id, manner)),
                        std::move(more)};
    };
    return {by("temperature", MeasureId::meanAbsoluteDeviation),
            by("time in the band", MeasureId::insideShare),
            settlingCriterion(review, manner),
            energyCriterion(review, manner),
            by("energy cost", MeasureId::cost,
               Phrase::tr("; it follows from the energy: give it no weight to count that once")),
            by("parts", MeasureId::parts)};
}

std::string titled(std::string name)
{
    if (!name.empty() && name[0] >= 'a' && name[0] <= 'z')
        name[0] = static_cast<char>(name[0] - 'a' + 'A');
    return name;
}

double weightOf(const SideBySide& review, const std::string& name)
{
    const auto found = review.weighing.weights.find(name);
    return found == review.weighing.weights.end() ? usualWeight : found->second;
}

CriterionWords begun(const SideBySide& review, const std::string& name)
{
    CriterionWords criterion;
    criterion.name = name;
    criterion.title = titled(criterionWord(name));
    criterion.weight = weightOf(review, name);
    criterion.textA = criterion.textB = "–";
    return criterion;
}

void addTexts(CriterionWords& criterion, const SideFormat& manner)
{
    if (!criterion.scores)
        return;
    criterion.textA = manner.fixed(criterion.scores->a, 1);
    criterion.textB = manner.fixed(criterion.scores->b, 1);
}

/// Only of plain sums: what was measured is never known to be equal.
bool exactlyTheSame(const Measure& measure)
{
    return measure.rule.id == MeasureId::parts && measure.a == measure.b;
}

std::string howScored(const SideBySide& review, const Measured& measured, bool scored)
{
    const auto& ahead = measured.measure.ahead;
    if (!scored)
        return Phrase::tr("not scored: %1 is not known of both").with(measured.of);
    if (!ahead)
        return Phrase::tr("from %1: nobody can be ahead, so 3 each").with(measured.of);
    if (*ahead == Ahead::tooClose && exactlyTheSame(measured.measure))
        return Phrase::tr("from %1: the same, so 3 each").with(measured.of);
    if (*ahead == Ahead::tooClose)
        return Phrase::tr("from %1: too close to call, so 3 each").with(measured.of);
    return Phrase::tr("from %1: %2 is ahead and gets 5")
        .with(measured.of, *ahead == Ahead::a ? review.a : review.b);
}

CriterionWords ofMeasure(const SideBySide& review, const Measured& measured,
                         const SideFormat& manner)
{
    CriterionWords criterion = begun(review, std::string(measured.name));
    criterion.measured = true;
    criterion.scores = analysis::scoresOf(measured.measure);
    addTexts(criterion, manner);
    criterion.how = howScored(review, measured, criterion.scores.has_value()) + measured.and_;
    return criterion;
}

std::optional<double> ratingOf(const Setup& setup, const std::string& name)
{
    const auto found = setup.ratings.find(name);
    return found == setup.ratings.end() ? std::nullopt : std::optional(found->second);
}

CriterionWords ofRating(const SideBySide& review, const std::string& name, const Setup& a,
                        const Setup& b, const SideFormat& manner)
{
    CriterionWords criterion = begun(review, name);
    criterion.own =
        std::find(usualCriteria.begin(), usualCriteria.end(), name) == usualCriteria.end();
    const auto ratedA = ratingOf(a, name);
    const auto ratedB = ratingOf(b, name);
    if (ratedA)
        criterion.textA = manner.fixed(*ratedA, 1);
    if (ratedB)
        criterion.textB = manner.fixed(*ratedB, 1);
    if (ratedA && ratedB) {
        criterion.scores = analysis::Scores{*ratedA, *ratedB};
        criterion.how = Phrase::tr("as rated in the equipment");
    } else if (ratedA || ratedB) {
        criterion.how = Phrase::tr("not scored: only %1 is rated").with(ratedA ? a.name : b.name);
    } else {
        criterion.how = Phrase::tr("not scored: nobody rated it");
    }
    return criterion;
}

/// The usual ones first, then those of either setup's ratings and of the weights.
std::vector<std::string> ratedCriteria(const SideBySide& review, const Setup& a, const Setup& b,
                                       const std::vector<CriterionWords>& measured)
{
    std::vector<std::string> names(usualCriteria.begin(), usualCriteria.end());
    const auto add = [&](const std::map<std::string, double>& more) {
        for (const auto& [name, value] : more) {
            const bool taken =
                std::find(names.begin(), names.end(), name) != names.end() ||
                std::any_of(measured.begin(), measured.end(),
                            [&](const CriterionWords& each) { return each.name == name; });
            if (!taken)
                names.push_back(name);
        }
    };
    add(a.ratings);
    add(b.ratings);
    add(review.weighing.weights);
    return names;
}

std::string leadText(const SideBySide& review, const SideFormat& manner)
{
    const analysis::JudgedSheet& sheet = review.judgement.sheet;
    if (!sheet.totals)
        return Phrase::tr("Nothing is weighed: no criterion has both a weight and two scores.");
    const double a = sheet.totals->a;
    const double b = sheet.totals->b;
    if (sheet.lead == Ahead::tooClose)
        return Phrase::tr("%1 and %2 are level at %3 of 5.")
            .with(review.a, review.b, manner.fixed(a, 1));
    const bool aLeads = sheet.lead == Ahead::a;
    // Totals that look the same are written with more digits.
    const int decimals = manner.fixed(a, 1) == manner.fixed(b, 1) ? 3 : 1;
    return Phrase::tr("%1 leads %2 to %3 (of 5).")
        .with(aLeads ? review.a : review.b, manner.fixed(aLeads ? a : b, decimals),
              manner.fixed(aLeads ? b : a, decimals));
}

/// Who would lead once the criterion's weight has passed the tie.
const std::string& otherSide(const SideBySide& review)
{
    return review.judgement.sheet.lead == Ahead::a ? review.b : review.a;
}

std::string turnText(const SideBySide& review, const CriterionWords& criterion,
                     const analysis::Turn& turn, const SideFormat& manner)
{
    const bool inReach = turn.weightToTie && *turn.weightToTie <= mostWeight;
    const std::string name = criterionWord(criterion.name);
    if (turn.byRemoval && inReach && *turn.weightToTie < 1e-9)
        return Phrase::tr("Without %1 they would be level.").with(name);
    if (turn.byRemoval)
        return Phrase::tr("Without %1 %2 would lead.").with(name, otherSide(review));
    if (!inReach)
        return {};
    return Phrase::tr("With a weight above %1 for %2 (now %3) %4 would lead.")
        .with(manner.fixed(*turn.weightToTie, 1), name, manner.fixed(criterion.weight, 1),
              otherSide(review));
}

void addTurns(SideBySide& review, const SideFormat& manner)
{
    JudgementWords& judgement = review.judgement;
    if (judgement.sheet.lead == Ahead::tooClose)
        return;
    for (std::size_t i = 0; i < judgement.criteria.size(); ++i) {
        CriterionWords& criterion = judgement.criteria[i];
        criterion.turn = turnText(review, criterion, judgement.sheet.turns[i], manner);
        if (!criterion.turn.empty())
            judgement.turning.push_back(criterion.turn);
    }
    if (judgement.turning.empty())
        judgement.turning.push_back(
            Phrase::tr("No one criterion turns that: neither leaving it out nor any weight up to "
                       "5."));
}

std::string ruleText()
{
    return Phrase::tr(
        "What was measured is scored by its figure: the one ahead gets 5, the other 5 divided by "
        "how many times worse it is, at least 1; both get 3 where it is too close to call or "
        "nobody can be ahead. All else is as rated, 1 to 5, more is better. The total is the mean "
        "by weight.");
}

} // namespace

std::string criterionWord(const std::string& name)
{
    if (name == "temperature")
        return Phrase::tr("temperature", "criterion");
    if (name == "time in the band")
        return Phrase::tr("time in the band", "criterion");
    if (name == "settling")
        return Phrase::tr("settling", "criterion");
    if (name == "energy")
        return Phrase::tr("energy", "criterion");
    if (name == "energy cost")
        return Phrase::tr("energy cost", "criterion");
    if (name == "parts")
        return Phrase::tr("parts", "criterion");
    if (name == "build effort")
        return Phrase::tr("build effort", "criterion");
    if (name == "ease of use")
        return Phrase::tr("ease of use", "criterion");
    if (name == "cleaning")
        return Phrase::tr("cleaning", "criterion");
    if (name == "noise")
        return Phrase::tr("noise", "criterion");
    return name == "space" ? Phrase::tr("space", "criterion").text() : name;
}

void addJudgement(SideBySide& review, const SideFormat& manner, const Setup& setupA,
                  const Setup& setupB)
{
    JudgementWords& judgement = review.judgement;
    judgement.rule = ruleText();
    for (const Measured& measured : measuredCriteria(review, manner))
        judgement.criteria.push_back(ofMeasure(review, measured, manner));
    for (const std::string& name : ratedCriteria(review, setupA, setupB, judgement.criteria))
        judgement.criteria.push_back(ofRating(review, name, setupA, setupB, manner));
    std::vector<analysis::WeighedCriterion> weighed;
    for (const CriterionWords& criterion : judgement.criteria)
        weighed.push_back({criterion.weight, criterion.scores});
    judgement.sheet = analysis::judge(weighed);
    judgement.sentence = leadText(review, manner);
    addTurns(review, manner);
}

} // namespace holdband::results
