#include "core/intake/csv/no_header.h"

#include "core/intake/csv/cells.h"
#include "core/intake/csv/time_columns.h"
#include "core/intake/log/log_places.h"
#include "core/intake/log/values.h"
#include "core/intake/time/stamps.h"
#include "core/text/name_suggestions.h"
#include "core/text/phrase.h"
#include "core/text/visible.h"

#include <algorithm>

namespace holdband {

namespace {

/// A cell's text for a sentence.
std::string cellText(std::string_view text)
{
    constexpr std::size_t mostBytes = 60;
    return clipped(visible(text, LineEnds::escaped), mostBytes);
}

std::string cellPlace(std::int64_t line, const std::string& header)
{
    return linePlace(line) + ", " + columnPlace(header);
}

Problem unreadTimes(std::string_view text, const char* why, std::int64_t line,
                    const std::string& name)
{
    return {ProblemKind::data,
            Phrase::tr("the times can't be read: \"%1\" %2")
                .with(cellText(text), Phrase::tr(why).text()),
            cellPlace(line, name),
            {}};
}

/// The Problem if there are times below that row but no numbers beside them: then the values, not
/// the times, are what to ask about.
std::optional<Problem> valuesUnread(const SampleRows& rows, std::size_t header)
{
    auto time = timeWithoutData(rows, header);
    if (!time)
        time = unixTimeWithoutData(rows, header);
    const std::vector<std::string> names = headerNames(rows[header]);
    if (!time || names.size() < 2 || time->first >= names.size())
        return std::nullopt;
    for (const SampleRow& row : rowsBelow(rows, header)) {
        for (std::size_t i = 0; i < names.size(); ++i) {
            if (time->has(i) || isMissing(row.cell(i)))
                continue;
            return Problem{
                ProblemKind::data,
                Phrase::tr("no value beside the times in \"%1\" can be read: \"%2\" is not a "
                           "number")
                    .with(names[time->first], cellText(row.cell(i))),
                cellPlace(row.line, names[i]),
                Phrase::tr("write plain numbers, and the unit into the header, such as \"%1 (°F)\"")
                    .with(names[i]),
                Decision::columns};
        }
    }
    return std::nullopt;
}

/// The column that is most likely meant to be the time: by its header, else the first one that has
/// digits and is not a number.
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

/// The Problem if the row below that one has no readable time: which cell was tried, and why it is
/// not a time.
std::optional<Problem> timesUnread(const SampleRows& rows, std::size_t header)
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
    if (isDateAlone(text))
        return dateAloneProblem(text, below.line, name);
    Problem problem = unreadTimes(text, stamp.error(), below.line, name);
    problem.decision = Decision::timePattern;
    problem.options = headerNames(rows[header]);
    problem.remedy =
        Phrase::tr("say how they are written, such as --time \"%1\" --pattern \"dd.MM.yy HH:mm\", "
                   "or name another column with --time \"COLUMN\"; the columns are: %2")
            .with(name, joined(problem.options));
    return problem;
}

/// Index of the first row with the most columns; other lines may precede the header.
std::size_t firstWidest(const SampleRows& rows)
{
    const auto widest =
        std::max_element(rows.begin(), rows.end(), [](const SampleRow& a, const SampleRow& b) {
            return a.fields.size() < b.fields.size();
        });
    return static_cast<std::size_t>(widest - rows.begin());
}

/// The Problem if the log has times but no numbers, or a column that is meant to have times.
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

bool hasTime(const SampleRow& row)
{
    return std::any_of(row.fields.begin(), row.fields.end(),
                       [](const std::string& field) { return looksLikeTime(field); });
}

/// The Problem of a log without a header, from the sample with most columns.
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
    if (hasTime(first))
        return dataProblem(Phrase::tr("there is no header: the first row has a time in it"), place,
                           Phrase::tr("say --header-line 0, and which column is which, such as "
                                      "--column \"SENSOR=column 2\"; or add a header row with the "
                                      "names of the columns"),
                           columns);
    if (widest.rows.size() == 1 && first.fields.size() > 1)
        return dataProblem(Phrase::tr("there are no rows below the header"), place);
    if (auto unread = unreadBelow(samples, widest))
        return failure(std::move(*unread));
    return dataProblem(Phrase::tr("no column of times was found below a header"), {},
                       Phrase::tr("name it with --time \"COLUMN\" or --time \"DATE COLUMN+TIME "
                                  "COLUMN\"; the first row has: %1")
                           .with(joined(headerNames(first))),
                       timeColumn, headerNames(first));
}

/// Why the requested line can't be the header's; if it can, there are no times below it.
tl::unexpected<Problem> noHeaderAt(const std::vector<Sample>& samples, std::int64_t line)
{
    const std::string place = linePlace(line);
    const SampleRow* widest = nullptr;
    const SampleRows* rows = nullptr;
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
    if (hasTime(*widest))
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

} // namespace

Problem dateAloneProblem(std::string_view text, std::int64_t line, const std::string& name)
{
    Problem problem = unreadTimes(text, scanStamp(text).error(), line, name);
    problem.decision = Decision::timeOfDay;
    problem.options = {name};
    problem.remedy = Phrase::tr("say which column has the time of day with --time \"%1+TIME "
                                "COLUMN\", or write it behind the date")
                         .with(name);
    return problem;
}

tl::unexpected<Problem> noHeader(const std::vector<Sample>& samples,
                                 const LayoutRequest& layoutRequest)
{
    const bool anyRows = std::any_of(samples.begin(), samples.end(),
                                     [](const Sample& sample) { return !sample.rows.empty(); });
    return anyRows && layoutRequest.headerLine.value_or(0) > 0
               ? noHeaderAt(samples, *layoutRequest.headerLine)
               : noHeaderFound(samples);
}

} // namespace holdband
