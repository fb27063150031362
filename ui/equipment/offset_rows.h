// A sensor's offsets as typed rows, and readings in ice water as one typed line. No widgets.
#pragma once

#include "core/model/equipment.h"
#include "core/problem.h"
#include "ui/forms/edit_table_model.h"
#include "ui/forms/unit_format.h"

namespace holdband::ui {

enum OffsetColumn : int { offsetFrom, offsetAdd, offsetDoubt, offsetWhy };

std::vector<EditColumn> offsetColumns(const UnitFormat& format);
EditRow offsetRow(const Offset& offset, int origin, const UnitFormat& format);
std::vector<EditRow> offsetRows(const std::vector<Offset>& offsets, const UnitFormat& format);
/// In order of time. Problem (data): an invalid row, or two at the same time.
Result<std::vector<Offset>> offsetsOf(const std::vector<EditRow>& rows,
                                      const std::vector<Offset>& origin, const UnitFormat& format);

/// "0.3 0.4 0.2": temperatures separated by spaces or semicolons; also by commas if the comma is
/// not the decimal sign. Problem (data): one of them is no temperature.
Result<std::vector<Temperature>> typedReadings(const QString& text, const UnitFormat& format);

} // namespace holdband::ui
