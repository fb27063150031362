#include "core/intake/csv/dialect.h"

#include "core/intake/csv/tokens.h"
#include "core/intake/log/log_places.h"
#include "core/intake/log/values.h"
#include "core/intake/time/stamps.h"
#include "core/text/name_suggestions.h"
#include "core/text/phrase.h"
#include "core/text/trimmed.h"
#include "core/text/visible.h"

#include <algorithm>
#include <array>

namespace holdband {

namespace {

constexpr std::array delimiters{',', ';', '\t', '|'};
constexpr std::size_t maxSampleRows = 200;
constexpr std::size_t rowsLookedAt = 8; ///< below a header

using Rows = std::vector<SampleRow>;
using CellTest = bool (*)(std::string_view);

bool isUnixTime(std::string_view text)
{
    return scanDecimal(text).has_value() && scanStamp(text).has_value();
}

/// The first row below the header passes, and so do most of the next ones; the header doesn't.
/// Below a header that was `said`, most of them are enough.
bool columnPasses(const Rows& rows, std::size_t header, std::size_t column, CellTest test,
                  bool said)
{
    const std::size_t end = std::min(rows.size(), header + 1 + rowsLookedAt);
    if (header + 1 >= end || test(rows[header].cell(column)) || isNumber(rows[header].cell(column)))
        return false;
    std::size_t passed = 0;
    for (std::size_t i = header + 1; i < end; ++i)
        passed += test(rows[i].cell(column));
    return (said || test(rows[header + 1].cell(column))) && passed * 2 >= end - header - 1;
}

/// One of the rows below the header has a number, or a value said to be missing, outside the time.
bool dataFollows(const Rows& rows, std::size_t header, const TimeColumns& time)
{
    const std::size_t end = std::min(rows.size(), header + 1 + rowsLookedAt);
    for (std::size_t row = header + 1; row < end; ++row) {
        for (std::size_t i = 0; i < rows[row].fields.size(); ++i) {
            const std::string_view text = rows[row].cell(i);
            if (!time.has(i) && (isNumber(text) || isMissing(text)))
                return true;
        }
    }
    return false;
}

std::vector<std::string> headerNames(const SampleRow& row)
{
    std::vector<std::string> names;
    for (const std::string& field : row.fields)
        names.emplace_back(trimmed(field));
    while (!names.empty() && names.back().empty())
        names.pop_back();
    return names;
}

/// With those empty ones at the end below which the next row has something.
std::vector<std::string> headerAbove(const Rows& rows, std::size_t header)
{
    std::vector<std::string> names = headerNames(rows[header]);
    const std::size_t next = header + 1;
    std::size_t width = rows[header].fields.size();
    while (width > names.size() && (next >= rows.size() || rows[next].cell(width - 1).empty()))
        --width;
    names.resize(width);
    return names;
}

/// A delimiter's best header, and whether it was found by the names asked for.
struct Candidate {
    Dialect dialect;
    bool byName = false;
    bool hasTime = false;

    auto rank() const { return std::tuple{byName, hasTime, dialect.header.size()}; }
};

bool asksForNames(const LogRequest& request)
{
    return request.timeColumn ||
           std::any_of(request.wanted.begin(), request.wanted.end(),
                       [](const WantedColumn& wanted) { return wanted.header.has_value(); });
}

bool hasAllNames(const std::vector<std::string>& names, const LogRequest& request)
{
    const auto there = [&names](const std::string& name) {
        const auto found = findColumn(names, name);
        return !found || found->has_value(); // a doubled one is there, and refused later
    };
    return std::all_of(
        request.wanted.begin(), request.wanted.end(),
        [&](const WantedColumn& wanted) { return !wanted.header || there(*wanted.header); });
}

/// The time columns of a header that has the names asked for.
void findTime(Candidate& candidate, const Rows& rows, std::size_t header, const LogRequest& request)
{
    if (request.timeColumn) {
        const auto time = namedTimeColumns(candidate.dialect.header, *request.timeColumn);
        candidate.hasTime = time.has_value();
        candidate.dialect.time = time.value_or(TimeColumns{});
        candidate.dialect.timeReason = Phrase::tr("as set");
    } else if (const auto time =
                   timeByContent(rows, header, request.layoutWish.headerLine.has_value())) {
        candidate.hasTime = true;
        candidate.dialect.time = *time;
        candidate.dialect.timeReason = Phrase::tr("the first column whose rows are times");
    }
}

std::optional<Candidate> candidateAt(const Sample& sample, std::size_t row,
                                     const LogRequest& request, bool byName)
{
    Candidate candidate;
    candidate.dialect = {
        sample.delimiter, sample.rows[row].line, headerAbove(sample.rows, row), {}, {}};
    if (candidate.dialect.header.size() < 2)
        return std::nullopt;
    candidate.byName = byName && hasAllNames(candidate.dialect.header, request);
    if (byName && !candidate.byName)
        return std::nullopt;
    findTime(candidate, sample.rows, row, request);
    if (!candidate.hasTime && (!byName || request.timeColumn))
        return std::nullopt;
    return candidate;
}

std::optional<Candidate> bestHeader(const Sample& sample, const LogRequest& request)
{
    const auto& wanted = request.layoutWish.headerLine;
    const auto mayBeHeader = [&](std::size_t row) {
        return !wanted || sample.rows[row].line == *wanted;
    };
    std::optional<Candidate> timeless;
    for (std::size_t row = 0; asksForNames(request) && row < sample.rows.size(); ++row) {
        if (!mayBeHeader(row))
            continue;
        const auto candidate = candidateAt(sample, row, request, true);
        if (candidate && candidate->hasTime)
            return candidate;
        if (candidate && !timeless)
            timeless = candidate;
    }
    LogRequest byContent = request;
    byContent.timeColumn.reset();
    for (std::size_t row = 0; row + 1 < sample.rows.size(); ++row) {
        if (!mayBeHeader(row))
            continue;
        if (auto candidate = candidateAt(sample, row, byContent, false)) {
            candidate->hasTime = !request.timeColumn; // one was asked for, and isn't here
            return candidate;
        }
    }
    return timeless;
}

/// A cell as a sentence shows it.
std::string cellText(std::string_view text)
{
    constexpr std::size_t most = 60;
    const std::string plain = visible(text, LineEnds::escaped);
    std::size_t end = std::min(most, plain.size());
    while (end < plain.size() && end > 0 && (static_cast<unsigned char>(plain[end]) & 0xC0) == 0x80)
        --end; // not inside a character
    return end < plain.size() ? plain.substr(0, end) + "…" : plain;
}

std::string cellPlace(std::int64_t line, const std::string& header)
{
    return linePlace(line) + ", " + columnPlace(header);
}

/// There are times below that row, but what stands beside them is no number: the times are not what
/// has to be asked about.
std::optional<Problem> valuesUnread(const Rows& rows, std::size_t header)
{
    const auto time = timeWithoutData(rows, header);
    const std::vector<std::string> names = headerNames(rows[header]);
    if (!time || names.size() < 2 || time->first >= names.size())
        return std::nullopt;
    const std::size_t end = std::min(rows.size(), header + 1 + rowsLookedAt);
    for (std::size_t row = header + 1; row < end; ++row) {
        for (std::size_t i = 0; i < names.size(); ++i) {
            if (time->has(i) || isMissing(rows[row].cell(i)))
                continue;
            return Problem{
                ProblemKind::data,
                Phrase::tr("no value beside the times in \"%1\" can be read: \"%2\" is not a "
                           "number")
                    .with(names[time->first], cellText(rows[row].cell(i))),
                cellPlace(rows[row].line, names[i]),
                Phrase::tr("write plain numbers, and the unit into the header, such as \"%1 (°F)\"")
                    .with(names[i]),
                Decision::columns};
        }
    }
    return std::nullopt;
}

/// A header that people give to times, in English or German.
bool soundsLikeTime(const std::string& header)
{
    constexpr std::array<std::string_view, 9> words{"time",   "date", "when",  "stamp", "clock",
                                                    "logged", "zeit", "datum", "uhr"};
    const std::string name = folded(header);
    return std::any_of(words.begin(), words.end(),
                       [&](std::string_view word) { return name.find(word) != std::string::npos; });
}

/// The column below that row that is likeliest meant to be the time: by its header, else the first
/// that has digits and is no number.
std::optional<std::size_t> meantAsTime(const SampleRow& header, const SampleRow& below)
{
    const auto mayBe = [&](std::size_t i) {
        return !below.cell(i).empty() && !isNumber(below.cell(i)) && !header.cell(i).empty();
    };
    std::optional<std::size_t> byDigits;
    for (std::size_t i = 0; i < header.fields.size(); ++i) {
        if (mayBe(i) && soundsLikeTime(header.fields[i]))
            return i;
        const bool digits = below.cell(i).find_first_of("0123456789") != std::string_view::npos;
        if (!byDigits && mayBe(i) && digits)
            byDigits = i;
    }
    return byDigits;
}

/// The row below that one has no time that can be read: which cell was tried, and why it is none.
std::optional<Problem> timesUnread(const Rows& rows, std::size_t header)
{
    if (header + 1 >= rows.size() || rows[header].fields.size() < 2)
        return std::nullopt;
    const SampleRow& below = rows[header + 1];
    const auto column = meantAsTime(rows[header], below);
    if (!column)
        return std::nullopt;
    const std::string_view text = below.cell(*column);
    const auto stamp = scanStamp(text);
    if (stamp)
        return std::nullopt;
    const std::string name(rows[header].cell(*column));
    return Problem{
        ProblemKind::data,
        Phrase::tr("the times can't be read: \"%1\" %2")
            .with(cellText(text), Phrase::tr(stamp.error()).text()),
        cellPlace(below.line, name),
        isDateAlone(text)
            ? Phrase::tr("say which column has the time of day with --time \"%1+TIME COLUMN\", or "
                         "write it behind the date")
                  .with(name)
            : Phrase::tr("say how they are written, such as --time \"%1\" --pattern \"dd.MM.yy "
                         "HH:mm\", or name another column with --time \"COLUMN\"; the columns are: "
                         "%2")
                  .with(name, joined(headerNames(rows[header]))),
        Decision::timeColumn};
}

/// The header may be below other lines: the first row as wide as the widest.
std::size_t firstWidest(const Rows& rows)
{
    const auto widest =
        std::max_element(rows.begin(), rows.end(), [](const SampleRow& a, const SampleRow& b) {
            return a.fields.size() < b.fields.size();
        });
    return static_cast<std::size_t>(widest - rows.begin());
}

/// Where the log has times but no numbers, or a column that is meant to have times.
std::optional<Problem> unreadBelow(const std::vector<Sample>& samples, const Sample& widest)
{
    for (const Sample& sample : samples) {
        for (std::size_t row = 0; row + 1 < sample.rows.size(); ++row) {
            if (auto problem = valuesUnread(sample.rows, row))
                return problem;
        }
    }
    return timesUnread(widest.rows, firstWidest(widest.rows));
}

/// Without a header: what to say. The sample with most columns speaks.
tl::unexpected<Problem> noHeaderFound(const std::vector<Sample>& samples)
{
    const auto width = [](const Sample& sample) {
        std::size_t most = 0;
        for (const SampleRow& row : sample.rows)
            most = std::max(most, row.fields.size());
        return most;
    };
    const Sample& widest =
        *std::max_element(samples.begin(), samples.end(),
                          [&](const Sample& a, const Sample& b) { return width(a) < width(b); });
    if (widest.problem)
        return failure(*widest.problem);
    if (widest.cut && widest.rows.size() <= 1)
        return dataProblem(Phrase::tr("a row is longer than 64 KiB"),
                           linePlace(static_cast<std::int64_t>(widest.rows.size() + 1)),
                           Phrase::tr("this is no log of a few sensors"));
    if (widest.rows.empty())
        return dataProblem(Phrase::tr("the file is empty"));
    const SampleRow& first = widest.rows.front();
    const std::string place = linePlace(first.line);
    using enum Decision;
    if (std::any_of(first.fields.begin(), first.fields.end(),
                    [](const std::string& field) { return looksLikeTime(field); }))
        return dataProblem(Phrase::tr("there is no header: the first row has a time in it"), place,
                           Phrase::tr("add a header row with the names of the columns"), columns);
    if (widest.rows.size() == 1 && first.fields.size() > 1)
        return dataProblem(Phrase::tr("there are no rows below the header"), place);
    if (auto unread = unreadBelow(samples, widest))
        return failure(std::move(*unread));
    return dataProblem(Phrase::tr("no column of times was found below a header"), {},
                       Phrase::tr("name it with --time \"COLUMN\" or --time \"DATE COLUMN+TIME "
                                  "COLUMN\"; the first row has: %1")
                           .with(joined(headerNames(first))),
                       timeColumn);
}

/// Why the line that was said to be the header's can't be; where it can, no times stand below it.
tl::unexpected<Problem> noHeaderAt(const std::vector<Sample>& samples, std::int64_t line)
{
    const std::string place = linePlace(line);
    const SampleRow* widest = nullptr;
    const Rows* rows = nullptr;
    for (const Sample& sample : samples) {
        for (const SampleRow& row : sample.rows) {
            const bool wider = !widest || row.fields.size() > widest->fields.size();
            if (row.line != line || !wider)
                continue;
            widest = &row;
            rows = &sample.rows;
        }
    }
    if (!widest)
        return dataProblem(
            Phrase::tr("no row begins in line %1").with(std::to_string(line)), {},
            Phrase::tr("the header is one of the first %1 rows; say its line, or 0 where there is "
                       "none")
                .with(std::to_string(maxSampleRows)),
            Decision::layout);
    if (widest->fields.size() < 2)
        return dataProblem(Phrase::tr("the header has only one column"), place,
                           Phrase::tr("say another line, or what parts the columns"),
                           Decision::layout);
    if (std::any_of(widest->fields.begin(), widest->fields.end(),
                    [](const std::string& field) { return looksLikeTime(field); }))
        return dataProblem(Phrase::tr("this is no header: it has a time in it"), place,
                           Phrase::tr("say another line, or 0 where there is none"),
                           Decision::layout);
    const auto header = static_cast<std::size_t>(widest - rows->data());
    for (const auto unread : {valuesUnread, timesUnread}) {
        if (auto problem = unread(*rows, header))
            return failure(std::move(*problem));
    }
    return dataProblem(Phrase::tr("no column of times was found below it"), place,
                       Phrase::tr("say another line, or name the time’s column; this one has: %1")
                           .with(joined(headerNames(*widest))),
                       Decision::timeColumn);
}

tl::unexpected<Problem> noHeader(const std::vector<Sample>& samples, const LayoutWish& wish)
{
    const bool anyRows = std::any_of(samples.begin(), samples.end(),
                                     [](const Sample& sample) { return !sample.rows.empty(); });
    return anyRows && wish.headerLine.value_or(0) > 0 ? noHeaderAt(samples, *wish.headerLine)
                                                      : noHeaderFound(samples);
}

/// The most columns of the first rows.
std::size_t widthOf(const Rows& rows)
{
    std::size_t width = 0;
    for (std::size_t i = 0; i < std::min(rows.size(), rowsLookedAt); ++i)
        width = std::max(width, rows[i].fields.size());
    return width;
}

/// Where there is no header, the columns' numbers stand for one, in line 0.
Sample sampleFor(std::string_view text, bool isWhole, char delimiter, const LayoutWish& wish)
{
    Sample sample = sampleRows(text, isWhole, delimiter);
    if (wish.headerLine == 0 && !sample.rows.empty())
        sample.rows.insert(sample.rows.begin(), {0, numberedColumns(widthOf(sample.rows))});
    return sample;
}

Result<Dialect> numbered(const Sample& sample, const LogLayout& layout)
{
    return Dialect{layout.delimiter,
                   0,
                   numberedColumns(widthOf(sample.rows)),
                   {layout.timeColumn, layout.clockColumn},
                   Phrase::tr("as set")};
}

/// As somebody laid it out. Problem (data): the header's line is gone, or has fewer columns.
Result<Dialect> laidOut(std::string_view text, bool isWhole, const LogLayout& layout)
{
    const Sample sample = sampleRows(text, isWhole, layout.delimiter);
    const auto row =
        std::find_if(sample.rows.begin(), sample.rows.end(),
                     [&](const SampleRow& each) { return each.line == layout.headerLine; });
    if (sample.rows.empty())
        return sample.problem ? failure(*sample.problem)
                              : dataProblem(Phrase::tr("the file is empty"));
    if (layout.headerLine > 0 && row == sample.rows.end())
        return dataProblem(
            Phrase::tr("the header is not in line %1").with(std::to_string(layout.headerLine)), {},
            Phrase::tr("look at the file again"), Decision::columns);
    auto dialect =
        layout.headerLine == 0
            ? numbered(sample, layout)
            : Result<Dialect>(Dialect{
                  layout.delimiter,
                  layout.headerLine,
                  headerAbove(sample.rows, static_cast<std::size_t>(row - sample.rows.begin())),
                  {layout.timeColumn, layout.clockColumn},
                  Phrase::tr("as set")});
    const std::size_t width = dialect->header.size();
    if (layout.timeColumn >= width || layout.clockColumn.value_or(0) >= width)
        return dataProblem(Phrase::tr("there are only %1 columns").with(std::to_string(width)),
                           linePlace(layout.headerLine),
                           Phrase::tr("choose the column of the time"), Decision::timeColumn);
    return dialect;
}

} // namespace

std::string_view SampleRow::cell(std::size_t column) const
{
    return column < fields.size() ? trimmed(fields[column]) : std::string_view{};
}

std::vector<std::string> numberedColumns(std::size_t count)
{
    std::vector<std::string> names;
    for (std::size_t i = 1; i <= count; ++i)
        names.push_back("column " + std::to_string(i));
    return names;
}

std::vector<char> delimitersFor(const LayoutWish& wish)
{
    if (wish.delimiter)
        return {*wish.delimiter};
    return {delimiters.begin(), delimiters.end()};
}

Sample sampleRows(std::string_view text, bool isWhole, char delimiter)
{
    constexpr std::size_t most = std::size_t{64} << 10;
    Sample sample{delimiter, {}, std::nullopt, text.size() > most};
    CsvTokens tokens(delimiter, [&sample](const CsvRow& row) {
        if (!row.isBlank())
            sample.rows.push_back({row.line, {row.fields.begin(), row.fields.end()}});
        return sample.rows.size() < maxSampleRows;
    });
    Done done = tokens.feed(text.substr(0, most));
    if (done && isWhole && text.size() <= most)
        done = tokens.finish();
    if (!done)
        sample.problem = done.error();
    return sample;
}

namespace {

std::optional<TimeColumns> timeBelow(const Rows& rows, std::size_t header, bool said,
                                     bool besideData)
{
    if (header + 1 >= rows.size())
        return std::nullopt;
    const std::size_t columns = rows[header + 1].fields.size();
    const auto first = [&](auto found) -> std::optional<TimeColumns> {
        for (std::size_t i = 0; i < columns; ++i) {
            const std::optional<TimeColumns> time = found(i);
            if (time && (!besideData || dataFollows(rows, header, *time)))
                return time;
        }
        return std::nullopt;
    };
    const auto passes = [&](std::size_t column, CellTest test) {
        return columnPasses(rows, header, column, test, said);
    };
    using Found = std::optional<TimeColumns>;
    if (const Found one = first([&](std::size_t i) {
            return passes(i, looksLikeTime) ? Found({i, std::nullopt}) : Found();
        }))
        return one;
    if (const Found two = first([&](std::size_t i) {
            const std::size_t clock = i + 1;
            return passes(i, isDateAlone) && passes(clock, isClockAlone) ? Found({i, clock})
                                                                         : Found();
        }))
        return two;
    if (!besideData) // a number by itself is no time for certain
        return std::nullopt;
    return first([&](std::size_t i) {
        return passes(i, isUnixTime) ? Found({i, std::nullopt}) : Found();
    });
}

} // namespace

std::optional<TimeColumns> timeByContent(const std::vector<SampleRow>& rows, std::size_t header,
                                         bool said)
{
    return timeBelow(rows, header, said, true);
}

std::optional<TimeColumns> timeWithoutData(const std::vector<SampleRow>& rows, std::size_t header)
{
    return timeBelow(rows, header, false, false);
}

Result<Dialect> findDialect(std::string_view text, bool isWhole, const LogRequest& request)
{
    if (request.layout)
        return laidOut(text, isWhole, *request.layout);
    std::vector<Sample> samples;
    std::optional<Candidate> best;
    const LayoutWish& wish = request.layoutWish;
    for (const char delimiter : delimitersFor(wish)) {
        samples.push_back(sampleFor(text, isWhole, delimiter, wish));
        const auto candidate = bestHeader(samples.back(), request);
        if (candidate && (!best || candidate->rank() > best->rank()))
            best = candidate;
    }
    if (!best || (!best->hasTime && !request.timeColumn))
        return noHeader(samples, wish);
    if (!best->hasTime) {
        const auto time = namedTimeColumns(best->dialect.header, *request.timeColumn);
        HOLDBAND_TRY(time);
        for (const WantedColumn& wanted : request.wanted) {
            if (wanted.header)
                HOLDBAND_TRY(needColumn(best->dialect.header, *wanted.header));
        }
        return noHeader(samples, wish);
    }
    return best->dialect;
}

} // namespace holdband
