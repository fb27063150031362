// The figures of a report as CSV after RFC 4180: part, of, figure, value, unit; one figure a line,
// in UTF-8, numbers with a point and unrounded. A text that a spreadsheet would take for a formula
// gets an apostrophe before it; a number never does.
#pragma once

#include "ui/report/compose/document.h"

#include <QByteArray>

namespace holdband::report {

QByteArray asCsv(const Document& document);

} // namespace holdband::report
