#include "core/review/measure_words.h"

#include "core/text/durations.h"
#include "core/text/numbers.h"
#include "core/text/quantities.h"

#include <algorithm>
#include <cmath>

namespace holdband::review {

using analysis::Ahead;
using analysis::Bounded;
using analysis::Measure;
using analysis::MeasureId;

namespace {

/// How a measure is written: its title, what its numbers are multiplied by, and decimals.
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
    const double factor = unit == TemperatureUnit::fahrenheit ? 1.8 : 1.0;
    return {title + ", " + std::string(unitText(unit)), factor, 2};
}

Style styleOf(MeasureId id, const LogbookSettings& settings)
{
    const bool us = settings.temperatureUnit() == TemperatureUnit::fahrenheit;
    switch (id) {
    case MeasureId::energy:
        return {"Energy, kWh"};
    case MeasureId::energyBeforeCrash:
        return {"before the crash, kWh"};
    case MeasureId::energyCrash:
        return {"the crash, kWh"};
    case MeasureId::meanPower:
        return {"Mean power, W", 1.0, 1};
    case MeasureId::energyPerDegreeDay:
        return us ? Style{"per °F·day of lift, Wh", 1000.0 / 1.8, 1}
                  : Style{"per °C·day of lift, Wh", 1000.0, 1};
    case MeasureId::cost:
        return {money(settings, "Energy cost")};
    case MeasureId::insideShare:
        return {"Inside the band, %", 100.0, 1};
    case MeasureId::outsideHours:
        return {"Outside the band, h", 1.0, 2};
    case MeasureId::excursions:
        return {"Excursions", 1.0, 0};
    case MeasureId::worstPastEdge:
        return temperatureStyle("Worst past the edge", settings);
    case MeasureId::rmsDeviation:
        return temperatureStyle("Root mean square deviation", settings);
    case MeasureId::meanAbsoluteDeviation:
        return temperatureStyle("Typical deviation", settings);
    case MeasureId::meanDeviation:
        return temperatureStyle("Mean deviation", settings);
    case MeasureId::settlingFirst:
        return {"First stage settled in, h", 1.0, 1};
    case MeasureId::settlingCrash:
        return {"Crash settled in, h", 1.0, 1};
    case MeasureId::effectivePerformance:
        return {"Heat moved per electricity (estimate)"};
    case MeasureId::parts:
        return {money(settings, "Parts")};
    }
    return {};
}

std::string numberText(double value, const Style& style)
{
    return fixedText(value * style.factor, style.decimals);
}

std::string boundsText(const Bounded& figure, const Style& style)
{
    if (!figure.bounded() || *figure.low == *figure.high)
        return {};
    return " (" + numberText(*figure.low, style) + " – " + numberText(*figure.high, style) + ")";
}

std::string boundedText(const std::optional<Bounded>& figure, const Style& style)
{
    return figure ? numberText(figure->value, style) + boundsText(*figure, style) : "–";
}

std::string aheadText(const std::optional<Ahead>& ahead)
{
    if (!ahead)
        return {};
    if (*ahead == Ahead::tooClose)
        return "too close to call";
    return *ahead == Ahead::a ? "A" : "B";
}

} // namespace

MeasureWords measureWords(const Measure& measure, const LogbookSettings& settings)
{
    const Style style = styleOf(measure.rule.id, settings);
    return {style.title,
            boundedText(measure.a, style),
            boundedText(measure.b, style),
            boundedText(measure.difference, style),
            boundedText(measure.ratio, {{}, 1.0, 2}),
            aheadText(measure.ahead)};
}

std::string_view measureName(MeasureId id)
{
    for (const analysis::MeasureRule& rule : analysis::measureRules()) {
        if (rule.id == id)
            return rule.name;
    }
    return {};
}

namespace {

struct NoteText {
    std::string note;
    std::string effect;
};

/// The two sides of a note, ready to be put into a sentence.
class NoteWriter {
public:
    NoteWriter(const analysis::FairnessNote& note, const LogbookSettings& settings,
               const std::string& a, const std::string& b)
        : m_note(note), m_settings(settings), m_a(a), m_b(b)
    {
    }

    NoteText write() const
    {
        using enum analysis::NoteKind;
        switch (m_note.kind) {
        case targets:
            return {"the targets differ: " + temperatures(),
                    "the one further from the room has more to do, so energy and temperature are "
                    "not of one task"};
        case tolerances:
            return {"the tolerances differ: " + differences("±"),
                    "a wider band is easier to stay in; deviations compare, time inside does not"};
        case durations:
            return {"they ran for unequal times: " + eachText(length(m_note.a), length(m_note.b)),
                    "energies are compared over the shorter time; hours outside are of unequal "
                    "wholes"};
        case volumes:
            return {"the volumes differ: " + eachText(volume(m_note.a), volume(m_note.b)),
                    "more beer holds and moves more heat"};
        case ambient:
            return {ambientText(),
                    "the warmer room asks for more cooling; energy for each degree-day allows for "
                    "it"};
        case coverage:
            return {"not equally well seen: " + shares(" of the hold time"),
                    "what happened in the gaps is not in the figures"};
        case sensorAccuracy:
            return {"the sensors differ: " + eachText(doubt(m_note.a), doubt(m_note.b)),
                    "the less sure sensor widens the bounds of its side"};
        case sensorPlacement:
            return {"the probes sit in different places",
                    "a probe in the air or on the wall swings otherwise than one in the beer"};
        default:
            return writeMore();
        }
    }

private:
    NoteText writeMore() const
    {
        using enum analysis::NoteKind;
        switch (m_note.kind) {
        case loggingInterval:
            return {"logged " + eachText(interval(m_note.a), interval(m_note.b)),
                    "the slower log misses short excursions"};
        case fermentationHeat:
            return {"the fermentations gave off unequal heat: " +
                        eachText(extract(m_note.a), extract(m_note.b)),
                    "the larger one needed more cooling"};
        case partlyMetered:
            return {"not metered throughout: " + shares(" of the run"),
                    "energies are compared over the elapsed time that is metered in both"};
        case batchesAtOnce:
            return {"batches at once on the setup, in the mean: " +
                        eachText(fixedText(m_note.a, 1), fixedText(m_note.b, 1)),
                    "the shared energy is split evenly, and a setup that serves more at once "
                    "spreads its standing losses"};
        case meterAccuracyAssumed:
            return {"the accuracy of a meter " + assumedText() + " is unknown, 2 % is assumed",
                    "the bounds of the energies rest on it"};
        case missedStage:
            return {"targets were missed: " + eachText(count(m_note.a), count(m_note.b)),
                    "nobody is ahead on temperature"};
        case noCommonMetering:
            return {"there is no elapsed time that is metered in both",
                    "energies can't be compared"};
        default:
            return {};
        }
    }

    std::string eachText(const std::string& left, const std::string& right) const
    {
        return left + " for " + m_a + ", " + right + " for " + m_b;
    }
    std::string temperatures() const
    {
        const TemperatureUnit unit = m_settings.temperatureUnit();
        return eachText(temperatureText(Temperature::celsius(m_note.a), unit),
                        temperatureText(Temperature::celsius(m_note.b), unit));
    }
    std::string difference(double kelvins) const
    {
        return differenceText(TemperatureDifference::kelvins(kelvins), m_settings.temperatureUnit(),
                              1);
    }
    std::string differences(const std::string& sign) const
    {
        return eachText(sign + difference(m_note.a), sign + difference(m_note.b));
    }
    std::string ambientText() const
    {
        const double apart = m_note.a - m_note.b;
        return "the room was on average " + difference(std::abs(apart)) +
               " further above the beer for " + (apart > 0.0 ? m_a : m_b) + " (" +
               eachText(difference(m_note.a), difference(m_note.b)) + ")";
    }
    std::string doubt(double kelvins) const
    {
        const auto accuracy = TemperatureDifference::kelvins(kelvins);
        return kelvins < 0.0 ? "unknown accuracy"
                             : "±" + differenceText(accuracy, m_settings.temperatureUnit());
    }
    std::string volume(double litres) const
    {
        return volumeText(Volume::litres(litres), m_settings.units);
    }
    std::string shares(const std::string& of) const
    {
        return eachText(shareText(m_note.a) + of, shareText(m_note.b) + of);
    }
    std::string assumedText() const
    {
        if (m_note.a > 0.0 && m_note.b > 0.0)
            return "on each side";
        return "of " + (m_note.a > 0.0 ? m_a : m_b);
    }
    static std::string length(double hours) { return durationText(Hours{hours}); }
    static std::string interval(double minutes)
    {
        return minutes > 0.0 ? "every " + durationText(Hours{minutes / 60.0}) : "not at all";
    }
    static std::string extract(double kilograms)
    {
        return fixedText(kilograms, 2) + " kg of extract fermented";
    }
    static std::string count(double value) { return fixedText(value, 0); }

    const analysis::FairnessNote& m_note;
    const LogbookSettings& m_settings;
    const std::string& m_a;
    const std::string& m_b;
};

} // namespace

NoteWords noteWords(const analysis::FairnessNote& note, const LogbookSettings& settings,
                    const std::string& a, const std::string& b)
{
    NoteText text = NoteWriter(note, settings, a, b).write();
    return {std::move(text.note), std::move(text.effect), std::string(measureName(note.touches))};
}

} // namespace holdband::review
