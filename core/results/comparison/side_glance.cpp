#include "core/results/comparison/side_glance.h"

#include "core/results/comparison/measure_text.h"
#include "core/results/comparison/side_glance_answer.h"
#include "core/results/comparison/side_sentences.h"
#include "core/text/name_suggestions.h"
#include "core/text/phrase.h"

#include <algorithm>
#include <cmath>

namespace holdband::results {

using analysis::Ahead;
using analysis::Bounded;
using analysis::MeasureId;

namespace {

std::size_t placeOf(const SideBySide& review, MeasureId id)
{
    const auto found =
        std::find_if(review.measures.begin(), review.measures.end(),
                     [&](const analysis::Measure& measure) { return measure.rule.id == id; });
    return static_cast<std::size_t>(found - review.measures.begin());
}

std::string titleOf(GlanceRow row, bool ofSetups)
{
    switch (row) {
    case GlanceRow::energy:
        return Phrase::tr("Energy, kWh");
    case GlanceRow::cost:
        return ofSetups ? Phrase::tr("Cost of a batch") : Phrase::tr("Cost of the energy");
    case GlanceRow::onTarget:
        return Phrase::tr("On target, %");
    case GlanceRow::crash:
        return Phrase::tr("Crash cold in, h");
    case GlanceRow::work:
        return ofSetups ? Phrase::tr("Work, rounds a batch") : Phrase::tr("Work, rounds");
    }
    return {};
}

std::string nameOf(GlanceRow row)
{
    switch (row) {
    case GlanceRow::energy:
        return Phrase::tr("energy", "one of the compared things");
    case GlanceRow::cost:
        return Phrase::tr("cost", "one of the compared things");
    case GlanceRow::onTarget:
        return Phrase::tr("time on target", "one of the compared things");
    case GlanceRow::crash:
        return Phrase::tr("time to get cold", "one of the compared things");
    case GlanceRow::work:
        return Phrase::tr("work", "one of the compared things");
    }
    return {};
}

/// %1: A or B.
Phrase aheadPhrase(GlanceRow row)
{
    if (row == GlanceRow::onTarget)
        return Phrase::tr("%1 longer", "on target");
    if (row == GlanceRow::crash)
        return Phrase::tr("%1 sooner", "cold");
    return Phrase::tr("%1 less", "energy, cost or work");
}

std::string whoAhead(const GlancePair& pair)
{
    if (!pair.a.figure || !pair.b.figure)
        return Phrase::tr("%1 not known", "A or B").with(pair.a.figure ? "B" : "A");
    if (!pair.ahead)
        return Phrase::tr("not decided");
    if (pair.equal())
        return Phrase::tr("equal", "A's figure and B's");
    if (*pair.ahead == Ahead::tooClose)
        return Phrase::tr("too close to call");
    return aheadPhrase(pair.row).with(*pair.ahead == Ahead::a ? "A" : "B");
}

std::optional<Bounded> scaledBy(const std::optional<Bounded>& figure, double factor)
{
    if (!figure)
        return std::nullopt;
    Bounded all = *figure;
    all.value *= factor;
    if (all.low)
        *all.low *= factor;
    if (all.high)
        *all.high *= factor;
    return all;
}

std::string batchList(const std::vector<BatchFigure>& batches,
                      const std::vector<std::string>& texts)
{
    std::vector<std::string> each;
    for (std::size_t i = 0; i < batches.size() && i < texts.size(); ++i)
        each.push_back(batches[i].batch + " " + texts[i]);
    return each.empty() ? std::string() : "; " + joined(each);
}

/// "A Loop: 8.87 (4.65 – 13.1); Ale 1 6.12, Ale 2 7.01"
std::string sideLine(bool first, const SideBySide& review, const std::string& figure,
                     const std::string& batches)
{
    return (first ? "A " + review.a : "B " + review.b) + ": " + figure + batches;
}

std::string asSentence(const std::string& text)
{
    return text.empty() ? text : "\n" + text + (text.ends_with('.') ? "" : ".");
}

/// A pair whose figures are those of a measure.
GlancePair measurePair(const SideBySide& review, const SideFormat& format, GlanceRow row,
                       MeasureId id)
{
    const std::size_t place = placeOf(review, id);
    const analysis::Measure& measure = review.measures[place];
    const MeasureText& line = review.text.measures[place];
    GlancePair pair{row, titleOf(row, review.ofSetups), nameOf(row), {}, {}, measure.ahead, {}, {}};
    const auto fill = [&](GlanceSide& side, const std::optional<Bounded>& figure) {
        side.figure = scaledBy(figure, line.factor);
        if (figure)
            side.text = id == MeasureId::cost ? format.money(figure->value)
                                              : figureText(id, figure->value, format);
    };
    fill(pair.a, measure.a);
    fill(pair.b, measure.b);
    if (review.ofSetups) {
        for (const bool first : {true, false}) {
            const MeasureBatches& batches = review.batchFigures[place];
            for (const BatchFigure& batch : (first ? batches.a : batches.b).batches)
                (first ? pair.a : pair.b)
                    .batches.push_back({batch.batch, batch.value * line.factor});
        }
    }
    pair.explanation = line.title + "\n" +
                       sideLine(true, review, line.a, batchList(pair.a.batches, line.batchesA)) +
                       "\n" +
                       sideLine(false, review, line.b, batchList(pair.b.batches, line.batchesB)) +
                       asSentence(line.remark);
    return pair;
}

std::string roundsText(double rounds, const SideFormat& format)
{
    return format.fixed(rounds, rounds == std::round(rounds) ? 0 : 1);
}

GlanceSide workSide(const WorkSide& work, const SideFormat& format)
{
    GlanceSide side{work.rounds, work.batches, {}};
    if (work.rounds)
        side.text = roundsText(work.rounds->value, format);
    return side;
}

std::string workLine(bool first, const SideBySide& review, const GlanceSide& side,
                     const SideFormat& format)
{
    std::vector<std::string> texts;
    for (const BatchFigure& batch : side.batches)
        texts.push_back(roundsText(batch.value, format));
    const bool bounds =
        side.figure && side.figure->bounded() && *side.figure->low != *side.figure->high;
    return sideLine(first, review,
                    (side.figure ? side.text : std::string("–")) +
                        (bounds ? format.bounds(*side.figure, 1) : std::string()),
                    batchList(side.batches, texts));
}

GlancePair workPair(const SideBySide& review, const SideFormat& format)
{
    constexpr GlanceRow row = GlanceRow::work;
    GlancePair pair{row, titleOf(row, review.ofSetups), nameOf(row), {}, {}, {}, {}, {}};
    pair.a = workSide(review.work.a, format);
    pair.b = workSide(review.work.b, format);
    pair.ahead = review.work.ahead;
    pair.explanation =
        Phrase::tr("Rounds in which somebody read a register; imported readings don't count.")
            .text() +
        "\n" + workLine(true, review, pair.a, format) + "\n" +
        workLine(false, review, pair.b, format);
    return pair;
}

} // namespace

PairGlance pairGlanceOf(const SideBySide& review, const SideFormat& format)
{
    PairGlance glance;
    const auto add = [&](GlancePair pair) {
        if (!pair.a.figure && !pair.b.figure)
            return;
        for (GlanceSide* side : {&pair.a, &pair.b}) {
            if (!side->figure)
                side->text = "–";
        }
        pair.aheadText = whoAhead(pair);
        glance.pairs.push_back(std::move(pair));
    };
    add(measurePair(review, format, GlanceRow::energy, MeasureId::energy));
    add(measurePair(review, format, GlanceRow::cost, MeasureId::cost));
    add(measurePair(review, format, GlanceRow::onTarget, MeasureId::insideShare));
    add(measurePair(review, format, GlanceRow::crash, MeasureId::settlingCrash));
    add(workPair(review, format));
    glance.answer = answerOf(review, glance.pairs);
    glance.open = openOf(review, glance.pairs);
    return glance;
}

} // namespace holdband::results
