// The figures of a report as CSV after RFC 4180, in UTF-8: one figure per line, in these columns.
//
//   id      what the figure is, for programs: English words in lower case, joined by `_`; the table
//           and the figure joined by `.`, with the row between them where it is special:
//           stages.inside_share, energy.kwh, energy.crash.kwh, measures.energy_kwh.ratio. Names are
//           those of the JSON answers where they have the figure. An id is the same in every
//           language and every logbook, and it never changes: a figure that means something else
//           has another id.
//   part    the table or part of the report, in the user's language
//   of      what the row is about: a batch, a stage, a day, an instant, a measure; empty in a list
//           of facts
//   figure  the figure's name, in the user's language
//   value   a number unrounded, with a point; an instant in local time with its offset (RFC 3339),
//           a span as two of them joined by `/`; or a text as on a page, in the user's language and
//           the logbook's units
//   unit    of a number, whatever the logbook's units: °C, K for differences, h, kWh, W,
//           kWh/(K·d), the logbook's currency (empty where it has none), 1 for shares (fractions),
//           counts and scores; empty for an instant and a text
//
// A figure that is absent has no line. A text that a spreadsheet would take for a formula is
// prefixed with an apostrophe; a number never is.
#pragma once

#include "ui/report/compose/document.h"

#include <QByteArray>

namespace holdband::report {

QByteArray asCsv(const Document& document);

} // namespace holdband::report
