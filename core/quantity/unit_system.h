// The two systems of units that a logbook can use. No Qt.
#pragma once

namespace holdband {

enum class UnitSystem { us, metric };

} // namespace holdband
