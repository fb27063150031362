// The times of day in which the meters are to be read, as typed rows. No widgets.
#pragma once

#include "core/model/equipment.h"
#include "core/problem.h"
#include "ui/forms/edit_table_model.h"

namespace holdband::ui {

/// More rounds a day than anyone does in practice.
inline constexpr std::size_t mostRounds = 6;

std::vector<EditColumn> roundColumns();
std::vector<EditRow> roundRows(const std::vector<RoundWindow>& rounds);
/// In order of the day. Problem (data) with its row: none or more than `mostRounds`, no label or a
/// duplicate one, a time that can't be read, an end at or before its beginning, two that overlap.
Result<std::vector<RoundWindow>> roundsOf(const std::vector<EditRow>& rows);

} // namespace holdband::ui
