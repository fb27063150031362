// The report of two batches, or two setups, side by side.
#pragma once

#include "core/results/comparison/side_by_side.h"
#include "core/results/run/basis.h"
#include "ui/report/compose/document.h"
#include "ui/report/compose/origin.h"

namespace holdband::report {

/// What the batches of each side rest on.
struct PairBases {
    std::vector<review::Basis> a;
    std::vector<review::Basis> b;
};

/// Problem: the logbook's zone is unknown.
Result<Document> pairDocument(const review::SideBySide& pair, const PairBases& bases,
                              const Origin& origin);

} // namespace holdband::report
