// Times as cells of an EditTable.
#pragma once

#include "core/problem.h"
#include "core/quantity/instant.h"
#include "ui/forms/edit_table_model.h"
#include "ui/forms/instant_field.h"
#include "ui/forms/unit_format.h"

#include <optional>

namespace holdband::ui {

EditColumn timeColumn(const QString& title, int column, bool mayBeEmpty, const UnitFormat& format);

/// `origin` to the millisecond if the cell still has its text. Problem (data): no time.
Result<Instant> timeIn(const QString& cell, std::optional<Instant> origin,
                       const UnitFormat& format);

/// The initial value of the row; absent in a new row.
template <typename Value>
const Value* originOf(const EditRow& row, const std::vector<Value>& origin)
{
    const bool known = row.origin >= 0 && static_cast<std::size_t>(row.origin) < origin.size();
    return known ? &origin[static_cast<std::size_t>(row.origin)] : nullptr;
}

} // namespace holdband::ui
