#include "core/results/run/stage_texts.h"

#include "core/results/run/energy_texts.h"
#include "core/text/durations.h"
#include "core/text/numbers.h"
#include "core/text/phrase.h"
#include "core/text/quantities.h"

#include <cmath>

namespace holdband::results {

using analysis::Settled;
using analysis::StageFigures;

namespace {

constexpr int differenceDecimals = 2;
constexpr const char* minusSign = "−";

std::string lengthText(double ms, char decimalSign)
{
    return durationText(wholeMs(ms), decimalSign);
}

std::string settledText(const StageFigures& stage, char decimalSign)
{
    switch (stage.settled) {
    case Settled::missed:
        return Phrase::tr("missed");
    case Settled::notYet:
        return Phrase::tr("still settling");
    case Settled::arrived:
        return lengthText(*stage.settledInMs, decimalSign);
    case Settled::notNeeded:
        break;
    }
    return noFigure;
}

std::string shareOrNone(std::optional<double> share, char decimalSign)
{
    return share ? shareText(*share, 1, decimalSign) : noFigure;
}

} // namespace

std::string signedDifference(std::optional<double> kelvins, TemperatureUnit unit, char decimalSign)
{
    if (!kelvins)
        return noFigure;
    const double value = valueIn(TemperatureDifference::kelvins(*kelvins), unit);
    const std::string size = fixedText(std::abs(value), differenceDecimals, decimalSign);
    if (size == fixedText(0.0, differenceDecimals, decimalSign))
        return size;
    return (value < 0.0 ? minusSign : "+") + size;
}

std::string pastEdgeText(std::optional<double> kelvins, TemperatureUnit unit, char decimalSign)
{
    const std::string text = signedDifference(kelvins, unit, decimalSign);
    if (kelvins && text == fixedText(0.0, differenceDecimals, decimalSign))
        return "< " + fixedText(0.01, differenceDecimals, decimalSign);
    return text;
}

StageTexts stageTexts(const RunReview& review, std::size_t stage)
{
    const char sign = review.decimalSign;
    const TemperatureUnit unit = review.settings.temperatureUnit();
    const StageFigures& figures = review.figures.stages[stage];
    StageTexts texts;
    texts.settledIn = settledText(figures, sign);
    texts.hold = lengthText(review.figures.judged.asPlanned.stages[stage].holdMs, sign);
    texts.coverage = shareOrNone(figures.coverage, sign);
    texts.inside = shareOrNone(figures.insideShare, sign);
    texts.meanDeviation = signedDifference(figures.meanDeviation, unit, sign);
    texts.worst = pastEdgeText(figures.worst, unit, sign);
    texts.kwh = energyTexts(review.figures.energy.stages[stage].energy, sign).kwh;
    return texts;
}

} // namespace holdband::results
