#include "core/results/run/certainty_text.h"

#include "core/text/phrase.h"
#include "core/text/quantities.h"

namespace holdband::results {

using analysis::JudgedBatch;
using analysis::Verdict;

namespace {

std::string uncertaintyText(const JudgedBy& by, const VerdictFormat& format)
{
    return "±" + differenceText(*by.rules.accuracy, format.unit, 2, format.decimalSign);
}

/// What the verdict would be in a band wider by the uncertainty.
Phrase inWiderBand(Verdict verdict)
{
    switch (verdict) {
    case Verdict::stayed:
        return Phrase::tr("in a band wider by that it would have stayed");
    case Verdict::left:
        return Phrase::tr("in a band wider by that, settling ends earlier, and after that the beer "
                          "leaves the band");
    case Verdict::missed:
        return Phrase::tr("in a band wider by that it would have missed a target");
    case Verdict::notEnoughData:
        break;
    }
    return Phrase::tr("in a band wider by that there would not be enough data");
}

Phrase inNarrowerBand(Verdict verdict)
{
    switch (verdict) {
    case Verdict::stayed:
        return Phrase::tr("in a band narrower by that, settling lasts longer, and after that the "
                          "beer stays in the band");
    case Verdict::left:
        return Phrase::tr("in a band narrower by that it would have left the band");
    case Verdict::missed:
        return Phrase::tr("in a band narrower by that it would have missed a target");
    case Verdict::notEnoughData:
        break;
    }
    return Phrase::tr("in a band narrower by that there would not be enough data");
}

std::string sureText(const JudgedBy& by, const JudgedBatch& judged, const VerdictFormat& format)
{
    const std::string doubt = uncertaintyText(by, format);
    switch (judged.asPlanned.verdict) {
    case Verdict::left:
        return Phrase::tr("Sure: it also leaves the band widened by the sensor's %1.").with(doubt);
    case Verdict::stayed:
        return Phrase::tr("Sure: it also stays in the band narrowed by the sensor's %1.")
            .with(doubt);
    default:
        return Phrase::tr("Sure: it also misses with the band widened by the sensor's %1.")
            .with(doubt);
    }
}

std::string unsureText(const JudgedBy& by, const JudgedBatch& judged, const VerdictFormat& format)
{
    const Verdict verdict = judged.asPlanned.verdict;
    const Phrase why = judged.wider->verdict != verdict ? inWiderBand(judged.wider->verdict)
                       : judged.tighter->verdict != verdict
                           ? inNarrowerBand(judged.tighter->verdict)
                           : Phrase::tr("the band is no wider than the uncertainty");
    return Phrase::tr("Within the sensor's uncertainty of %1: %2.")
        .with(uncertaintyText(by, format), why.text());
}

} // namespace

std::string certaintyText(const JudgedBatch& judged, const JudgedBy& by,
                          const VerdictFormat& format)
{
    if (judged.asPlanned.verdict == Verdict::notEnoughData)
        return {};
    if (!by.rules.accuracy)
        return Phrase::tr("How sure is unknown: the beer sensor's accuracy is not on record.");
    return *judged.sure ? sureText(by, judged, format) : unsureText(by, judged, format);
}

} // namespace holdband::results
