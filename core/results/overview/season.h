// All batches of a setup, one line each, and the energy that they used together.
#pragma once

#include "core/analysis/verdict.h"
#include "core/analysis/weather.h"
#include "core/results/run/provenance.h"
#include "core/results/run/run_review.h"

#include <optional>
#include <string>
#include <vector>

namespace holdband::results {

struct SeasonLine {
    std::string batch;
    Span span;         ///< pitched to ended, or to the last reading of an open one
    bool open = false; ///< not ended yet
    analysis::Verdict verdict = analysis::Verdict::notEnoughData;
    std::string mark;     ///< see verdictMark
    std::string headline; ///< the verdict sentence
    std::optional<double> insideShare;
    std::optional<double> coverage; ///< covered ÷ hold time, 0 … 1
    std::size_t excursions = 0;
    double worstPeak = 0.0; ///< K beyond an edge; 0 without excursions
    analysis::EnergyFigure energy;
    bool partlyMetered = false;
    std::optional<double> meanWatts; ///< W
    std::optional<analysis::Cost> cost;
    std::optional<double> meanLift; ///< K, room above beer
    std::optional<double> kwhPerDegreeDay;
    std::optional<double> crashPerformance; ///< heat removed per electricity used, an estimate
};

struct Season {
    LogbookSettings settings;
    Zone zone;
    Setup setup;
    int setupIndex = 0;                  ///< among the logbook's setups; decides its colour
    std::vector<SeasonLine> batches;     ///< in order of pitching
    std::vector<Provenance> provenances; ///< what the figures of each are based on
    /// Sums over the batches. A batch without metered energy adds nothing; `metered` counts the
    /// others.
    analysis::EnergyFigure energy;
    std::size_t metered = 0;
    std::optional<analysis::Cost> cost; ///< of the batches that have one
    std::size_t priced = 0;
    std::optional<double> parts;       ///< sum of the setup's parts list
    std::string sentence;              ///< how many stayed in the band, and the energy used
    std::vector<std::string> findings; ///< sentences about odd data, with the batch's name
    std::vector<std::string> cautions; ///< for the kind of setup
};

/// Problem (data): no setup of that name (with suggestions).
Result<Season> reviewSeason(const store::LogbookFile& logbook, const std::string& setup,
                            char decimalSign = '.');

} // namespace holdband::results
