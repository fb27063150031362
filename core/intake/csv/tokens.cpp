#include "core/intake/csv/tokens.h"

#include "core/intake/log/log_places.h"
#include "core/text/phrase.h"
#include "core/text/trimmed.h"

#include <algorithm>
#include <utility>

namespace holdband {

namespace {

constexpr char blanks = ' ';

int neverSpace(unsigned char)
{
    return 0;
}

/// Most fields are a few bytes long; for those, calling the library's copy costs more than the copy
/// itself (measured: over a quarter of the time to read a log).
void append(std::string& to, std::string_view text)
{
    if (text.size() > 32) {
        to.append(text);
        return;
    }
    for (const char c : text)
        to.push_back(c);
}

Problem tooMany(std::int64_t line)
{
    return {
        ProblemKind::data,
        Phrase::tr("the row has more than %1 fields").with(std::to_string(CsvTokens::maxFields)),
        linePlace(line), Phrase::tr("this is no log of a few sensors")};
}

} // namespace

bool CsvRow::isBlank() const
{
    return std::all_of(fields.begin(), fields.end(),
                       [](std::string_view field) { return trimmed(field).empty(); });
}

CsvTokens::CsvTokens(char delimiter, Sink sink) : m_delimiter(delimiter), m_sink(std::move(sink))
{
    // csv_init fails for a null pointer only.
    csv_init(&m_parser, CSV_STRICT | CSV_STRICT_FINI | CSV_REPALL_NL |
                            (delimiter == blanks ? CSV_EMPTY_IS_NULL : 0));
    csv_set_delim(&m_parser, static_cast<unsigned char>(delimiter));
    csv_set_space_func(&m_parser, neverSpace);
}

CsvTokens::~CsvTokens()
{
    csv_free(&m_parser);
}

Done CsvTokens::feed(std::string_view text)
{
    if (m_sawQuotes)
        return feedQuoted(text);
    if (text.find('"') == text.npos)
        return feedPlain(text);
    m_sawQuotes = true;
    const std::string begun = std::exchange(m_tail, {});
    return feedQuoted(begun).and_then([&] { return feedQuoted(text); });
}

Done CsvTokens::feedPlain(std::string_view text)
{
    if (!m_tail.empty()) {
        const std::size_t end = std::min(text.find_first_of("\r\n"), text.size());
        if (!storePlainTail(text.substr(0, end)))
            return failure(*m_problem);
        text.remove_prefix(end);
        if (text.empty())
            return {};
        deliverPlain(std::exchange(m_tail, {}), true);
    }
    const std::string_view tail = plainRows(text);
    if (!m_stopped && !m_problem)
        storePlainTail(tail);
    return m_problem ? Done(failure(*m_problem)) : Done();
}

/// Delivers the rows that end in this text; returns the rest after the last of them.
std::string_view CsvTokens::plainRows(std::string_view text)
{
    std::size_t from = 0;
    for (std::size_t i = 0; i < text.size() && !m_stopped && !m_problem; ++i) {
        const char c = text[i];
        if (c != '\n' && c != '\r')
            continue;
        if (i > from)
            deliverPlain(text.substr(from, i - from), true);
        takeRowEnd(c);
        from = i + 1;
    }
    return text.substr(from);
}

/// False, with the problem set, if the row is too long.
bool CsvTokens::storePlainTail(std::string_view tail)
{
    m_tail += tail;
    const std::size_t last = m_tail.find_last_of(m_delimiter);
    const std::size_t field = m_tail.size() - (last == m_tail.npos ? 0 : last + 1);
    if (m_tail.size() > maxRow || field > maxField)
        m_problem = tooLong().value();
    else if (m_delimiter != blanks && std::count(m_tail.begin(), m_tail.end(), m_delimiter) >=
                                          static_cast<std::ptrdiff_t>(maxFields))
        m_problem = tooMany(m_line);
    return !m_problem;
}

/// Sets the fields; returns the length of the longest.
std::size_t CsvTokens::splitPlain(std::string_view row)
{
    std::size_t from = 0;
    std::size_t longest = 0;
    for (std::size_t i = 0; i <= row.size() && m_fields.size() <= maxFields; ++i) {
        if (i < row.size() && row[i] != m_delimiter)
            continue;
        longest = std::max(longest, i - from);
        m_fields.push_back(row.substr(from, i - from));
        from = i + 1;
    }
    return longest;
}

/// The same where runs of spaces and tabs part the fields.
std::size_t CsvTokens::splitAtBlanks(std::string_view row)
{
    std::size_t longest = 0;
    for (std::size_t at = row.find_first_not_of(" \t");
         at != row.npos && m_fields.size() <= maxFields; at = row.find_first_not_of(" \t", at)) {
        const std::size_t end = std::min(row.find_first_of(" \t", at), row.size());
        longest = std::max(longest, end - at);
        m_fields.push_back(row.substr(at, end - at));
        at = end;
    }
    return longest;
}

void CsvTokens::deliverPlain(std::string_view row, bool ended)
{
    m_afterCr = false;
    m_fields.clear();
    const std::size_t longest = m_delimiter == blanks ? splitAtBlanks(row) : splitPlain(row);
    if (m_fields.size() > maxFields)
        m_problem = tooMany(m_line);
    else if (longest > maxField || row.size() > maxRow)
        m_problem = tooLong().value();
    else if (!m_fields.empty())
        m_stopped = !m_sink({m_line, m_fields, ended});
}

Done CsvTokens::feedQuoted(std::string_view text)
{
    constexpr std::size_t step = std::size_t{64} << 10;
    while (!text.empty() && !m_stopped) {
        const std::string_view part =
            m_delimiter == blanks ? withSpaces(text.substr(0, step)) : text.substr(0, step);
        const std::size_t done =
            csv_parse(&m_parser, part.data(), part.size(), onField, onRowEnd, this);
        if (m_problem)
            return failure(*m_problem);
        if (m_stopped)
            break;
        if (done != part.size())
            return dataProblem(
                m_parser.quoted != 0
                    ? Phrase::tr("there is text behind a closing quote")
                    : Phrase::tr("there is a quote inside a field that does not begin with one"),
                linePlace(m_line),
                Phrase::tr("a quote inside a field is written as two, and the "
                           "field in quotes"));
        if (m_parser.entry_pos > maxField)
            return tooLong();
        text.remove_prefix(part.size());
    }
    return {};
}

/// The text with spaces for tabs, of which the parser knows only one; valid until the next call.
std::string_view CsvTokens::withSpaces(std::string_view text)
{
    m_spaces = text;
    std::replace(m_spaces.begin(), m_spaces.end(), '\t', ' ');
    return m_spaces;
}

Done CsvTokens::finish()
{
    if (m_stopped)
        return {};
    if (!m_tail.empty())
        deliverPlain(std::exchange(m_tail, {}), false);
    if (csv_fini(&m_parser, onField, onRowEnd, this) != 0)
        return dataProblem(Phrase::tr("the quote that opens here is never closed"),
                           linePlace(m_line), Phrase::tr("close or remove it"));
    return m_problem ? Done(failure(*m_problem)) : Done();
}

void CsvTokens::onField(void* text, std::size_t size, void* self)
{
    if (text) // null: nothing between two blanks
        static_cast<CsvTokens*>(self)->takeField({static_cast<const char*>(text), size});
}

void CsvTokens::onRowEnd(int end, void* self)
{
    static_cast<CsvTokens*>(self)->takeRowEnd(end);
}

void CsvTokens::takeField(std::string_view text)
{
    if (m_stopped || m_problem)
        return;
    if (text.size() > maxField || m_text.size() + text.size() > maxRow) {
        m_problem = tooLong().value();
        return;
    }
    if (m_ends.size() >= maxFields) {
        m_problem = tooMany(m_rowLine);
        return;
    }
    if (m_ends.empty())
        m_rowLine = m_line;
    append(m_text, text);
    m_ends.push_back(m_text.size());
    m_afterCr = false;
    if (m_sawQuotes)
        countBreaks(text);
}

void CsvTokens::countBreaks(std::string_view text)
{
    for (std::size_t i = 0; i < text.size(); ++i) {
        const bool pair = text[i] == '\r' && i + 1 < text.size() && text[i + 1] == '\n';
        if (!pair && (text[i] == '\n' || text[i] == '\r'))
            ++m_line;
    }
}

void CsvTokens::takeRowEnd(int end)
{
    if (m_stopped || m_problem)
        return;
    if (!m_ends.empty())
        deliver(end != -1);
    const bool secondOfPair = end == CSV_LF && m_afterCr;
    if (end != -1 && !secondOfPair)
        ++m_line;
    m_afterCr = end == CSV_CR;
}

void CsvTokens::deliver(bool ended)
{
    m_fields.clear();
    std::size_t from = 0;
    for (const std::size_t to : m_ends) {
        m_fields.emplace_back(m_text.data() + from, to - from);
        from = to;
    }
    m_stopped = !m_sink({m_rowLine, m_fields, ended});
    m_text.clear();
    m_ends.clear();
}

tl::unexpected<Problem> CsvTokens::tooLong() const
{
    return dataProblem(Phrase::tr("a field is longer than 1 MiB, or a row longer than 4 MiB"),
                       linePlace(m_line), Phrase::tr("look for a quote that is never closed"));
}

} // namespace holdband
