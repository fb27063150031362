#include "core/results/comparison/side_glance_answer.h"

#include "core/results/comparison/side_format.h"
#include "core/results/comparison/side_sentences.h"
#include "core/text/name_suggestions.h"

#include <algorithm>

namespace holdband::results {

using analysis::Ahead;
using analysis::MeasureId;

namespace {

using Traits = std::vector<std::string>;

std::optional<Ahead> aheadIn(const SideBySide& review, MeasureId id)
{
    const auto& ahead = measureOf(review, id).ahead;
    return isDecided(ahead) ? ahead : std::nullopt;
}

/// What the batches used in their own weather, and what the same weather would make of it.
void addEnergyTraits(Traits& traits, const SideBySide& review, Ahead side)
{
    if (review.ofSetups && aheadIn(review, MeasureId::parts) == side)
        traits.push_back(Phrase::tr("cheaper to build", "A setup is …"));
    if (aheadIn(review, MeasureId::cost) == side)
        traits.push_back(review.ofSetups ? Phrase::tr("cheaper to run", "A setup is …")
                                         : Phrase::tr("cheaper", "A batch was …"));
    else if (!aheadIn(review, MeasureId::cost) && aheadIn(review, MeasureId::energy) == side)
        traits.push_back(Phrase::tr("more economical", "A setup is …, a batch was …"));
    if (review.ofSetups && isDecided(review.weather.ahead) && review.weather.ahead == side)
        traits.push_back(Phrase::tr("more economical in the same weather", "A setup is …"));
}

/// The share of time inside says how long, the typical deviation how closely.
void addSteadiness(Traits& traits, const SideBySide& review, Ahead side)
{
    const bool longer = aheadIn(review, MeasureId::insideShare) == side;
    const bool closer = aheadIn(review, MeasureId::meanAbsoluteDeviation) == side;
    if (longer && closer)
        traits.push_back(Phrase::tr("steadier", "A setup is …, a batch was …"));
    else if (longer)
        traits.push_back(Phrase::tr("longer on target", "A setup is …, a batch was …"));
    else if (closer)
        traits.push_back(Phrase::tr("closer to target", "A setup is …, a batch was …"));
}

Traits traitsOf(const SideBySide& review, Ahead side)
{
    Traits traits;
    addEnergyTraits(traits, review, side);
    addSteadiness(traits, review, side);
    if (aheadIn(review, MeasureId::settlingCrash) == side)
        traits.push_back(Phrase::tr("cold sooner", "A setup is …, a batch was …"));
    if (review.work.ahead == side)
        traits.push_back(Phrase::tr("less work", "A setup is …, a batch was …"));
    return traits;
}

std::string clauseOf(const SideBySide& review, bool first, const Traits& traits)
{
    return (review.ofSetups ? Phrase::tr("%1 is %2", "a setup, and in what it is ahead")
                            : Phrase::tr("%1 was %2", "a batch, and in what it was ahead"))
        .with(first ? review.a : review.b, listed(traits));
}

/// The names of the pairs of which `is` is true.
template <typename Is>
std::vector<std::string> namesOf(const std::vector<GlancePair>& pairs, Is is)
{
    std::vector<std::string> names;
    for (const GlancePair& pair : pairs) {
        if (is(pair))
            names.push_back(pair.name);
    }
    return names;
}

bool hasBoth(const GlancePair& pair)
{
    return pair.a.figure && pair.b.figure;
}

bool isTooClose(const GlancePair& pair)
{
    return pair.ahead == Ahead::tooClose && !pair.equal();
}

/// Nobody is ahead on temperature where a target was missed.
bool isMissed(const SideBySide& review, const GlancePair& pair)
{
    const bool ofTemperature = pair.row == GlanceRow::onTarget || pair.row == GlanceRow::crash;
    return ofTemperature &&
           std::any_of(review.notes.begin(), review.notes.end(), [](const auto& note) {
               return note.kind == analysis::NoteKind::missedStage;
           });
}

bool isUndecided(const GlancePair& pair)
{
    return hasBoth(pair) && !pair.ahead;
}

std::string tooCloseText(const SideBySide& review, const std::string& names)
{
    if (!review.ofSetups)
        return Phrase::tr("Too close to call: %1.").with(names);
    return Phrase::tr("Too close to call from %1 of %2 and %3 of %4: %5.")
        .with(batchCount(review.batchesA.size()), review.a, batchCount(review.batchesB.size()),
              review.b, names);
}

bool hasFewBatches(const SideBySide& review)
{
    return review.ofSetups && std::min(review.batchesA.size(), review.batchesB.size()) < 3;
}

} // namespace

std::string answerOf(const SideBySide& review, const std::vector<GlancePair>& pairs)
{
    const Traits a = traitsOf(review, Ahead::a);
    const Traits b = traitsOf(review, Ahead::b);
    if (!a.empty() && !b.empty())
        return Phrase::tr("%1; %2.", "two clauses")
            .with(clauseOf(review, true, a), clauseOf(review, false, b));
    if (!a.empty() || !b.empty())
        return clauseOf(review, !a.empty(), a.empty() ? b : a) + ".";
    if (std::any_of(pairs.begin(), pairs.end(), isTooClose))
        return Phrase::tr("Too close to call: neither %1 nor %2 is ahead.")
            .with(review.a, review.b);
    if (std::none_of(pairs.begin(), pairs.end(), hasBoth))
        return review.text.energySentence;
    return hasFewBatches(review)
               ? Phrase::tr("Too few batches to say whether %1 or %2 is ahead.")
                     .with(review.a, review.b)
               : Phrase::tr("Nothing decides between %1 and %2 yet.").with(review.a, review.b);
}

std::string openOf(const SideBySide& review, const std::vector<GlancePair>& pairs)
{
    std::vector<std::string> lines;
    const auto add = [&](const std::vector<std::string>& names, auto text) {
        if (!names.empty())
            lines.push_back(text(listed(names)));
    };
    add(namesOf(pairs, isTooClose),
        [&](const std::string& names) { return tooCloseText(review, names); });
    const auto missed = [&](const GlancePair& pair) {
        return isUndecided(pair) && isMissed(review, pair);
    };
    add(namesOf(pairs, missed), [](const std::string& names) {
        return Phrase::tr("Not decided, because a target was missed: %1.").with(names);
    });
    const auto other = [&](const GlancePair& pair) {
        return isUndecided(pair) && !isMissed(review, pair);
    };
    add(namesOf(pairs, other), [&](const std::string& names) {
        return hasFewBatches(review)
                   ? Phrase::tr("Not decided, it takes three batches of each: %1.").with(names)
                   : Phrase::tr("Not decided: %1.").with(names);
    });
    add(namesOf(pairs, [](const GlancePair& pair) { return !hasBoth(pair); }),
        [](const std::string& names) {
            return Phrase::tr("Known of one side only: %1.").with(names);
        });
    std::string all;
    for (const std::string& line : lines)
        all += (all.empty() ? "" : " ") + line;
    return all;
}

} // namespace holdband::results
