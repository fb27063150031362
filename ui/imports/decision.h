// What can be decided about a log, in terms of the Imports page's own controls.
#pragma once

namespace holdband::ui {

enum class Decision { none, dateOrder, zone, unit, columns };

} // namespace holdband::ui
