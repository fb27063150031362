// The report of two batches, or two setups, side by side.
#pragma once

#include "core/results/comparison/side_by_side.h"
#include "core/results/run/provenance.h"
#include "ui/report/compose/document.h"
#include "ui/report/compose/origin.h"

namespace holdband::report {

/// The data behind the figures of each side's batches.
struct PairProvenance {
    std::vector<results::Provenance> a;
    std::vector<results::Provenance> b;
};

/// Problem: the logbook's zone is unknown.
Result<Document> pairDocument(const results::SideBySide& pair, const PairProvenance& provenances,
                              const Origin& origin);

} // namespace holdband::report
