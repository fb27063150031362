// Explains the heat removed during the crash, and the figures from the gravities.
#include "core/analysis/gravity.h"
#include "core/analysis/heat.h"
#include "core/quantity/plato.h"
#include "core/results/run/explain_text.h"
#include "core/text/phrase.h"

namespace holdband::results {

using analysis::CrashHeat;
using analysis::Fermentation;

namespace {

std::string whyNoHeat(const RunReview& review)
{
    if (!review.figures.crash)
        return Phrase::tr("There is no crash whose heat could be estimated.");
    if (!review.batch().volume)
        return Phrase::tr("The heat of the crash needs the batch's volume, which is not on "
                          "record.");
    return Phrase::tr("The heat of the crash is counted from the first reading outside its band to "
                      "the arrival in it, and no reading shows the beer arriving from outside.");
}

std::string volumeWords(const ExplainText& words, Volume volume)
{
    const std::string litres = volumeText(volume, UnitSystem::metric, words.sign());
    if (words.review().settings.units == UnitSystem::metric)
        return litres;
    return volumeText(volume, UnitSystem::us, words.sign()) + " (" + litres + ")";
}

/// "68.0 °F to 38.0 °F (16.7 K)"
std::string fallText(const ExplainText& words, const CrashHeat& heat)
{
    return Phrase::tr("%1 to %2 (%3 K)", "a fall of temperature")
        .with(words.temperature(heat.from), words.temperature(heat.to),
              words.number((heat.from - heat.to).kelvins(), 1));
}

std::string heatMoved(const ExplainText& words, const CrashHeat& heat)
{
    return Phrase::tr("An estimate, within a few percent: volume × density × specific heat of beer "
                      "× the fall to the arrival, %1 × %2 kg/L × %3 kJ/(kg·K) × %4 = %5 kJ = %6.")
        .with(volumeWords(words, *words.review().batch().volume),
              words.number(analysis::beerDensity, 3), words.number(analysis::beerSpecificHeat, 1),
              fallText(words, heat), words.number(heat.moved.joules() / 1000.0, 0),
              words.kwh(heat.moved.kilowattHours(), 3));
}

std::string effectivePerformance(const ExplainText& words, const CrashHeat& heat)
{
    const std::string start = words.time(heat.span.start);
    const std::string end = words.time(heat.span.end);
    const auto performance = heat.effectivePerformance();
    if (!performance)
        return Phrase::tr(
                   "An estimate of heat removed ÷ electricity, and none is metered from %1 to %2.")
            .with(start, end);
    return Phrase::
        tr("An estimate: heat removed ÷ electricity of the same time, from %1 to %2: %3 ÷ %4 = %5.")
            .with(start, end, words.kwh(heat.moved.kilowattHours(), 3),
                  words.kwh(heat.energy.kwh, 3), words.number(*performance, 2));
}

std::string whyNoFermentation(const RunReview& review)
{
    if (!review.batch().originalGravity)
        return Phrase::tr("This needs the original gravity, which is not on record.");
    return Phrase::tr("This needs the final gravity: none is given, and none was measured.");
}

/// Begins with a space; empty if a final gravity is given.
std::string whichFinal(const ExplainText& words, const Fermentation& fermented)
{
    if (!fermented.measuredAt)
        return {};
    const std::string time = words.time(*fermented.measuredAt);
    const auto& last = words.review().figures.gravities.back();
    if (!last.reading.sample)
        return " " + Phrase::tr("No final gravity is given: the last measured one, of %1, is used.")
                         .with(time);
    return " " + Phrase::tr("No final gravity is given: the last measured one, of %1, is used, "
                            "corrected from a sample at %2 to a hydrometer's %3.")
                     .with(time, words.temperature(*last.reading.sample),
                           words.temperature(analysis::hydrometerCalibration));
}

class GravityExplainer {
public:
    GravityExplainer(const ExplainText& words, const Fermentation& fermented)
        : m_words(words), m_fermented(fermented),
          m_original(gravityText(fermented.original, words.sign())),
          m_final(gravityText(fermented.final, words.sign()))
    {
    }

    std::string say(Figure figure) const
    {
        switch (figure) {
        case Figure::apparentAttenuation:
            return Phrase::tr("Fall in gravity over the original gravity's excess over water: (%1 "
                              "− %2) ÷ (%1 − 1) = %3.")
                .with(m_original, m_final, percent(m_fermented.apparentAttenuation, 1));
        case Figure::realAttenuation:
            return real();
        case Figure::alcoholSimple:
            return Phrase::tr("The simple formula: 131.25 × (%1 − %2) = %3 by volume. Formulas "
                              "differ by 0.1 to 0.3 %.")
                .with(m_original, m_final, percent(m_fermented.alcoholSimple, 2));
        default:
            return Phrase::tr("Balling's formula: alcohol by weight × final gravity ÷ 0.794 = %1 × "
                              "%2 ÷ 0.794 = %3 by volume. Formulas differ by 0.1 to 0.3 %.")
                .with(
                    percent(analysis::alcoholByWeight(m_fermented.original, m_fermented.final), 2),
                    m_final, percent(m_fermented.alcoholBalling, 2));
        }
    }

private:
    std::string percent(double value, int decimals) const
    {
        return m_words.number(value, decimals) + " %";
    }

    std::string real() const
    {
        return Phrase::tr("Share of the extract by weight that has fermented, by Balling: the real "
                          "extract is 0.1808 × original + 0.8192 × apparent extract, of %1 and %2: "
                          "%3.")
            .with(plato(m_fermented.original), plato(m_fermented.final),
                  percent(m_fermented.realAttenuation, 1));
    }

    std::string plato(Gravity gravity) const { return m_words.number(platoOf(gravity), 2) + " °P"; }

    const ExplainText& m_words;
    const Fermentation& m_fermented;
    std::string m_original;
    std::string m_final;
};

} // namespace

std::string explainBeer(const ExplainText& words, Figure figure)
{
    const analysis::RunFigures& figures = words.review().figures;
    if (figure == Figure::heatMoved || figure == Figure::effectivePerformance) {
        if (!figures.crashHeat)
            return whyNoHeat(words.review());
        return figure == Figure::heatMoved ? heatMoved(words, *figures.crashHeat)
                                           : effectivePerformance(words, *figures.crashHeat);
    }
    if (!figures.fermentation)
        return whyNoFermentation(words.review());
    return GravityExplainer(words, *figures.fermentation).say(figure) +
           whichFinal(words, *figures.fermentation);
}

} // namespace holdband::results
