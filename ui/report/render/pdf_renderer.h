// A report as PDF: text that can be searched, fonts embedded, the chart as vectors, page numbers.
#pragma once

#include "ui/report/compose/document.h"

#include <QByteArray>
#include <QPageSize>
#include <functional>

namespace holdband::report {

/// Called between pages: true stops the work, and there is no result.
using Stopped = std::function<bool()>;

QByteArray asPdf(const Document& document, const QPageSize& paper, const Stopped& stopped = {});

} // namespace holdband::report
