// Explains the figures of one stage and of one excursion.
#include "core/results/run/causes.h"
#include "core/results/run/explain.h"
#include "core/results/run/explain_band.h"
#include "core/results/run/sampling_text.h"
#include "core/text/durations.h"
#include "core/text/phrase.h"

#include <cmath>

namespace holdband::results {

using analysis::BandJudgement;
using analysis::PlacedStage;
using analysis::SettlingFigures;
using analysis::StageStatistics;
using analysis::StageTrack;

namespace {

class StageExplainer {
public:
    StageExplainer(const ExplainText& words, std::size_t stage)
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
    Held held() const { return {m_judged, &m_statistics.deviation}; }

    std::vector<PlacedExcursion> excursions() const
    {
        std::vector<PlacedExcursion> placed;
        for (const analysis::Excursion& excursion : m_judged.excursions)
            placed.push_back({m_index, &excursion});
        return placed;
    }

    std::string ofBand(StageFigure figure) const
    {
        switch (figure) {
        case StageFigure::coverage:
            return coverageWords(m_words, held());
        case StageFigure::insideShare:
            return insideText(m_words, held());
        case StageFigure::outsideTime:
            return outsideText(held());
        case StageFigure::excursions:
            return excursionText(m_words, held(), excursions());
        case StageFigure::worst:
            return worstWords(m_words, held(), {m_index, worstOf(m_judged.excursions)});
        case StageFigure::meanDeviation:
            return meanText(m_words, held());
        case StageFigure::spread:
            return spreadText(m_words, held());
        case StageFigure::rmsDeviation:
            return rmsText(m_words, held());
        default:
            return meanAbsoluteText(m_words, held());
        }
    }

    std::string dwell() const
    {
        return durationText(m_words.review().input.judging.bandTimes.dwell, m_words.sign());
    }

    std::string whyMissed() const
    {
        if (m_judged.visits == 0)
            return Phrase::tr("No reading is in the band of %1: its target was missed.")
                .with(m_stage.label);
        return Phrase::counted("The beer came into the band of %1 %n times, but never stayed for "
                               "%2: its target was missed.",
                               "The beer came into the band of %1 once, but did not stay for %2: "
                               "its target was missed.",
                               m_judged.visits)
            .with(m_stage.label, dwell());
    }

    /// The rule and the length; with a dwell also how often the beer was inside for less.
    std::string untilArrival(const std::string& clock) const
    {
        const std::string start = m_words.time(m_stage.span.start);
        if (m_words.review().input.judging.bandTimes.dwell <= Milliseconds{0})
            return Phrase::tr("From the stage's start, %1, until the beer first came into the "
                              "band: %2 on the clock.")
                .with(start, clock);
        std::string text = Phrase::tr("From the stage's start, %1, until the beer came into the "
                                      "band and stayed for %2: %3 on the clock.")
                               .with(start, dwell(), clock);
        if (m_judged.visits > 0)
            text +=
                " " + Phrase::counted("Before that it was inside %n times for less.",
                                      "Before that it was inside once for less.", m_judged.visits)
                          .text();
        return text;
    }

    /// The reason why the stage has no settling figures; empty if it settled and arrived.
    std::string whyNotSettled() const
    {
        if (m_track.deviation.empty())
            return Phrase::tr("There is no data for %1, so no arrival is known.")
                .with(m_stage.label);
        if (m_judged.missed)
            return whyMissed();
        if (!m_stage.jumps)
            return Phrase::tr("Nothing to settle: the target did not jump at the start of %1.")
                .with(m_stage.label);
        if (!m_judged.settles)
            return Phrase::tr(
                       "Nothing to settle: the beer was in the band at the first reading of %1.")
                .with(m_stage.label);
        if (!m_judged.arrival)
            return Phrase::tr("The beer is still on its way into the band of %1, %2 so far.")
                .with(m_stage.label, spanText(m_judged.settlingMs));
        return {};
    }

    std::string settledIn() const
    {
        if (const std::string why = whyNotSettled(); !why.empty())
            return why;
        const SettlingFigures figures = analysis::settlingFigures(m_track, m_judged);
        const std::string text = untilArrival(spanText(*figures.clockMs)) + " ";
        if (*figures.clockMs > m_judged.holdFromMs)
            return text + Phrase::tr("Only %1 are allowed for settling; what followed is judged.")
                              .with(durationText(m_stage.settleAllowed));
        return text +
               Phrase::tr(
                   "%1 of it are covered and not judged; time without data counts as hold time.")
                   .with(spanText(m_judged.settlingMs));
    }

    std::string settlingRate() const
    {
        if (const std::string why = whyNotSettled(); !why.empty())
            return why;
        const SettlingFigures figures = analysis::settlingFigures(m_track, m_judged);
        if (!figures.ratePerMs)
            return Phrase::tr("The beer was in the band at its first reading: there is no rate.");
        const double first = m_track.deviation.value.front();
        const double length = m_judged.arrival->ms - m_track.deviation.ms.front();
        return Phrase::tr("How fast the beer came to the band: from %1 to %2 off the target in %3 "
                          "= %4 an hour.")
            .with(m_words.deviation(first), m_words.deviation(m_judged.arrival->deviation),
                  spanText(length), m_words.difference(*figures.ratePerMs * msPerHour));
    }

    std::string overshoot() const
    {
        if (const std::string why = whyNotSettled(); !why.empty())
            return why;
        const SettlingFigures figures = analysis::settlingFigures(m_track, m_judged);
        return Phrase::tr("How far the beer went past the target in the direction in which it "
                          "came, until it turned back over it or the stage ended: %1.")
            .with(m_words.difference(figures.overshoot.value_or(0.0)));
    }

    std::string quantiles() const
    {
        if (!m_statistics.quantiles)
            return whyNoHoldTime(held());
        const auto& [low, middle, high] = *m_statistics.quantiles;
        return Phrase::tr("Of the %1 of covered hold time, the beer was at or below %2 off the "
                          "target for 5 %, %3 for half and %4 for 95 %.")
            .with(spanText(m_statistics.deviation.weightMs()), m_words.deviation(low),
                  m_words.deviation(middle), m_words.deviation(high));
    }

    std::string range() const
    {
        if (!m_statistics.minimum || !m_statistics.maximum)
            return whyNoHoldTime(held());
        return Phrase::tr("The coldest and the warmest beer of the covered hold time, with "
                          "straight lines between the readings: %1 and %2.")
            .with(m_words.temperature(Temperature::celsius(*m_statistics.minimum)),
                  m_words.temperature(Temperature::celsius(*m_statistics.maximum)));
    }

    std::string energy(StageFigure figure) const
    {
        const auto& stages = m_words.review().figures.energy.stages;
        if (m_index >= stages.size())
            return Phrase::tr("The stage has no energy of its own.");
        const analysis::SpanEnergy& stage = stages[m_index];
        return figure == StageFigure::energy ? meteredText(m_words, stage.energy, stage.span)
                                             : powerWords(m_words, stage.energy);
    }

    const ExplainText& m_words;
    const PlacedStage& m_stage;
    const StageTrack& m_track;
    const BandJudgement& m_judged;
    const StageStatistics& m_statistics;
    std::size_t m_index;
};

Phrase endText(analysis::Cut cut)
{
    switch (cut) {
    case analysis::Cut::cameBack:
        return Phrase::tr("It ended when the beer came back.");
    case analysis::Cut::gap:
        return Phrase::tr("A gap in the readings cut it: how it went on is not known.");
    case analysis::Cut::stageEnd:
        break;
    }
    return Phrase::tr("The stage's end cut it.");
}

/// Whether the beer was back inside for a while during the excursion.
bool hasReturns(const analysis::Excursion& excursion)
{
    constexpr double shortestNamed = 1000.0; // ms; lengths are shown to the second
    return excursion.endMs - excursion.startMs - excursion.outsideMs >= shortestNamed;
}

Phrase whereText(const analysis::Excursion& excursion)
{
    if (excursion.side == analysis::Side::above)
        return hasReturns(excursion)
                   ? Phrase::tr("Above the band of %1 from %2 to %3, outside for %4 of it: at most "
                                "%5 past the edge, %6 beyond it in all.")
                   : Phrase::tr("Above the band of %1 from %2 to %3, %4: at most %5 past the edge, "
                                "%6 beyond it in all.");
    return hasReturns(excursion)
               ? Phrase::tr("Below the band of %1 from %2 to %3, outside for %4 of it: at most %5 "
                            "past the edge, %6 beyond it in all.")
               : Phrase::tr("Below the band of %1 from %2 to %3, %4: at most %5 past the edge, %6 "
                            "beyond it in all.");
}

} // namespace

std::string explainStage(const RunReview& review, std::size_t stage, StageFigure figure,
                         char decimalSign)
{
    const ExplainText words(review, decimalSign);
    return StageExplainer(words, stage).say(figure);
}

std::string explainExcursion(const RunReview& review, std::size_t stage, std::size_t excursion,
                             char decimalSign)
{
    const ExplainText words(review, decimalSign);
    const analysis::JudgedBatch& judged = review.figures.judged;
    const analysis::Excursion& which = judged.asPlanned.stages.at(stage).excursions.at(excursion);
    const Span span = spanOf(judged.stages.at(stage), which);
    const Phrase phrase = whereText(which);
    const std::string cause = causeText(causeOf(review, stage, excursion));
    std::string text =
        phrase.with(judged.stages[stage].label, words.time(span.start), words.time(span.end),
                    spanText(which.outsideMs), words.difference(which.peak),
                    words.degreeHours(which.areaMs / msPerHour)) +
        " " + endText(which.cut).text();
    const std::string hidden = samplingText(judged, stage, which, words.verdictFormat());
    if (!hidden.empty())
        text += " " + hidden;
    if (!cause.empty())
        text += " " + Phrase::tr("Cause given: %1.").with(cause);
    return text;
}

} // namespace holdband::results
