// Rows and fields of CSV text (RFC 4180: spaces count, quotes around a field, "" inside it), fed in
// pieces. LF, CR LF and CR end a row; empty lines are not rows. Until the first quote, rows are
// split here, in place; from then on libcsv finds the fields. A test checks that both give the same
// rows. The delimiter ' ' is any run of spaces and tabs, also before the first and after the last
// field. Physical line numbers are counted here, line breaks in quotes included.
#pragma once

#include "core/problem.h"

#include <cstdint>
#include <csv.h>
#include <functional>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace holdband {

struct CsvRow {
    std::int64_t line = 1; ///< where it begins
    std::span<const std::string_view> fields;
    bool ended = true; ///< whether a line break ended it; false: the end of the text did

    /// Whether all fields are white space.
    bool isBlank() const;
};

class CsvTokens {
public:
    static constexpr std::size_t maxField = std::size_t{1} << 20; ///< bytes
    static constexpr std::size_t maxRow = std::size_t{4} << 20;   ///< bytes
    static constexpr std::size_t maxFields = 1000;                ///< of one row

    /// Called with each row; its views are valid only during the call. False stops.
    using Sink = std::function<bool(const CsvRow&)>;

    CsvTokens(char delimiter, Sink sink);
    ~CsvTokens();
    CsvTokens(const CsvTokens&) = delete;
    CsvTokens& operator=(const CsvTokens&) = delete;

    /// Problem (data, place "line N"): a stray quote, a field or row too long, too many fields.
    Done feed(std::string_view text);
    /// Ends the text. Problem: a quote is still open (with the line where it opened).
    Done finish();
    bool stopped() const { return m_stopped; }

private:
    static void onField(void* text, std::size_t size, void* self);
    static void onRowEnd(int end, void* self);
    Done feedPlain(std::string_view text);
    std::string_view plainRows(std::string_view text);
    Done feedQuoted(std::string_view text);
    std::string_view withSpaces(std::string_view text);
    bool storePlainTail(std::string_view tail);
    void deliverPlain(std::string_view row, bool ended);
    std::size_t splitPlain(std::string_view row);
    std::size_t splitAtBlanks(std::string_view row);
    void takeField(std::string_view text);
    void takeRowEnd(int end);
    void countBreaks(std::string_view text);
    void deliver(bool ended);
    tl::unexpected<Problem> tooLong() const;

    csv_parser m_parser{};
    char m_delimiter;
    std::string m_spaces; ///< a part of the text, its tabs replaced by spaces
    std::string m_tail;   ///< before any quote: the unfinished row
    Sink m_sink;
    std::string m_text;              ///< the row's fields, one after the other
    std::vector<std::size_t> m_ends; ///< where each ends in m_text
    std::vector<std::string_view> m_fields;
    std::int64_t m_line = 1; ///< where the next field begins
    std::int64_t m_rowLine = 1;
    bool m_afterCr = false;   ///< the last character was a CR that ended a line
    bool m_sawQuotes = false; ///< only quoted fields contain line breaks
    bool m_stopped = false;
    std::optional<Problem> m_problem;
};

} // namespace holdband
