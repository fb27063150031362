// The evidence of a batch in words: its sensors with their doubts, its meters, how much was seen,
// and the limits that it was judged by.
#pragma once

#include "core/results/run/provenance.h"
#include "ui/report/compose/cells.h"

namespace holdband::report {

bool readsRoom(const results::SensorBasis& sensor);

/// `shared`: the beer was read by several sensors, one after another, and their readings are one.
QString sensorWords(const results::SensorBasis& basis, const Cells& cells, bool shared);
QString meterWords(const Meter& meter);
QString coverageWords(const results::Basis& basis, const Cells& cells);
QString toleranceWords(const results::Basis& basis, const Cells& cells);
QString gapLimitWords(const results::Basis& basis);
QString graceWords(const results::Basis& basis);

} // namespace holdband::report
