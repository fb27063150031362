// The numbers in a log's cells: missing values, the decimal sign, values that no sensor can give.
#pragma once

#include "core/intake/csv/header.h"
#include "core/intake/log/log.h"
#include "core/problem.h"
#include "core/text/numbers.h"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace holdband {

/// Empty, "-", "--", "---", "NA", "N/A", "NaN", "null", "ERR", "unavailable", in any case; the text
/// has no white space at its ends.
bool isMissing(std::string_view text);

/// A number with a decimal point or a decimal comma; the text has no white space at its ends.
bool isNumber(std::string_view text);

/// A cell split up: "68.2 °F" is "68.2" and the unit °F. Without a known unit behind a number all
/// of the text is the number's.
struct ValueCell {
    std::string_view number;
    std::optional<LogUnit> unit = {};
};
ValueCell valueCell(std::string_view text);

/// Whether the text is a number, perhaps with groups of thousands and a unit behind it.
bool isValue(std::string_view text);

/// The text as a number with this decimal sign; the other sign may separate complete groups of
/// thousands.
std::optional<Decimal> scanGrouped(std::string_view text, char decimalSign);

/// Reads cells with a point or a comma and remembers which occurred where: one log has one decimal
/// sign. "1,234.5" and "12,5" show which; "1,234" and "1.234" don't, and other cells of the column
/// decide. Where only another column could, or nothing does, a comma is asked about.
class NumberCells {
public:
    /// `said`: the decimal sign set by the user; with '.' a comma separates groups of thousands,
    /// with ',' a point does.
    explicit NumberCells(std::optional<char> said = std::nullopt) : m_said(said) {}

    /// The text (trimmed, not missing) as a number; "1,234" and "1.234" with a decimal sign.
    /// Absent: it is no number. `column`: any number that tells the columns apart.
    std::optional<Decimal> take(std::string_view text, SeriesKind kind, std::int64_t line,
                                std::size_t column = 0);

    /// The decimal sign of all cells so far. Problem (data, place: a line): both signs occur as
    /// decimal signs, or a comma could separate thousands.
    Result<char> decimalSign() const;

    /// Whether take() read a separator of thousands as a decimal sign, by what decimalSign() gives
    /// now: the log must be read again with that sign set.
    bool readGroupsWrong() const;

private:
    struct Seen {
        std::int64_t line = 0; ///< 0: never
        std::string text;
    };
    /// The first cell of a column in which a sign is certainly decimal, or may be.
    struct ColumnSigns {
        Seen point;
        Seen comma;
        Seen pointOrGroups;
        Seen commaOrGroups;
        bool commaNeverGroups = false; ///< that cell is a temperature
    };
    using Sign = Seen ColumnSigns::*;

    static void note(Seen& seen, std::string_view text, std::int64_t line);
    const Seen& first(Sign sign) const;
    /// The first cell whose sign its own column doesn't decide.
    const Seen& undecided(Sign open, Sign certain) const;

    std::optional<char> m_said;
    std::vector<ColumnSigns> m_columns;
};

/// Why a value in this unit is impossible, in English, for Phrase::tr; null if it is possible.
/// Temperatures outside −55 … +125 °C (the range of the DS18B20, from its datasheet) and its
/// "disconnected" value −127 °C = −196.6 °F (datasheet); gravity outside 0.9 … 1.3 SG or −5 … 50
/// °P; power and registers below 0.
const char* impossible(ReadingUnit unit, double value);

} // namespace holdband
