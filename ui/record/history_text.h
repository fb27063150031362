// The history as text: its entries and changed rows as the cells of tables. Pure, without widgets.
#pragma once

#include "core/store/history/history.h"
#include "core/text/zone.h"
#include "ui/forms/unit_format.h"
#include "ui/tables/table_model.h"

namespace holdband::ui {

TableText historyTable(const std::vector<store::StoredHistoryEntry>& entries, const Zone& zone);

/// One line for each value that changed; internal numbers such as row ids are left out, instants
/// and choices are shown as people write them, and quantities in the logbook's units.
TableText rowText(const std::vector<store::ChangedRow>& rows, const UnitFormat& format);

} // namespace holdband::ui
