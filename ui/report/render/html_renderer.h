// A report as one HTML file: it opens without a network, prints well, and can be read aloud. The
// chart stands in it as SVG.
#pragma once

#include "ui/report/compose/document.h"

#include <QByteArray>

namespace holdband::report {

QByteArray asHtml(const Document& document, ui::Scheme scheme);

} // namespace holdband::report
