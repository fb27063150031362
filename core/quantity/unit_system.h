// The two systems of units that a logbook may be kept in. No Qt.
#pragma once

namespace holdband {

enum class UnitSystem { us, metric };

} // namespace holdband
