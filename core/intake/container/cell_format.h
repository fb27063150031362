// Which cells of a workbook are dates: a cell holds a number of days, and only its number format
// says that it is a date (ECMA-376 part 1, 18.8.30 and 18.17.4).
#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace holdband {

enum class CellForm {
    number,
    date,
    time, ///< of day
    dateTime,
};

/// Of a format that every workbook has, by its number.
CellForm builtInForm(int id);

/// Of a format's code, such as "dd.mm.yyyy hh:mm". Elapsed time ("[h]:mm") is a number.
CellForm formOfCode(std::string_view code);

/// The number of days as a local time: "2026-03-07 06:30:00", "2026-03-07" (a whole day in a date's
/// format) or "06:30:00" (less than a day in a time's format), rounded to a millisecond. Days count
/// from 1900, where 29 February 1900 is counted too, or from 1904. Absent: before that, or after
/// 9999.
std::optional<std::string> serialText(double days, CellForm form, bool from1904);

/// The number with the 15 digits that spreadsheets hold and show.
std::string cellNumber(double value);

} // namespace holdband
