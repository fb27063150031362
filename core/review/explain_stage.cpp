// Explanations of one stage and of one excursion.
#include "core/review/causes.h"
#include "core/review/explain.h"
#include "core/review/explain_band.h"
#include "core/text/durations.h"

#include <cmath>

namespace holdband::review {

using analysis::BandJudgement;
using analysis::PlacedStage;
using analysis::SettlingFigures;
using analysis::StageStatistics;
using analysis::StageTrack;

namespace {

class StageExplainer {
public:
    StageExplainer(const ExplainWords& words, std::size_t stage)
        : m_words(words), m_stage(words.review().figures.judged.stages.at(stage)),
          m_track(words.review().figures.judged.tracks.at(stage)),
          m_judged(words.review().figures.judged.asPlanned.stages.at(stage)),
          m_statistics(words.review().figures.judged.statistics.at(stage)), m_index(stage)
    {
    }

    std::string say(StageFigure figure) const
    {
        switch (figure) {
        case StageFigure::settledIn:
            return settledIn();
        case StageFigure::settlingRate:
            return settlingRate();
        case StageFigure::overshoot:
            return overshoot();
        case StageFigure::quantiles:
            return quantiles();
        case StageFigure::range:
            return range();
        case StageFigure::energy:
        case StageFigure::meanPower:
            return energy(figure);
        default:
            return ofBand(figure);
        }
    }

private:
    Held held() const
    {
        return {m_judged.holdMs,  m_judged.coveredMs, m_judged.insideMs,
                m_judged.aboveMs, m_judged.belowMs,   &m_statistics.deviation};
    }

    std::vector<PlacedExcursion> excursions() const
    {
        std::vector<PlacedExcursion> placed;
        for (const analysis::Excursion& excursion : m_judged.excursions)
            placed.push_back({&m_stage, &excursion});
        return placed;
    }

    std::string ofBand(StageFigure figure) const
    {
        switch (figure) {
        case StageFigure::coverage:
            return coverageWords(m_words, held());
        case StageFigure::insideShare:
            return insideWords(m_words, held());
        case StageFigure::outsideTime:
            return outsideWords(held());
        case StageFigure::excursions:
            return excursionWords(m_words, held(), excursions());
        case StageFigure::worst:
            return worstWords(m_words, held(), excursions());
        case StageFigure::meanDeviation:
            return meanWords(m_words, held());
        case StageFigure::spread:
            return spreadWords(m_words, held());
        case StageFigure::rmsDeviation:
            return rmsWords(m_words, held());
        default:
            return meanAbsoluteWords(m_words, held());
        }
    }

    /// Why the stage has no settling figures; empty where it settled and arrived.
    std::string whyNotSettled() const
    {
        if (m_track.deviation.empty())
            return "Nothing of " + m_stage.label + " was seen, so neither was an arrival.";
        if (m_judged.missed)
            return "The beer was never seen in the band of " + m_stage.label +
                   ": its target was missed.";
        if (!m_stage.jumps)
            return "Nothing to settle: the target did not jump when " + m_stage.label + " began.";
        if (!m_judged.settles)
            return "Nothing to settle: the beer was in the band when " + m_stage.label +
                   " began to be seen.";
        if (!m_judged.arrival)
            return "The beer is still on its way into the band of " + m_stage.label + ", " +
                   spanWords(m_judged.settlingMs) + " so far.";
        return {};
    }

    std::string settledIn() const
    {
        if (const std::string why = whyNotSettled(); !why.empty())
            return why;
        const SettlingFigures figures = analysis::settlingFigures(m_track, m_judged);
        std::string text =
            "From the stage's start, " + m_words.time(m_stage.span.start) +
            ", until the beer first came into the band: " + spanWords(*figures.clockMs) +
            " on the clock. ";
        if (*figures.clockMs > m_judged.holdFromMs)
            return text + "Only " + durationText(m_stage.settleAllowed) +
                   " are allowed for settling; what followed is judged.";
        return text + spanWords(m_judged.settlingMs) +
               " of it were seen and are not judged; what was not seen counts as hold time.";
    }

    std::string settlingRate() const
    {
        if (const std::string why = whyNotSettled(); !why.empty())
            return why;
        const SettlingFigures figures = analysis::settlingFigures(m_track, m_judged);
        if (!figures.ratePerMs)
            return "The beer was in the band as soon as it was seen: there is no rate.";
        const double first = m_track.deviation.value.front();
        const double length = m_judged.arrival->ms - m_track.deviation.ms.front();
        return "How fast the beer came to the band: from " + m_words.deviation(first) + " to " +
               m_words.deviation(m_judged.arrival->deviation) + " off the target in " +
               spanWords(length) + " = " + m_words.difference(*figures.ratePerMs * 3.6e6) +
               " an hour.";
    }

    std::string overshoot() const
    {
        if (const std::string why = whyNotSettled(); !why.empty())
            return why;
        const SettlingFigures figures = analysis::settlingFigures(m_track, m_judged);
        return "How far the beer went past the target in the direction in which it came, until it "
               "turned back over it or the stage ended: " +
               m_words.difference(figures.overshoot.value_or(0.0)) + ".";
    }

    std::string quantiles() const
    {
        if (!m_statistics.quantiles)
            return whyNothingHeld(held());
        const auto& [low, middle, high] = *m_statistics.quantiles;
        return "Of the " + spanWords(m_statistics.deviation.weightMs()) +
               " that were held and seen, the beer was at or below " + m_words.deviation(low) +
               " off the target for 5 %, " + m_words.deviation(middle) + " for half and " +
               m_words.deviation(high) + " for 95 %.";
    }

    std::string range() const
    {
        if (!m_statistics.minimum || !m_statistics.maximum)
            return whyNothingHeld(held());
        return "The coldest and the warmest that the beer was while held and seen, with straight "
               "lines between the readings: " +
               m_words.temperature(Temperature::celsius(*m_statistics.minimum)) + " and " +
               m_words.temperature(Temperature::celsius(*m_statistics.maximum)) + ".";
    }

    std::string energy(StageFigure figure) const
    {
        const auto& stages = m_words.review().figures.energy.stages;
        if (m_index >= stages.size())
            return "The stage has no energy of its own.";
        const analysis::SpanEnergy& stage = stages[m_index];
        return figure == StageFigure::energy ? meteredWords(m_words, stage.energy, stage.span)
                                             : powerWords(m_words, stage.energy);
    }

    const ExplainWords& m_words;
    const PlacedStage& m_stage;
    const StageTrack& m_track;
    const BandJudgement& m_judged;
    const StageStatistics& m_statistics;
    std::size_t m_index;
};

std::string_view endWords(analysis::Cut cut)
{
    switch (cut) {
    case analysis::Cut::cameBack:
        return "It ended when the beer came back.";
    case analysis::Cut::gap:
        return "A gap in the readings cut it: how it went on was not seen.";
    case analysis::Cut::stageEnd:
        break;
    }
    return "The stage's end cut it.";
}

} // namespace

std::string explainStage(const RunReview& review, std::size_t stage, StageFigure figure,
                         char decimalSign)
{
    const ExplainWords words(review, decimalSign);
    return StageExplainer(words, stage).say(figure);
}

std::string explainExcursion(const RunReview& review, std::size_t stage, std::size_t excursion,
                             char decimalSign)
{
    const ExplainWords words(review, decimalSign);
    const analysis::JudgedBatch& judged = review.figures.judged;
    const analysis::Excursion& which = judged.asPlanned.stages.at(stage).excursions.at(excursion);
    const Span span = PlacedExcursion{&judged.stages.at(stage), &which}.span();
    const bool above = which.side == analysis::Side::above;
    const std::string cause = causeText(causeOf(review, stage, excursion));
    return std::string(above ? "Above" : "Below") + " the band of " + judged.stages[stage].label +
           " from " + words.time(span.start) + " to " + words.time(span.end) + ", " +
           spanWords(which.lengthMs()) + ": at most " + words.difference(which.peak) +
           " past the edge, " + words.degreeHours(which.areaMs / 3.6e6) + " beyond it in all. " +
           std::string(endWords(which.cut)) + (cause.empty() ? "" : " Cause given: " + cause + ".");
}

} // namespace holdband::review
