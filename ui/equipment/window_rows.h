// Time-of-use windows as typed rows. No widgets.
#pragma once

#include "core/model/equipment.h"
#include "core/problem.h"
#include "ui/forms/edit_table_model.h"
#include "ui/forms/unit_format.h"

namespace holdband::ui {

/// "every day", "mon – fri", "sat sun"
QString daysText(const std::array<bool, 7>& days);
/// The same, and any list of days or ranges of them. Absent: it is none.
std::optional<std::array<bool, 7>> typedDays(const QString& text);
/// "06:30" as minutes after midnight, "24:00" for the day's end. Absent: it is none.
std::optional<int> typedMinute(const QString& text);
/// Minutes after midnight as typedMinute reads them.
QString minuteCell(int minute);

std::vector<EditColumn> windowColumns(const UnitFormat& manner);
std::vector<EditRow> windowRows(const std::vector<TariffWindow>& windows, const UnitFormat& manner);
/// Problem (data): a cell that can't stand.
Result<std::vector<TariffWindow>> windowsOf(const std::vector<EditRow>& rows,
                                            const std::vector<TariffWindow>& origin,
                                            const UnitFormat& manner);

} // namespace holdband::ui
