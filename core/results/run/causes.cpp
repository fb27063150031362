#include "core/results/run/causes.h"

#include "core/model/names.h"
#include "core/text/phrase.h"
#include "core/text/times.h"

#include <algorithm>
#include <cmath>

namespace holdband::results {

namespace {

struct PlacedSide {
    Span span;
    Side side;

    bool operator==(const PlacedSide&) const = default;
};

PlacedSide placed(const RunReview& review, std::size_t stage, std::size_t excursion)
{
    const analysis::JudgedBatch& judged = review.figures.judged;
    const analysis::Excursion& which = judged.asPlanned.stages.at(stage).excursions.at(excursion);
    return {spanOf(judged.stages.at(stage), which), which.side};
}

std::vector<PlacedSide> allPlaced(const RunReview& review)
{
    std::vector<PlacedSide> all;
    const auto& stages = review.figures.judged.asPlanned.stages;
    for (std::size_t i = 0; i < stages.size(); ++i) {
        for (std::size_t k = 0; k < stages[i].excursions.size(); ++k)
            all.push_back(placed(review, i, k));
    }
    return all;
}

/// How long the two overlap; absent if they don't. Two equal spans overlap even if their length is
/// 0.
std::optional<Milliseconds> overlap(const ExcursionCause& cause, const PlacedSide& excursion)
{
    if (cause.side != excursion.side)
        return std::nullopt;
    const Span both = intersection(cause.span, excursion.span);
    if (both.empty() && cause.span != excursion.span)
        return std::nullopt;
    return both.end - both.start;
}

} // namespace

const ExcursionCause* causeAt(const std::vector<store::StoredCause>& causes, Span span, Side side)
{
    const ExcursionCause* best = nullptr;
    std::optional<Milliseconds> longest;
    for (const store::StoredCause& stored : causes) {
        const auto length = overlap(stored.cause, {span, side});
        if (length && (!longest || *length > *longest)) {
            best = &stored.cause;
            longest = length;
        }
    }
    return best;
}

const ExcursionCause* causeOf(const RunReview& review, std::size_t stage, std::size_t excursion)
{
    const PlacedSide which = placed(review, stage, excursion);
    return causeAt(review.causes, which.span, which.side);
}

std::string_view causeName(Cause cause)
{
    return nameOf(cause);
}

std::string causeWord(Cause cause)
{
    switch (cause) {
    case Cause::lidOpen:
        return Phrase::tr("lid open");
    case Cause::powerCut:
        return Phrase::tr("power cut");
    case Cause::sensorMoved:
        return Phrase::tr("sensor moved");
    case Cause::warmRoom:
        return Phrase::tr("warm room");
    case Cause::control:
        return Phrase::tr("control", "the cause of an excursion");
    case Cause::other:
        break;
    }
    return Phrase::tr("other", "the cause of an excursion");
}

std::string causeText(const ExcursionCause* cause)
{
    if (!cause)
        return {};
    if (!cause->cause)
        return cause->note.empty() ? std::string() : Phrase::tr("\"%1\"").with(cause->note);
    const std::string name = causeWord(*cause->cause);
    return cause->note.empty()
               ? name
               : Phrase::tr("%1, \"%2\"", "a cause and its note").with(name, cause->note);
}

Done giveCause(const store::Change& change, const RunReview& review, std::size_t stage,
               std::size_t excursion, std::optional<Cause> cause, const std::string& note)
{
    const std::string& batch = review.batch().name;
    const PlacedSide which = placed(review, stage, excursion);
    const std::vector<PlacedSide> all = allPlaced(review);
    for (const store::StoredCause& stored : review.causes) {
        if (!overlap(stored.cause, which))
            continue;
        HOLDBAND_TRY(store::removeCause(change, stored.id));
        for (const PlacedSide& other : all) {
            // Other excursions that shared this cause get a separate copy, so that changing one
            // doesn't change the others.
            if (other == which || causeAt(review.causes, other.span, other.side) != &stored.cause)
                continue;
            HOLDBAND_TRY(store::addCause(
                change, batch, {other.span, other.side, stored.cause.cause, stored.cause.note}));
        }
    }
    if (!cause && note.empty())
        return {};
    return store::addCause(change, batch, {which.span, which.side, cause, note});
}

store::HistoryEntry causeEntry(const RunReview& review, std::size_t stage, std::size_t excursion)
{
    const PlacedSide which = placed(review, stage, excursion);
    return {store::HistoryVerb::causeGiven,
            {review.batch().name, localIso(which.span.start, review.zone).substr(0, 16)}};
}

std::vector<std::string> strayCauses(const RunReview& review)
{
    const std::vector<PlacedSide> all = allPlaced(review);
    std::vector<std::string> sentences;
    for (const store::StoredCause& stored : review.causes) {
        const bool wanted = std::any_of(all.begin(), all.end(), [&](const PlacedSide& placed) {
            return overlap(stored.cause, placed).has_value();
        });
        if (!wanted)
            sentences.push_back(
                Phrase::tr("The cause given for %1, %2, belongs to no excursion any more: the "
                           "limits or the readings have changed.")
                    .with(localShortText(stored.cause.span.start, review.zone),
                          causeText(&stored.cause)));
    }
    return sentences;
}

} // namespace holdband::results
