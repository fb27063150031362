// A report as one HTML file: it needs no network, prints well, and works with screen readers. The
// chart is embedded as SVG.
#pragma once

#include "ui/report/compose/document.h"

#include <QByteArray>

namespace holdband::report {

QByteArray asHtml(const Document& document, ui::Scheme scheme);

} // namespace holdband::report
