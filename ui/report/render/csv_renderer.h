// The figures of a report as CSV after RFC 4180: part, of, figure, value, unit; one figure per
// line, in UTF-8, numbers with a point and unrounded. A text that a spreadsheet would take for a
// formula is prefixed with an apostrophe; a number never is.
#pragma once

#include "ui/report/compose/document.h"

#include <QByteArray>

namespace holdband::report {

QByteArray asCsv(const Document& document);

} // namespace holdband::report
