#include "core/intake/csv/dialect.h"

#include "core/intake/csv/no_header.h"
#include "core/intake/csv/sample.h"
#include "core/intake/csv/time_columns.h"
#include "core/intake/csv/units_row.h"
#include "core/intake/log/log_places.h"
#include "core/intake/time/stamps.h"
#include "core/text/phrase.h"

#include <algorithm>
#include <array>
#include <tuple>

namespace holdband {

namespace {

constexpr std::array delimiters{',', ';', '\t', '|'};

/// The names of the header, including empty ones at its end if the next row has a cell below them.
std::vector<std::string> headerAbove(const SampleRows& rows, std::size_t header)
{
    std::vector<std::string> names = headerNames(rows[header]);
    const std::size_t next = header + 1;
    std::size_t width = rows[header].fields.size();
    while (width > names.size() && (next >= rows.size() || rows[next].cell(width - 1).empty()))
        --width;
    names.resize(width);
    return names;
}

/// A delimiter's best header, and whether it was found by the requested names.
struct Candidate {
    Dialect dialect;
    bool byName = false;
    bool hasTime = false;

    auto rank() const { return std::tuple{byName, hasTime, dialect.header.size()}; }
};

/// The headers that were requested. Those of a long log's wanted columns are names in its rows.
std::vector<std::string> requestedHeaders(const LogRequest& request)
{
    std::vector<std::string> headers;
    const auto add = [&headers](const ColumnRef& column) {
        if (!column.index)
            headers.push_back(column.header);
    };
    if (request.longForm) {
        add(request.longForm->name);
        add(request.longForm->value);
        if (request.longForm->unit)
            add(*request.longForm->unit);
        return headers;
    }
    for (const WantedColumn& wanted : request.wanted) {
        if (wanted.header)
            headers.push_back(*wanted.header);
    }
    return headers;
}

bool asksForNames(const LogRequest& request)
{
    return request.timeColumn || !requestedHeaders(request).empty();
}

bool hasAllNames(const std::vector<std::string>& names, const LogRequest& request)
{
    const auto there = [&names](const std::string& name) {
        const auto found = findColumn(names, name);
        return !found || found->has_value(); // a duplicate exists, and is refused later
    };
    const std::vector<std::string> headers = requestedHeaders(request);
    return std::all_of(headers.begin(), headers.end(), there);
}

bool wantsIntervalEnergy(const LogRequest& request)
{
    return std::any_of(
        request.wanted.begin(), request.wanted.end(),
        [](const WantedColumn& wanted) { return wanted.kind == SeriesKind::intervalEnergy; });
}

/// Finds the time columns of a header that has the requested names.
void findTime(Candidate& candidate, const SampleRows& rows, std::size_t header,
              const LogRequest& request)
{
    if (request.timeColumn) {
        const auto time = namedTimeColumns(candidate.dialect.header, *request.timeColumn);
        candidate.hasTime = time.has_value();
        candidate.dialect.time = time.value_or(TimeColumns{});
        candidate.dialect.timeReason = Phrase::tr("as set");
    } else if (const auto time =
                   timeByContent(rows, header, request.layoutRequest.headerLine.has_value())) {
        candidate.hasTime = true;
        candidate.dialect.time = *time;
        candidate.dialect.timeReason = Phrase::tr("the first column whose rows are times");
    } else if (const auto dates =
                   wantsIntervalEnergy(request) ? datesByContent(rows, header) : std::nullopt) {
        candidate.hasTime = true;
        candidate.dialect.time = *dates;
        candidate.dialect.timeReason = Phrase::tr("its rows are days");
    }
}

void noteDateAlone(Dialect& dialect, const SampleRows& rows, std::size_t header)
{
    const std::span<const SampleRow> below = rowsBelow(rows, header);
    if (dialect.time.second || below.empty())
        return;
    const std::string_view text = below.front().cell(dialect.time.first);
    if (isDateAlone(text))
        dialect.dateAlone = DateAlone{below.front().line, std::string(text)};
}

void noteTimeNumbers(Dialect& dialect, const SampleRows& rows, std::size_t header)
{
    if (!dialect.time.second)
        dialect.timeNumbers = timeNumbers(rows, header, dialect.time.first);
}

std::optional<Candidate> candidateAt(const Sample& sample, std::size_t row,
                                     const LogRequest& request, bool byName)
{
    Candidate candidate;
    candidate.dialect = {
        sample.delimiter, sample.rows[row].line, headerAbove(sample.rows, row), {}, {}, {}, 0};
    if (candidate.dialect.header.size() < 2)
        return std::nullopt;
    const bool hasUnits =
        sample.unitsLine > sample.rows[row].line &&
        (row + 1 >= sample.rows.size() || sample.unitsLine < sample.rows[row + 1].line);
    candidate.dialect.unitsLine = hasUnits ? sample.unitsLine : 0;
    candidate.byName = byName && hasAllNames(candidate.dialect.header, request);
    if (byName && !candidate.byName)
        return std::nullopt;
    findTime(candidate, sample.rows, row, request);
    if (!candidate.hasTime && (!byName || request.timeColumn))
        return std::nullopt;
    noteTimeNumbers(candidate.dialect, sample.rows, row);
    noteDateAlone(candidate.dialect, sample.rows, row);
    return candidate;
}

std::optional<Candidate> bestHeader(const Sample& sample, const LogRequest& request)
{
    const auto& wanted = request.layoutRequest.headerLine;
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
            candidate->hasTime = !request.timeColumn; // one was requested and doesn't exist
            return candidate;
        }
    }
    return timeless;
}

/// The most columns of the first rows.
std::size_t widthOf(const SampleRows& rows)
{
    std::size_t width = 0;
    for (std::size_t i = 0; i < std::min(rows.size(), rowsExamined); ++i)
        width = std::max(width, rows[i].fields.size());
    return width;
}

/// Without a header the columns' numbers are used as one, in line 0.
Sample sampleFor(std::string_view text, bool isWhole, char delimiter,
                 const LayoutRequest& layoutRequest)
{
    Sample sample = sampleRows(text, isWhole, delimiter);
    if (layoutRequest.headerLine == 0 && !sample.rows.empty())
        sample.rows.insert(sample.rows.begin(), {0, numberedColumns(widthOf(sample.rows))});
    else
        sample.unitsLine = joinUnitsRow(sample.rows, layoutRequest.headerLine);
    return sample;
}

Result<Dialect> numbered(const Sample& sample, const LogLayout& layout)
{
    return Dialect{layout.delimiter,
                   0,
                   numberedColumns(widthOf(sample.rows)),
                   {layout.timeColumn, layout.clockColumn},
                   Phrase::tr("as set"),
                   {},
                   0};
}

/// Uses the layout that a person chose. Problem (data): the header's line doesn't exist, or has
/// fewer columns.
Result<Dialect> withLayout(std::string_view text, bool isWhole, const LogLayout& layout)
{
    Sample sample = sampleRows(text, isWhole, layout.delimiter);
    sample.unitsLine = joinUnitsRow(sample.rows, layout.headerLine);
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
    const std::size_t headerRow =
        layout.headerLine == 0 ? 0 : static_cast<std::size_t>(row - sample.rows.begin());
    auto dialect = layout.headerLine == 0
                       ? numbered(sample, layout)
                       : Result<Dialect>(Dialect{layout.delimiter,
                                                 layout.headerLine,
                                                 headerAbove(sample.rows, headerRow),
                                                 {layout.timeColumn, layout.clockColumn},
                                                 Phrase::tr("as set"),
                                                 {},
                                                 sample.unitsLine});
    const std::size_t width = dialect->header.size();
    if (layout.timeColumn >= width || layout.clockColumn.value_or(0) >= width)
        return dataProblem(Phrase::tr("there are only %1 columns").with(std::to_string(width)),
                           linePlace(layout.headerLine),
                           Phrase::tr("choose the column of the time"), Decision::timeColumn);
    if (layout.headerLine == 0)
        sample.rows.insert(sample.rows.begin(), {0, dialect->header});
    noteTimeNumbers(*dialect, sample.rows, headerRow);
    noteDateAlone(*dialect, sample.rows, headerRow);
    return dialect;
}

} // namespace

std::vector<char> delimitersFor(const LayoutRequest& layoutRequest)
{
    if (layoutRequest.delimiter)
        return {*layoutRequest.delimiter};
    return {delimiters.begin(), delimiters.end()};
}

namespace {

constexpr char blanksDelimiter = ' ';

/// Problem (data): most rows below the header have another number of fields, so that a name or a
/// value with a blank in it would shift the columns.
Done checkBlanks(const Sample& sample, const Dialect& dialect)
{
    const auto header =
        std::find_if(sample.rows.begin(), sample.rows.end(),
                     [&](const SampleRow& row) { return row.line == dialect.headerLine; });
    if (dialect.delimiter != blanksDelimiter || header == sample.rows.end())
        return {};
    const auto below =
        rowsBelow(sample.rows, static_cast<std::size_t>(header - sample.rows.begin()));
    const std::size_t width = header->fields.size();
    const auto alike = std::count_if(below.begin(), below.end(), [&](const SampleRow& row) {
        return row.fields.size() == width;
    });
    if (static_cast<std::size_t>(alike) * 2 >= below.size())
        return {};
    return dataProblem(
        Phrase::tr("blanks part the header into %1 columns and the next row into %2")
            .with(std::to_string(width), std::to_string(below.front().fields.size())),
        linePlace(dialect.headerLine), Phrase::tr("write names with blanks in them in quotes"),
        Decision::layout);
}

} // namespace

Result<Dialect> findDialect(std::string_view text, bool isWhole, const LogRequest& request)
{
    if (request.layout)
        return withLayout(text, isWhole, *request.layout);
    std::vector<Sample> samples;
    std::optional<Candidate> best;
    const LayoutRequest& layoutRequest = request.layoutRequest;
    for (const char delimiter : delimitersFor(layoutRequest)) {
        samples.push_back(sampleFor(text, isWhole, delimiter, layoutRequest));
        const auto candidate = bestHeader(samples.back(), request);
        if (candidate && (!best || candidate->rank() > best->rank()))
            best = candidate;
    }
    if (!best && !layoutRequest.delimiter) {
        const Sample sample = sampleFor(text, isWhole, blanksDelimiter, layoutRequest);
        best = bestHeader(sample, request);
        if (best && best->hasTime)
            HOLDBAND_TRY(checkBlanks(sample, best->dialect));
        else
            best.reset();
    } else if (best && best->hasTime) {
        HOLDBAND_TRY(checkBlanks(samples.front(), best->dialect));
    }
    if (!best || (!best->hasTime && !request.timeColumn))
        return noHeader(samples, layoutRequest);
    if (!best->hasTime) {
        const auto time = namedTimeColumns(best->dialect.header, *request.timeColumn);
        HOLDBAND_TRY(time);
        for (const std::string& header : requestedHeaders(request))
            HOLDBAND_TRY(needColumn(best->dialect.header, header));
        return noHeader(samples, layoutRequest);
    }
    return best->dialect;
}

} // namespace holdband
