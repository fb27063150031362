#include "core/intake/dialect.h"

#include "core/intake/log_places.h"
#include "core/intake/stamps.h"
#include "core/intake/tokens.h"
#include "core/intake/values.h"
#include "core/text/near.h"
#include "core/text/phrase.h"
#include "core/text/trimmed.h"

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
        candidate.dialect.timeReason = Phrase::tr("as told");
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
                           Phrase::tr("put a line with the columns' names before it"), columns);
    if (widest.rows.size() == 1 && first.fields.size() > 1)
        return dataProblem(Phrase::tr("there are no rows below the header"), place);
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
    for (const Sample& sample : samples) {
        for (const SampleRow& row : sample.rows) {
            const bool wider = !widest || row.fields.size() > widest->fields.size();
            widest = row.line == line && wider ? &row : widest;
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
                   Phrase::tr("as told")};
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
                  Phrase::tr("as told")});
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

std::optional<TimeColumns> timeByContent(const std::vector<SampleRow>& rows, std::size_t header,
                                         bool said)
{
    if (header + 1 >= rows.size())
        return std::nullopt;
    const std::size_t columns = rows[header + 1].fields.size();
    const auto first = [&](auto found) -> std::optional<TimeColumns> {
        for (std::size_t i = 0; i < columns; ++i) {
            const std::optional<TimeColumns> time = found(i);
            if (time && dataFollows(rows, header, *time))
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
    return first([&](std::size_t i) {
        return passes(i, isUnixTime) ? Found({i, std::nullopt}) : Found();
    });
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
        return time ? noHeader(samples, wish) : Result<Dialect>(failure(time.error()));
    }
    return best->dialect;
}

} // namespace holdband
