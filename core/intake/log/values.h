// The numbers in a log's cells: missing values, the decimal sign, values that no sensor can give.
#pragma once

#include "core/intake/log/log.h"
#include "core/problem.h"
#include "core/text/numbers.h"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace holdband {

/// Empty, "-", "--", "NA", "N/A", "NaN", "null", in any case; the text has no white space at its
/// ends.
bool isMissing(std::string_view text);

/// A number with a decimal point or a decimal comma; the text has no white space at its ends.
bool isNumber(std::string_view text);

/// Reads cells with a point or a comma and remembers which occurred where: one log has one decimal
/// sign, and a number that could have groups of thousands ("1,234") is never guessed.
class NumberCells {
public:
    /// `said`: the decimal sign set by the user; with '.' a comma separates groups of thousands,
    /// with ',' a point does.
    explicit NumberCells(std::optional<char> said = std::nullopt) : m_said(said) {}

    /// The text (trimmed, not missing) as a number with either decimal sign. Absent: it is no
    /// number, or certainly has groups of thousands.
    std::optional<Decimal> take(std::string_view text, SeriesKind kind, std::int64_t line);

    /// The decimal sign of all cells so far. Problem (data, place: a line): both signs occur, or
    /// all commas could be groups of thousands.
    Result<char> decimalSign() const;

private:
    struct Seen {
        std::int64_t line = 0; ///< 0: never
        std::string text;
    };
    void noteComma(std::string_view text, SeriesKind kind, std::int64_t line);

    static std::optional<Decimal> takeSaid(std::string_view text, char sign);

    std::optional<char> m_said;
    Seen m_point;
    Seen m_comma;
    bool m_commaIsDecimal = false; ///< at least one cell can't be read as a group of thousands
};

/// Why a value in this unit is impossible, in English, for Phrase::tr; null if it is possible.
/// Temperatures outside −55 … +125 °C (the range of the DS18B20, from its datasheet) and its
/// "disconnected" value −127 °C = −196.6 °F (datasheet); gravity outside 0.9 … 1.3 SG or −5 … 50
/// °P; power and registers below 0.
const char* impossible(ReadingUnit unit, double value);

} // namespace holdband
