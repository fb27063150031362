// Explanations of the heat moved over the crash, and of what the gravities say.
#include "core/analysis/gravity.h"
#include "core/analysis/heat.h"
#include "core/review/explain_words.h"

namespace holdband::review {

using analysis::CrashHeat;
using analysis::Fermentation;

namespace {

std::string whyNoHeat(const RunReview& review)
{
    if (!review.figures.crash)
        return "There is no crash whose heat could be estimated.";
    if (!review.batch().volume)
        return "The heat of the crash needs the batch's volume, which is not on record.";
    return "The heat of the crash is that from the first reading outside its band to the arrival "
           "in it, and the beer was not seen to arrive from outside.";
}

std::string volumeWords(const ExplainWords& words, Volume volume)
{
    const std::string litres = volumeText(volume, UnitSystem::metric, words.sign());
    if (words.review().settings.units == UnitSystem::metric)
        return litres;
    return volumeText(volume, UnitSystem::us, words.sign()) + " (" + litres + ")";
}

/// "68.0 °F to 38.0 °F (16.7 K)"
std::string fallWords(const ExplainWords& words, const CrashHeat& heat)
{
    return words.temperature(heat.from) + " to " + words.temperature(heat.to) + " (" +
           words.number((heat.from - heat.to).kelvins(), 1) + " K)";
}

std::string heatMoved(const ExplainWords& words, const CrashHeat& heat)
{
    return "An estimate, good to a few percent: volume × density × specific heat of beer × the "
           "fall to the arrival, " +
           volumeWords(words, *words.review().batch().volume) + " × " +
           words.number(analysis::beerDensity, 3) + " kg/L × " +
           words.number(analysis::beerSpecificHeat, 1) + " kJ/(kg·K) × " + fallWords(words, heat) +
           " = " + words.number(heat.moved.joules() / 1000.0, 0) +
           " kJ = " + words.kwh(heat.moved.kilowattHours(), 3) + ".";
}

std::string effectivePerformance(const ExplainWords& words, const CrashHeat& heat)
{
    const std::string time =
        "from " + words.time(heat.span.start) + " to " + words.time(heat.span.end);
    const auto performance = heat.effectivePerformance();
    if (!performance)
        return "An estimate of heat moved over electricity used, and none is metered " + time + ".";
    return "An estimate: heat moved over the electricity of the same time, " + time + ": " +
           words.kwh(heat.moved.kilowattHours(), 3) + " ÷ " + words.kwh(heat.energy.kwh, 3) +
           " = " + words.number(*performance, 2) + ".";
}

std::string whyNoFermentation(const RunReview& review)
{
    if (!review.batch().originalGravity)
        return "This needs the original gravity, which is not on record.";
    return "This needs the final gravity: none is given, and none was measured.";
}

std::string whichFinal(const ExplainWords& words, const Fermentation& fermented)
{
    if (!fermented.measuredAt)
        return {};
    std::string text = " No final gravity is given: the last measured one, of " +
                       words.time(*fermented.measuredAt) + ", stands for it";
    const auto& last = words.review().figures.gravities.back();
    if (last.reading.sample)
        text += ", corrected from a sample at " + words.temperature(*last.reading.sample) +
                " to a hydrometer's " + words.temperature(analysis::hydrometerCalibration);
    return text + ".";
}

class GravityExplainer {
public:
    GravityExplainer(const ExplainWords& words, const Fermentation& fermented)
        : m_words(words), m_fermented(fermented),
          m_original(gravityText(fermented.original, words.sign())),
          m_final(gravityText(fermented.final, words.sign()))
    {
    }

    std::string say(Figure figure) const
    {
        switch (figure) {
        case Figure::apparentAttenuation:
            return "Fall in gravity over the original gravity's excess over water: (" + m_original +
                   " − " + m_final + ") ÷ (" + m_original +
                   " − 1) = " + percent(m_fermented.apparentAttenuation, 1) + ".";
        case Figure::realAttenuation:
            return real();
        case Figure::alcoholSimple:
            return "The simple formula: 131.25 × (" + m_original + " − " + m_final +
                   ") = " + percent(m_fermented.alcoholSimple, 2) +
                   " by volume. Formulas differ by 0.1 to 0.3 %.";
        default:
            return "Balling's formula: alcohol by weight × final gravity ÷ 0.794 = " +
                   percent(analysis::alcoholByWeight(m_fermented.original, m_fermented.final), 2) +
                   " × " + m_final + " ÷ 0.794 = " + percent(m_fermented.alcoholBalling, 2) +
                   " by volume. Formulas differ by 0.1 to 0.3 %.";
        }
    }

private:
    std::string percent(double value, int decimals) const
    {
        return m_words.number(value, decimals) + " %";
    }

    std::string real() const
    {
        return "Share of the extract by weight that has fermented, by Balling: the real extract is "
               "0.1808 × original + 0.8192 × apparent extract, of " +
               plato(m_fermented.original) + " and " + plato(m_fermented.final) + ": " +
               percent(m_fermented.realAttenuation, 1) + ".";
    }

    std::string plato(Gravity gravity) const
    {
        return m_words.number(analysis::platoOf(gravity), 2) + " °P";
    }

    const ExplainWords& m_words;
    const Fermentation& m_fermented;
    std::string m_original;
    std::string m_final;
};

} // namespace

std::string explainBeer(const ExplainWords& words, Figure figure)
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

} // namespace holdband::review
