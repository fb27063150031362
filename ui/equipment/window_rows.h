// Time-of-use windows as typed rows. No widgets.
#pragma once

#include "core/model/equipment.h"
#include "core/problem.h"
#include "ui/forms/edit_table_model.h"
#include "ui/forms/unit_format.h"

namespace holdband::ui {

/// "every day", "mon – fri", "sat sun"
QString daysText(const std::array<bool, 7>& days);
/// The inverse; also accepts any list of days or ranges of days. Absent: not a list of days.
std::optional<std::array<bool, 7>> typedDays(const QString& text);
/// "06:30" as minutes after midnight, "24:00" for the day's end. Absent: not a time.
std::optional<int> typedMinute(const QString& text);
/// Minutes after midnight as text that typedMinute reads.
QString minuteCell(int minute);

std::vector<EditColumn> windowColumns(const UnitFormat& format);
std::vector<EditRow> windowRows(const std::vector<TariffWindow>& windows, const UnitFormat& format);
/// Problem (data): an invalid cell.
Result<std::vector<TariffWindow>> windowsOf(const std::vector<EditRow>& rows,
                                            const std::vector<TariffWindow>& origin,
                                            const UnitFormat& format);

} // namespace holdband::ui
