// Parts and ratings of a setup as typed rows. No widgets.
#pragma once

#include "core/model/equipment.h"
#include "core/problem.h"
#include "ui/forms/edit_table_model.h"
#include "ui/forms/unit_format.h"

namespace holdband::ui {

std::vector<EditColumn> partColumns(const UnitFormat& format);
std::vector<EditRow> partRows(const std::vector<Part>& parts, const UnitFormat& format);
/// Problem (data): an invalid cell.
Result<std::vector<Part>> partsOf(const std::vector<EditRow>& rows, const std::vector<Part>& origin,
                                  const UnitFormat& format);
/// "21.50 USD for all parts", from the rows that can be read so far; empty without a part.
QString partsSumText(const std::vector<EditRow>& rows, const UnitFormat& format);

std::vector<EditColumn> ratingColumns(const UnitFormat& format);
/// The setup's ratings, then empty rows for the usual criteria without a rating.
std::vector<EditRow> ratingRows(const std::map<std::string, double>& ratings,
                                const UnitFormat& format);
/// Rows without a number are left out. Problem (data): not 1 … 5, or a criterion twice.
Result<std::map<std::string, double>> ratingsOf(const std::vector<EditRow>& rows,
                                                const UnitFormat& format);

} // namespace holdband::ui
