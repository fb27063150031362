// The table "Computed from": the data behind a report, for one batch and for several.
#pragma once

#include "core/results/run/provenance.h"
#include "ui/report/compose/document.h"
#include "ui/report/compose/origin.h"

namespace holdband::report {

/// Adds one fact per row.
void addBasis(Document& document, const results::Provenance& provenance, const Origin& origin,
              const Cells& cells);

/// A batch in a report on several; `side` is "A" or "B", or empty.
struct SideProvenance {
    QString side;
    const results::Provenance& provenance;
};

/// Adds where and when the report was made, a row for each batch, and how it was computed.
void addProvenance(Document& document, const std::vector<SideProvenance>& batches,
                   const Origin& origin, const Cells& cells, const QString& method);

} // namespace holdband::report
