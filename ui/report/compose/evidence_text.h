// The data of a batch as text: its sensors with their uncertainties, its meters, the coverage, and
// the limits used for the verdict.
#pragma once

#include "core/results/run/provenance.h"
#include "ui/report/compose/cells.h"

namespace holdband::report {

bool readsRoom(const results::SensorProvenance& sensor);

/// `shared`: several sensors read the beer, one after another, and their readings are counted
/// together.
QString sensorText(const results::SensorProvenance& provenance, const Cells& cells, bool shared);
QString meterText(const Meter& meter);
QString coverageWords(const results::Provenance& provenance, const Cells& cells);
QString toleranceText(const results::Provenance& provenance, const Cells& cells);
QString gapLimitText(const results::Provenance& provenance);
QString ignoreShorterThanText(const results::Provenance& provenance);
/// After what the beer is settled: "1 h inside the band".
QString dwellText(const results::Provenance& provenance);
/// After what an excursion ends: "15 min back inside".
QString returnText(const results::Provenance& provenance);

} // namespace holdband::report
