// The data for the Equipment page and its dialogs, read at once on a worker.
#pragma once

#include "core/store/logbook_file.h"
#include "ui/equipment/equipment_tables.h"

namespace holdband::ui {

Result<Equipment> readEquipment(const store::LogbookFile& file);

} // namespace holdband::ui
