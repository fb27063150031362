// The initial settings of a new logbook: the computer's zone, and the locale's units and currency.
#pragma once

#include "core/model/equipment.h"

namespace holdband::ui {

LogbookSettings usualSettings();

} // namespace holdband::ui
