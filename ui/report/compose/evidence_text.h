// The data of a batch as text: its sensors with their uncertainties, its meters, the coverage, and
// the limits used for the verdict.
#pragma once

#include "core/results/run/provenance.h"
#include "ui/report/compose/cells.h"

namespace holdband::report {

bool readsRoom(const results::SensorBasis& sensor);

/// `shared`: several sensors read the beer, one after another, and their readings are counted
/// together.
QString sensorWords(const results::SensorBasis& basis, const Cells& cells, bool shared);
QString meterWords(const Meter& meter);
QString coverageWords(const results::Basis& basis, const Cells& cells);
QString toleranceWords(const results::Basis& basis, const Cells& cells);
QString gapLimitWords(const results::Basis& basis);
QString graceWords(const results::Basis& basis);

} // namespace holdband::report
