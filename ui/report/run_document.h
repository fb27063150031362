// The report of one run.
#pragma once

#include "core/review/basis.h"
#include "core/review/run_review.h"
#include "ui/report/document.h"
#include "ui/report/origin.h"

namespace holdband::report {

Document runDocument(const review::RunReview& review, const review::Basis& basis,
                     const Origin& origin);

} // namespace holdband::report
