// "Computed from": what a report rests on, of one batch and of several.
#pragma once

#include "core/results/run/provenance.h"
#include "ui/report/compose/document.h"
#include "ui/report/compose/origin.h"

namespace holdband::report {

/// A fact a row.
void addBasis(Document& document, const results::Basis& basis, const Origin& origin,
              const Cells& cells);

/// A batch of a report on several; `side` is "A" or "B", or empty.
struct SideBasis {
    QString side;
    const results::Basis& basis;
};

/// Where and when it was made, a row for each batch, and how it was computed.
void addBases(Document& document, const std::vector<SideBasis>& batches, const Origin& origin,
              const Cells& cells, const QString& method);

} // namespace holdband::report
