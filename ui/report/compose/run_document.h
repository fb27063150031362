// The report of one run.
#pragma once

#include "core/results/run/basis.h"
#include "core/results/run/run_review.h"
#include "ui/report/compose/document.h"
#include "ui/report/compose/origin.h"

namespace holdband::report {

Document runDocument(const review::RunReview& review, const review::Basis& basis,
                     const Origin& origin);

} // namespace holdband::report
