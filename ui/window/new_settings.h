// The settings that a new logbook begins with: the computer's zone, and the locale's units and
// currency.
#pragma once

#include "core/model/equipment.h"

namespace holdband::ui {

LogbookSettings usualSettings();

} // namespace holdband::ui
