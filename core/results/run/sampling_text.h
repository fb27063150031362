// Says what the time between two readings can hide of an excursion, where that is worth saying.
#pragma once

#include "core/analysis/sampling_doubt.h"
#include "core/analysis/verdict.h"
#include "core/results/run/verdict_text.h"

#include <string>

namespace holdband::results {

/// Of an excursion of the batch as planned.
analysis::SamplingDoubt samplingDoubtOf(const analysis::JudgedBatch& judged, std::size_t stage,
                                        const analysis::Excursion& excursion);

/// About the worst of the run: "The log's 10 min between readings can hide up to 0.6 °F more than
/// the worst that was read." Empty where there is none or it is not notable.
std::string worstSamplingText(const analysis::JudgedBatch& judged, const VerdictFormat& format);

/// About one excursion, with its length; empty where it is not notable.
std::string samplingText(const analysis::JudgedBatch& judged, std::size_t stage,
                         const analysis::Excursion& excursion, const VerdictFormat& format);

} // namespace holdband::results
