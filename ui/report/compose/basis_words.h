// The evidence of a batch in words: its sensors with their doubts, its meters, how much was seen,
// and the limits that it was judged by.
#pragma once

#include "core/results/run/basis.h"
#include "ui/report/compose/cells.h"

namespace holdband::report {

bool readsRoom(const review::SensorBasis& sensor);

/// `shared`: the beer was read by several sensors, one after another, and their readings are one.
QString sensorWords(const review::SensorBasis& basis, const Cells& cells, bool shared);
QString meterWords(const Meter& meter);
QString coverageWords(const review::Basis& basis, const Cells& cells);
QString toleranceWords(const review::Basis& basis, const Cells& cells);
QString gapLimitWords(const review::Basis& basis);
QString graceWords(const review::Basis& basis);

} // namespace holdband::report
