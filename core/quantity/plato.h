// Extract of wort in degrees Plato. Source: cubic fit to NBS Circular 440, Table 114 (coefficients
// from memory, checked against the table's rows). No Qt.
#pragma once

#include "core/quantity/gravity.h"

namespace holdband {

/// °Plato (grams of extract in 100 g), at least 0. Within 0.002 of the table for 1.008 … 1.083.
double platoOf(Gravity gravity);

/// The gravity of a given °Plato (0 … 40), by inversion of platoOf.
Gravity gravityOfPlato(double plato);

} // namespace holdband
