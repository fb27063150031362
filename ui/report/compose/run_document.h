// The report of one run.
#pragma once

#include "core/results/run/provenance.h"
#include "core/results/run/run_review.h"
#include "ui/report/compose/document.h"
#include "ui/report/compose/origin.h"

namespace holdband::report {

Document runDocument(const results::RunReview& review, const results::Provenance& provenance,
                     const Origin& origin);

} // namespace holdband::report
