// The texts of the judgement sheet: how each criterion was scored, who leads, what would change
// that.
#include "core/results/comparison/measure_text.h"
#include "core/results/comparison/side_texts.h"
#include "core/text/phrase.h"

namespace holdband::results {

using analysis::Ahead;
using analysis::Measure;
using analysis::MeasureId;

namespace {

std::string quoted(const std::string& title)
{
    return Phrase::tr("\"%1\"").with(title);
}

/// The figure that a criterion is scored from.
std::string figureName(const ScoredFigure& figure, const SideFormat& format)
{
    const MeasureId id = figure.measure.rule.id;
    if (figure.basis == EnergyBasis::sameWeather)
        return id == MeasureId::cost ? Phrase::tr("the cost of the power drawn in the same weather")
                                     : Phrase::tr("the power drawn in the same weather");
    if (figure.basis == EnergyBasis::perDegreeDay && id == MeasureId::cost)
        return Phrase::tr("the cost of the energy for each degree-day of lift");
    const std::string title = measureTitle(id, format);
    return id == MeasureId::energyPerDegreeDay
               ? Phrase::tr("\"Energy %1\"", "%1: per degree-day of lift").with(title)
               : quoted(title);
}

std::string titled(std::string name)
{
    if (!name.empty() && name[0] >= 'a' && name[0] <= 'z')
        name[0] = static_cast<char>(name[0] - 'a' + 'A');
    return name;
}

/// Only plain sums can be exactly equal; measured figures never are.
bool exactlyTheSame(const Measure& measure)
{
    return measure.rule.id == MeasureId::parts && measure.a == measure.b;
}

std::string howScored(const SideBySide& review, const Criterion& criterion,
                      const SideFormat& format)
{
    const Measure& measure = criterion.figure->measure;
    const std::string name = figureName(*criterion.figure, format);
    if (!criterion.scores)
        return Phrase::tr("not scored: %1 is not known of both").with(name);
    if (!measure.ahead)
        return Phrase::tr("from %1: nobody can be ahead, so 3 each").with(name);
    if (*measure.ahead == Ahead::tooClose && exactlyTheSame(measure))
        return Phrase::tr("from %1: the same, so 3 each").with(name);
    if (*measure.ahead == Ahead::tooClose)
        return Phrase::tr("from %1: too close to call, so 3 each").with(name);
    return Phrase::tr("from %1: %2 is ahead and gets 5")
        .with(name, *measure.ahead == Ahead::a ? review.a : review.b);
}

std::string howRated(const SideBySide& review, const Criterion& criterion)
{
    if (criterion.ratedA && criterion.ratedB)
        return Phrase::tr("as rated in the equipment");
    if (criterion.ratedA || criterion.ratedB)
        return Phrase::tr("not scored: only %1 is rated")
            .with(criterion.ratedA ? review.setupA : review.setupB);
    return Phrase::tr("not scored: nobody rated it");
}

std::string howText(const SideBySide& review, const Criterion& criterion, const SideFormat& format)
{
    if (!criterion.measured())
        return howRated(review, criterion);
    const std::string how = howScored(review, criterion, format);
    if (criterion.figure->measure.rule.id != MeasureId::cost)
        return how;
    return how +
           Phrase::tr("; it follows from the energy: give it no weight to count that once").text();
}

std::string scoreText(const std::optional<double>& score, const SideFormat& format)
{
    return score ? format.fixed(*score, 1) : "–";
}

CriterionText criterionText(const SideBySide& review, const Criterion& criterion,
                            const SideFormat& format)
{
    const auto& scores = criterion.scores;
    return {titled(criterionWord(criterion.name)),
            scoreText(scores ? std::optional(scores->a) : criterion.ratedA, format),
            scoreText(scores ? std::optional(scores->b) : criterion.ratedB, format),
            howText(review, criterion, format),
            {}};
}

std::string leadText(const SideBySide& review, const SideFormat& format)
{
    const analysis::JudgedSheet& sheet = review.judgement.sheet;
    if (!sheet.totals)
        return Phrase::tr("Nothing is weighed: no criterion has both a weight and two scores.");
    const double a = sheet.totals->a;
    const double b = sheet.totals->b;
    if (sheet.lead == Ahead::tooClose)
        return Phrase::tr("%1 and %2 are level at %3 of 5.")
            .with(review.a, review.b, format.fixed(a, 1));
    const bool aLeads = sheet.lead == Ahead::a;
    // Totals that would look equal are written with more digits.
    const int decimals = format.fixed(a, 1) == format.fixed(b, 1) ? 3 : 1;
    return Phrase::tr("%1 leads %2 to %3 (of 5).")
        .with(aLeads ? review.a : review.b, format.fixed(aLeads ? a : b, decimals),
              format.fixed(aLeads ? b : a, decimals));
}

/// The side that would lead after the criterion's weight passes the tie.
const std::string& otherSide(const SideBySide& review)
{
    return review.judgement.sheet.lead == Ahead::a ? review.b : review.a;
}

std::string turnText(const SideBySide& review, const Criterion& criterion,
                     const analysis::Turn& turn, const SideFormat& format)
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
        .with(format.fixed(*turn.weightToTie, 1), name, format.fixed(criterion.weight, 1),
              otherSide(review));
}

void addTurns(const SideBySide& review, const SideFormat& format, JudgementText& text)
{
    const Judgement& judgement = review.judgement;
    if (judgement.sheet.lead == Ahead::tooClose)
        return;
    for (std::size_t i = 0; i < judgement.criteria.size(); ++i) {
        std::string turn =
            turnText(review, judgement.criteria[i], judgement.sheet.turns[i], format);
        if (!turn.empty())
            text.turning.push_back(turn);
        text.criteria[i].turn = std::move(turn);
    }
    if (text.turning.empty())
        text.turning.push_back(Phrase::tr(
            "No single criterion changes that: neither leaving it out nor any weight up to "
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

JudgementText judgementText(const SideBySide& review, const SideFormat& format)
{
    JudgementText text;
    text.rule = ruleText();
    for (const Criterion& criterion : review.judgement.criteria)
        text.criteria.push_back(criterionText(review, criterion, format));
    text.sentence = leadText(review, format);
    addTurns(review, format, text);
    return text;
}

} // namespace holdband::results
