// "Computed from": what a run's report rests on.
#pragma once

#include "core/review/basis.h"
#include "ui/report/document.h"
#include "ui/report/origin.h"

namespace holdband::report {

void addBasis(Document& document, const review::RunReview& review, const review::Basis& basis,
              const Origin& origin);

} // namespace holdband::report
