// The setups of a meter over time, as typed rows. No widgets.
#pragma once

#include "core/model/equipment.h"
#include "core/problem.h"
#include "ui/forms/edit_table_model.h"
#include "ui/forms/unit_format.h"

namespace holdband::ui {

std::vector<EditColumn> moveColumns(const std::vector<Setup>& setups, const UnitFormat& format);
std::vector<EditRow> moveRows(const std::vector<MeterMove>& moves, const UnitFormat& format);
/// In order of time. Problem (data): an invalid row, or two at the same time.
Result<std::vector<MeterMove>> movesOf(const std::vector<EditRow>& rows,
                                       const std::vector<MeterMove>& origin,
                                       const UnitFormat& format);

} // namespace holdband::ui
