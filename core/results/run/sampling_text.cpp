#include "core/results/run/sampling_text.h"

#include "core/text/durations.h"
#include "core/text/phrase.h"
#include "core/text/quantities.h"

namespace holdband::results {

using analysis::Excursion;
using analysis::JudgedBatch;
using analysis::SamplingDoubt;

namespace {

std::string hiddenText(const SamplingDoubt& doubt, const VerdictFormat& format)
{
    return differenceText(TemperatureDifference::kelvins(doubt.peak), format.unit, 1,
                          format.decimalSign);
}

std::string lengthText(double ms, const VerdictFormat& format)
{
    return durationText(wholeMs(ms), format.decimalSign);
}

bool notableAt(const JudgedBatch& judged, std::size_t stage, const SamplingDoubt& doubt)
{
    return isNotable(doubt, judged.asPlanned.stages[stage].tolerance);
}

} // namespace

SamplingDoubt samplingDoubtOf(const JudgedBatch& judged, std::size_t stage,
                              const Excursion& excursion)
{
    return samplingDoubt(judged.tracks.at(stage), judged.asPlanned.stages.at(stage), excursion);
}

std::string worstSamplingText(const JudgedBatch& judged, const VerdictFormat& format)
{
    const auto& worst = judged.asPlanned.totals.worst;
    if (!worst)
        return {};
    const SamplingDoubt doubt = samplingDoubtOf(judged, worst->stage, worst->excursion);
    if (!notableAt(judged, worst->stage, doubt))
        return {};
    return Phrase::tr("The log's %1 between readings can hide up to %2 more than the worst that "
                      "was read.")
        .with(lengthText(doubt.pieceMs, format), hiddenText(doubt, format));
}

std::string samplingText(const JudgedBatch& judged, std::size_t stage, const Excursion& excursion,
                         const VerdictFormat& format)
{
    const SamplingDoubt doubt = samplingDoubtOf(judged, stage, excursion);
    if (!notableAt(judged, stage, doubt))
        return {};
    const std::string gap = lengthText(doubt.pieceMs, format);
    if (doubt.lengthMs <= 0.0)
        return Phrase::tr("The log's %1 between readings can hide up to %2 more at the peak.")
            .with(gap, hiddenText(doubt, format));
    return Phrase::tr("The log's %1 between readings can hide up to %2 more at the peak, and the "
                      "length is only known to ±%3.")
        .with(gap, hiddenText(doubt, format), lengthText(doubt.lengthMs, format));
}

} // namespace holdband::results
