// The sensors and vessels of a batch over time, as typed rows.
#pragma once

#include "core/model/batch.h"
#include "core/problem.h"
#include "ui/forms/edit_table_model.h"
#include "ui/forms/unit_format.h"

namespace holdband::ui {

std::vector<EditColumn> useColumns(const QStringList& sensors, const UnitFormat& format);
std::vector<EditRow> useRows(const std::vector<BeerUse>& uses, const UnitFormat& format);
/// In order of time. Problem (data): an invalid row, one before pitching or after the end, two at
/// the same time.
Result<std::vector<BeerUse>> usesOf(const std::vector<EditRow>& rows,
                                    const std::vector<BeerUse>& origin, const Batch& batch,
                                    const UnitFormat& format);

} // namespace holdband::ui
