#include "core/results/comparison/measure_text.h"

#include "core/text/phrase.h"

#include <cmath>

namespace holdband::results {

using analysis::Ahead;
using analysis::Bounded;
using analysis::Measure;
using analysis::MeasureId;

namespace {

/// How a measure is written: its title, the factor for its numbers, and the decimals.
struct Style {
    std::string title;
    double factor = 1.0;
    int decimals = 2;
};

std::string money(const LogbookSettings& settings, const std::string& title)
{
    return settings.currency.empty() ? title : title + ", " + settings.currency;
}

Style temperatureStyle(const std::string& title, const LogbookSettings& settings)
{
    const TemperatureUnit unit = settings.temperatureUnit();
    return {title + ", " + std::string(unitText(unit)), degreesPerKelvin(unit), 2};
}

Style styleOf(MeasureId id, const LogbookSettings& settings)
{
    const bool us = settings.temperatureUnit() == TemperatureUnit::fahrenheit;
    switch (id) {
    case MeasureId::energy:
        return {Phrase::tr("Energy, kWh")};
    case MeasureId::energyBeforeCrash:
        return {Phrase::tr("before the crash, kWh")};
    case MeasureId::energyCrash:
        return {Phrase::tr("the crash, kWh")};
    case MeasureId::meanPower:
        return {Phrase::tr("Mean power, W"), 1.0, 1};
    case MeasureId::energyPerDegreeDay:
        return {us ? Phrase::tr("per °F·day of lift, Wh") : Phrase::tr("per °C·day of lift, Wh"),
                perDegree(1000.0, settings.temperatureUnit()), 1};
    case MeasureId::cost:
        return {money(settings, Phrase::tr("Energy cost"))};
    case MeasureId::insideShare:
        return {Phrase::tr("Inside the band, %"), 100.0, 1};
    case MeasureId::outsideHours:
        return {Phrase::tr("Outside the band, h"), 1.0, 2};
    case MeasureId::excursions:
        return {Phrase::tr("Excursions"), 1.0, 0};
    case MeasureId::worstPastEdge:
        return temperatureStyle(Phrase::tr("Worst past the edge"), settings);
    case MeasureId::rmsDeviation:
        return temperatureStyle(Phrase::tr("Root mean square deviation"), settings);
    case MeasureId::meanAbsoluteDeviation:
        return temperatureStyle(Phrase::tr("Typical deviation"), settings);
    case MeasureId::meanDeviation:
        return temperatureStyle(Phrase::tr("Mean deviation"), settings);
    case MeasureId::settlingFirst:
        return {Phrase::tr("First stage settled in, h"), 1.0, 1};
    case MeasureId::settlingCrash:
        return {Phrase::tr("Crash settled in, h"), 1.0, 1};
    case MeasureId::effectivePerformance:
        return {Phrase::tr("Cooling efficiency (est.)")};
    case MeasureId::parts:
        return {money(settings, Phrase::tr("Parts"))};
    }
    return {};
}

std::string numberText(double value, const Style& style, const SideFormat& format)
{
    const double written = value * style.factor;
    // A count, or the mean count of several batches.
    const bool part = style.decimals == 0 && written != std::round(written);
    return format.fixed(written, part ? 1 : style.decimals);
}

std::string boundsText(const Bounded& figure, const Style& style, const SideFormat& format)
{
    if (!figure.bounded() || *figure.low == *figure.high)
        return {};
    return " (" + numberText(*figure.low, style, format) + " – " +
           numberText(*figure.high, style, format) + ")";
}

std::string boundedText(const std::optional<Bounded>& figure, const Style& style,
                        const SideFormat& format)
{
    return figure ? numberText(figure->value, style, format) + boundsText(*figure, style, format)
                  : "–";
}

/// If the divisor may be close to 0, the upper end is huge and is written as "over" a limit.
std::string ratioText(const std::optional<Bounded>& ratio, const SideFormat& format)
{
    constexpr double most = 100.0;
    const Style style{{}, 1.0, 2};
    if (!ratio || !ratio->bounded() || *ratio->high < most)
        return boundedText(ratio, style, format);
    return Phrase::tr("%1 (%2 – over %3)", "a ratio and its ends")
        .with(numberText(ratio->value, style, format), numberText(*ratio->low, style, format),
              format.fixed(most, 0));
}

std::string aheadText(const std::optional<Ahead>& ahead)
{
    if (!ahead)
        return {};
    if (*ahead == Ahead::tooClose)
        return Phrase::tr("too close to call");
    return *ahead == Ahead::a ? "A" : "B";
}

} // namespace

MeasureText measureText(const Measure& measure, const SideFormat& format)
{
    const Style style = styleOf(measure.rule.id, format.settings);
    MeasureText text;
    text.title = style.title;
    text.a = boundedText(measure.a, style, format);
    text.b = boundedText(measure.b, style, format);
    text.difference = boundedText(measure.difference, style, format);
    text.differenceOnly =
        measure.difference ? numberText(measure.difference->value, style, format) : "–";
    text.ratio = ratioText(measure.ratio, format);
    text.ahead = aheadText(measure.ahead);
    text.factor = style.factor;
    return text;
}

std::string figureText(MeasureId id, double value, const SideFormat& format)
{
    return numberText(value, styleOf(id, format.settings), format);
}

std::string measureTitle(MeasureId id, const SideFormat& format)
{
    return styleOf(id, format.settings).title;
}

std::string_view measureName(MeasureId id)
{
    for (const analysis::MeasureRule& rule : analysis::measureRules()) {
        if (rule.id == id)
            return rule.name;
    }
    return {};
}

} // namespace holdband::results
