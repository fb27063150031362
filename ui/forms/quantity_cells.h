// Quantities as cells of an EditTable.
#pragma once

#include "ui/forms/edit_table_model.h"
#include "ui/forms/time_cells.h"
#include "ui/forms/typed_quantity.h"

#include <functional>

namespace holdband::ui {

/// Returns why a number is refused, or an empty text.
using NumberRule = std::function<QString(double)>;

/// For EditColumn::refusal: refuses a cell that is no such quantity, or is empty though required.
std::function<QString(const QStringList& row)> quantityRefusal(int column, Quantity quantity,
                                                               bool mayBeEmpty,
                                                               const UnitFormat& format,
                                                               NumberRule rule);

/// In the unit of `quantity`; `origin` bit for bit if the cell still has its text. Problem (data):
/// no such quantity, or refused by the rule.
Result<double> quantityIn(const QString& cell, Quantity quantity, std::optional<double> origin,
                          const UnitFormat& format, const NumberRule& rule = {});

} // namespace holdband::ui
