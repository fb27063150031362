// Rows and fields of CSV text (RFC 4180: spaces count, quotes around a field, "" inside it), fed in
// pieces. LF, CR LF and CR end a row; empty lines are no rows. As long as no quote has come, rows
// are cut here, in place; from the first quote on libcsv finds the fields. Both are held to the
// same rows by a test. Physical line numbers are counted here, line breaks in quotes included.
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
    bool ended = true; ///< by a line break; false: by the end of the text

    /// Nothing but white space in all fields.
    bool isBlank() const;
};

class CsvTokens {
public:
    static constexpr std::size_t maxField = std::size_t{1} << 20; ///< bytes
    static constexpr std::size_t maxRow = std::size_t{4} << 20;   ///< bytes
    static constexpr std::size_t maxFields = 1000;                ///< of one row

    /// Called with each row; its views are valid during the call only. False stops.
    using Sink = std::function<bool(const CsvRow&)>;

    CsvTokens(char delimiter, Sink sink);
    ~CsvTokens();
    CsvTokens(const CsvTokens&) = delete;
    CsvTokens& operator=(const CsvTokens&) = delete;

    /// Problem (data, place "line N"): a stray quote, a field or row too long, too many fields.
    Done feed(std::string_view text);
    /// The end of the text. Problem: a quote is still open (the line where it opened).
    Done finish();
    bool stopped() const { return m_stopped; }

private:
    static void onField(void* text, std::size_t size, void* self);
    static void onRowEnd(int end, void* self);
    Done feedPlain(std::string_view text);
    std::string_view plainRows(std::string_view text);
    Done feedQuoted(std::string_view text);
    bool keepPlainTail(std::string_view tail);
    void deliverPlain(std::string_view row, bool ended);
    void takeField(std::string_view text);
    void takeRowEnd(int end);
    void countBreaks(std::string_view text);
    void deliver(bool ended);
    tl::unexpected<Problem> tooLong() const;

    csv_parser m_parser{};
    char m_delimiter;
    std::string m_tail; ///< without quotes so far: the row that is not finished
    Sink m_sink;
    std::string m_text;              ///< the row's fields, one after the other
    std::vector<std::size_t> m_ends; ///< where each ends in m_text
    std::vector<std::string_view> m_fields;
    std::int64_t m_line = 1; ///< where the next field begins
    std::int64_t m_rowLine = 1;
    bool m_afterCr = false;   ///< the last thing seen was a CR that ended a line
    bool m_sawQuotes = false; ///< only quoted fields hold line breaks
    bool m_stopped = false;
    std::optional<Problem> m_problem;
};

} // namespace holdband
