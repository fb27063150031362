// Numbers as people and files write them. The process's locale is never used: the caller always
// gives the decimal sign. nan, inf, hexadecimal, and numbers that overflow a double are refused.
#pragma once

#include "core/problem.h"

#include <optional>
#include <string>
#include <string_view>

namespace holdband {

struct Decimal {
    double value = 0.0;
    int decimals = 0; ///< digits after the decimal sign, as typed: 5.00 has two

    bool operator==(const Decimal&) const = default;
};

/// The full text as one number with the given decimal sign ('.' or ','): an optional +, - or
/// U+2212, digits, at most one decimal sign with digits after it, an optional exponent. No white
/// space, no thousands groups. Absent if it has another form. Correctly rounded.
std::optional<Decimal> scanDecimal(std::string_view text, char decimalSign = '.');

/// As scanDecimal, with white space around it allowed, and a Problem where it fails.
Result<Decimal> parseDecimal(std::string_view text, char decimalSign = '.');

/// A number typed by a person, with a decimal point or a decimal comma. `usual` is the decimal sign
/// of the person's settings. A text that could be a thousands group with the other sign ("1,234"
/// where a point is usual, "1.234" where a comma is) is a Problem that asks the user; so is any
/// text with more than one sign. Never guessed.
Result<Decimal> parseTypedNumber(std::string_view text, char usual = '.');

/// The shortest text that reads back as the same double.
std::string shortestText(double value, char decimalSign = '.');

/// Rounded to `decimals` places (ties by the double's exact value); never "-0.0".
std::string fixedText(double value, int decimals, char decimalSign = '.');

} // namespace holdband
