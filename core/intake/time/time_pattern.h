// A layout of times written by the user, such as "dd.MM.yy HH:mm": compiled once, then matched with
// every row. For logs whose times match no layout in stamps.h.
#pragma once

#include "core/intake/time/stamps.h"
#include "core/problem.h"

#include <string>
#include <string_view>
#include <vector>

namespace holdband {

/// Letters of a pattern; any other character matches itself, and so does text in '…': yyyy yy
/// (20yy), MM M MMM (Jan) MMMM (January), dd d, HH H (0–23), hh h (1–12) with a (AM, PM), mm m, ss
/// s, zzz (milliseconds), x (an offset: Z, +02:00, -0700). One letter takes one or two digits, two
/// take exactly two. Month names are English, case is ignored.
class TimePattern {
public:
    /// Problem (data): no meaning for a letter, a piece missing (year, month, day, hour, minute) or
    /// given twice, a quote left open.
    static Result<TimePattern> compile(std::string_view pattern);

    /// The full text (ignoring white space at its ends) as a time, or why not: "does not fit the
    /// pattern". Years outside 1990 … 2100 are refused.
    tl::expected<Stamp, const char*> read(std::string_view text) const;

private:
    enum class Piece {
        literal,
        year,
        shortYear,
        month,
        monthName,
        day,
        hour,
        hour12,
        halfDay,
        minute,
        second,
        milliseconds,
        offset
    };
    struct Part {
        Piece piece = Piece::literal;
        int width = 1; ///< of numbers: 1 takes one or two digits, more take exactly that many
        char text = 0; ///< of literals
    };
    struct Fields;

    Done addLetters(char letter, int count);
    Done checkComplete() const;
    bool has(Piece piece) const;
    static bool readPart(const Part& part, std::string_view& text, Fields& fields);

    std::vector<Part> m_parts;
};

/// The result of a pattern for one of the first rows.
struct PatternTry {
    std::int64_t line = 0;
    std::string text;
    std::string result; ///< "25 Mar 2026 06:30", or the reason why it does not match
    bool fits = false;
};

} // namespace holdband
