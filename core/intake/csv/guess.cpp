#include "core/intake/csv/guess.h"

#include "core/intake/csv/time_columns.h"
#include "core/intake/csv/units_row.h"
#include "core/intake/log/units.h"
#include "core/intake/log/values.h"
#include "core/intake/time/stamps.h"
#include "core/store/records/equipment.h"
#include "core/text/name_suggestions.h"
#include "core/text/phrase.h"
#include "core/text/trimmed.h"

#include <algorithm>
#include <array>
#include <functional>
#include <map>
#include <set>
#include <utility>

namespace holdband::intake {

namespace {

/// The most frequent number of columns.
std::size_t usualWidth(const SampleRows& rows)
{
    std::map<std::size_t, std::size_t> counts;
    for (const SampleRow& row : rows)
        ++counts[row.fields.size()];
    std::size_t width = 0, most = 0;
    for (const auto& [each, count] : counts) {
        if (each > 1 && count >= most) {
            width = each;
            most = count;
        }
    }
    return width;
}

/// Tenths of the rows that have that many columns.
std::size_t tenthsOfWidth(const SampleRows& rows, std::size_t width)
{
    const auto count = std::count_if(rows.begin(), rows.end(), [width](const SampleRow& row) {
        return row.fields.size() == width;
    });
    return rows.empty() ? 0 : static_cast<std::size_t>(count) * 10 / rows.size();
}

/// Index of the first row with that many columns.
std::size_t firstOfWidth(const SampleRows& rows, std::size_t width)
{
    const auto found = std::find_if(rows.begin(), rows.end(), [width](const SampleRow& row) {
        return row.fields.size() == width;
    });
    return static_cast<std::size_t>(found - rows.begin());
}

bool holdsData(const SampleRow& row)
{
    return std::any_of(row.fields.begin(), row.fields.end(), [](const std::string& field) {
        const std::string_view text = trimmed(field);
        return isValue(text) || looksLikeTime(text) || isDateAlone(text) || isClockAlone(text);
    });
}

/// Time columns of a log without a header.
std::optional<TimeColumns> timeWithoutHeader(const SampleRows& rows, std::size_t first,
                                             std::size_t width)
{
    SampleRows below{{0, numberedColumns(width)}};
    below.insert(below.end(), rows.begin() + static_cast<std::ptrdiff_t>(first), rows.end());
    return timeByContent(below, 0);
}

/// Index of the row that begins in that line; absent if none does.
std::optional<std::size_t> rowInLine(const SampleRows& rows, std::int64_t line)
{
    const auto found = std::find_if(rows.begin(), rows.end(),
                                    [line](const SampleRow& row) { return row.line == line; });
    return found == rows.end() ? std::nullopt
                               : std::optional(static_cast<std::size_t>(found - rows.begin()));
}

/// `first`: the row of the header, or of the first values.
GuessedDialect dialectOf(const Sample& sample, std::size_t first, std::size_t width, bool bare,
                         bool said)
{
    const SampleRow& row = sample.rows[first];
    GuessedDialect guess;
    guess.dialect.delimiter = sample.delimiter;
    guess.delimiterReason = Phrase::tr("it splits most rows into the same number of columns");
    guess.dialect.headerLine = bare ? 0 : row.line;
    guess.dialect.unitsLine = bare ? 0 : sample.unitsLine;
    guess.dialect.header = numberedColumns(width);
    for (std::size_t i = 0; !bare && i < width; ++i)
        guess.dialect.header[i] = trimmed(row.fields[i]);
    auto time = bare ? timeWithoutHeader(sample.rows, first, width)
                     : timeByContent(sample.rows, first, said);
    if (!time && !bare)
        time = timeWithoutData(sample.rows, first);
    guess.hasTime = time.has_value();
    guess.dialect.time = time.value_or(TimeColumns{});
    guess.headerReason =
        bare ? Phrase::tr("the first row holds values") : Phrase::tr("it is as wide as most rows");
    return guess;
}

/// For a log without times or without a header: the delimiter that splits most rows alike. Absent:
/// none does, or the requested header isn't there.
std::optional<GuessedDialect> guessByWidth(std::string_view text, bool isWhole,
                                           const LayoutRequest& layoutRequest)
{
    std::optional<Sample> best;
    std::size_t width = 0;
    std::pair<std::size_t, std::size_t> rank{0, 1};
    for (const char delimiter : delimitersFor(layoutRequest)) {
        Sample sample = sampleRows(text, isWhole, delimiter);
        if (layoutRequest.headerLine != 0)
            sample.unitsLine = joinUnitsRow(sample.rows, layoutRequest.headerLine);
        const std::size_t each = usualWidth(sample.rows);
        const std::pair next{tenthsOfWidth(sample.rows, each), each};
        if (each > 1 && next > rank) {
            rank = next;
            width = each;
            best = std::move(sample);
        }
    }
    if (!best)
        return std::nullopt;
    const std::int64_t line = layoutRequest.headerLine.value_or(0);
    const auto first =
        line > 0 ? rowInLine(best->rows, line) : std::optional(firstOfWidth(best->rows, width));
    if (!first || best->rows[*first].fields.size() < 2)
        return std::nullopt;
    const bool bare = layoutRequest.headerLine ? line == 0 : holdsData(best->rows[*first]);
    GuessedDialect guess = dialectOf(*best, *first, bare ? width : best->rows[*first].fields.size(),
                                     bare, layoutRequest.headerLine.has_value());
    const bool headerOnly = !bare && isWhole && best->rows.back().line == guess.dialect.headerLine;
    return headerOnly ? std::nullopt : std::optional(std::move(guess));
}

/// The contents of the first rows below the header.
struct Contents {
    std::size_t filled = 0;
    std::size_t numbers = 0;
    std::map<std::string, std::size_t> texts; ///< those that are not numbers, as written

    bool isNumeric() const { return numbers > 0 && numbers * 2 >= filled; }
    bool isWords() const { return !texts.empty() && numbers == 0; }
};

Contents contentsOf(const SampleRows& rows, const Dialect& dialect, std::size_t column)
{
    Contents contents;
    for (const SampleRow& row : rows) {
        const std::string_view text = row.cell(column);
        if (row.line <= dialect.headerLine || row.line == dialect.unitsLine || isMissing(text))
            continue;
        ++contents.filled;
        if (isValue(text))
            ++contents.numbers;
        else
            ++contents.texts[std::string(text)];
    }
    return contents;
}

const Target* targetCalled(const std::vector<Target>& targets, const std::string& text)
{
    const auto bare = [](const std::string& name) { return folded(headerParts(name).bare); };
    const std::array same{
        std::function([&](const std::string& name) { return folded(name) == folded(text); }),
        std::function([&](const std::string& name) { return bare(name) == bare(text); }),
        std::function([&](const std::string& name) {
            return nameWithoutUnit(name) == nameWithoutUnit(text);
        })};
    for (const auto& isSame : same) {
        for (const Target& target : targets) {
            if (isSame(target.name))
                return &target;
        }
    }
    return nullptr;
}

/// The only target whose name begins with the header's words and that can have its unit.
const Target* targetBegunBy(const std::vector<Target>& targets, const std::string& header)
{
    const auto unit = headerParts(header).unit;
    std::vector<std::string> names;
    std::vector<const Target*> fitting;
    for (const Target& target : targets) {
        if (unit && !fits(*unit, target.kind))
            continue;
        names.push_back(target.name);
        fitting.push_back(&target);
    }
    const auto found = nameBegunBy(header, names);
    return found ? fitting[*found] : nullptr;
}

std::string headerIsName(const Target& target)
{
    return target.kind == SeriesKind::meter ? Phrase::tr("its header is the meter’s name")
                                            : Phrase::tr("its header is the sensor’s name");
}

std::string isName(const Target& target)
{
    return target.kind == SeriesKind::meter ? Phrase::tr("it is the meter’s name")
                                            : Phrase::tr("it is the sensor’s name");
}

/// Whether most of its cells are units.
bool holdsUnits(const Contents& contents)
{
    std::size_t units = 0;
    for (const auto& [text, count] : contents.texts)
        units += unitNamed(text) ? count : 0;
    return contents.isWords() && units * 2 >= contents.filled;
}

/// Guesses the columns of one log.
class Guesser {
public:
    Guesser(const GuessedDialect& guessed, const SampleRows& rows,
            const std::vector<Target>& targets, LogPreview& preview)
        : m_guessed(guessed), m_dialect(guessed.dialect), m_targets(targets), m_preview(preview)
    {
        for (std::size_t i = 0; i < m_dialect.header.size(); ++i)
            m_contents.push_back(contentsOf(rows, m_dialect, i));
    }

    void run()
    {
        bool anyNamed = false;
        for (std::size_t i = 0; i < m_dialect.header.size(); ++i) {
            m_preview.columns.push_back(guess(i));
            anyNamed = anyNamed || m_preview.columns.back().choice.meaning == Meaning::reading;
        }
        if (!anyNamed)
            guessLong();
        if (m_dialect.headerLine > 0 && m_preview.names.empty())
            guessByBeginning();
    }

private:
    bool isTime(std::size_t i) const { return m_guessed.hasTime && m_dialect.time.has(i); }

    ColumnGuess guess(std::size_t i)
    {
        ColumnGuess column;
        column.header = m_dialect.header[i];
        if (isTime(i)) {
            const bool clock = m_dialect.time.second == i;
            column.choice.meaning = clock ? Meaning::clock : Meaning::time;
            column.reason = clock                   ? Phrase::tr("its rows are times of day")
                            : m_dialect.time.second ? Phrase::tr("its rows are dates")
                                                    : Phrase::tr("its rows are times");
            return column;
        }
        const Target* target =
            m_dialect.headerLine > 0 ? targetCalled(m_targets, column.header) : nullptr;
        if (target && m_used.insert(target->name).second) {
            column.choice = {Meaning::reading, target->name, std::nullopt};
            column.reason = headerIsName(*target);
        } else {
            column.reason = !m_contents[i].isNumeric() ? Phrase::tr("there are no numbers in it")
                            : target                   ? Phrase::tr("another column has that name")
                                     : Phrase::tr("nothing in the logbook has that name");
        }
        if (const auto unit = headerParts(column.header).logUnit())
            column.unitReason = headerUnitReason(*unit);
        return column;
    }

    /// Columns of numbers that are still unknown, by the beginning of a name.
    void guessByBeginning()
    {
        for (std::size_t i = 0; i < m_preview.columns.size(); ++i) {
            ColumnGuess& column = m_preview.columns[i];
            if (column.choice.meaning != Meaning::ignored || !m_contents[i].isNumeric())
                continue;
            const Target* target = targetBegunBy(m_targets, column.header);
            if (!target || !m_used.insert(target->name).second)
                continue;
            column.choice = {Meaning::reading, target->name, std::nullopt};
            column.reason = Phrase::tr("only \"%1\" begins with its header").with(target->name);
        }
    }

    /// One column has texts and one has numbers: the texts may name the sensor of each number.
    /// Texts that are units count as names only if there are no others.
    void guessLong()
    {
        std::optional<std::size_t> name, value, unit;
        std::size_t numeric = 0;
        for (std::size_t i = 0; i < m_contents.size(); ++i) {
            if (isTime(i))
                continue;
            if (m_contents[i].isNumeric()) {
                ++numeric;
                value = value ? value : i;
            }
            if (!unit && holdsUnits(m_contents[i]))
                unit = i;
            else if (!name && looksLikeNames(m_contents[i]))
                name = i;
        }
        if (!name && unit && looksLikeNames(m_contents[*unit]))
            name = std::exchange(unit, std::nullopt);
        if (!name || !value || numeric > 1)
            return;
        m_preview.columns[*name].choice.meaning = Meaning::name;
        m_preview.columns[*name].reason = Phrase::tr("it repeats a few names");
        m_preview.columns[*value].choice.meaning = Meaning::value;
        m_preview.columns[*value].reason = Phrase::tr("the only column of numbers");
        if (unit) {
            m_preview.columns[*unit].choice.meaning = Meaning::unit;
            m_preview.columns[*unit].reason = Phrase::tr("its rows are units");
        }
        listNames(m_contents[*name]);
    }

    /// Whether it has a name from the logbook, or a few texts that repeat.
    bool looksLikeNames(const Contents& contents) const
    {
        constexpr std::size_t few = 30;
        const auto known = [this](const auto& each) {
            return targetCalled(m_targets, each.first) != nullptr;
        };
        return contents.isWords() &&
               (std::any_of(contents.texts.begin(), contents.texts.end(), known) ||
                (contents.texts.size() >= 2 && contents.texts.size() <= few &&
                 contents.filled >= 2 * contents.texts.size()));
    }

    void listNames(const Contents& contents)
    {
        for (const auto& [text, count] : contents.texts) {
            const Target* target = targetCalled(m_targets, text);
            if (target && m_used.insert(target->name).second)
                m_preview.names.push_back({{text, target->name, std::nullopt}, isName(*target)});
            else
                m_preview.names.push_back(
                    {{text, {}, std::nullopt}, Phrase::tr("nothing in the logbook has that name")});
        }
    }

    const GuessedDialect& m_guessed;
    const Dialect& m_dialect;
    const std::vector<Target>& m_targets;
    LogPreview& m_preview;
    std::vector<Contents> m_contents; ///< of each column
    std::set<std::string> m_used;
};

} // namespace

Result<std::vector<Target>> readTargets(const store::LogbookFile& logbook)
{
    auto sensors = store::readSensors(logbook);
    HOLDBAND_TRY(sensors);
    auto meters = store::readMeters(logbook);
    HOLDBAND_TRY(meters);
    std::vector<Target> targets;
    for (const Sensor& sensor : *sensors) {
        if (!sensor.retired)
            targets.push_back({sensor.name, seriesKind(sensor.reads)});
    }
    for (const Meter& meter : *meters) {
        if (!meter.retired)
            targets.push_back({meter.name, SeriesKind::meter});
    }
    return targets;
}

std::string GuessedDialect::reason() const
{
    if (dialect.headerLine == 0)
        return Phrase::tr("no header: %1").with(headerReason);
    return Phrase::tr("the header is in line %1: %2")
        .with(std::to_string(dialect.headerLine), headerReason);
}

Result<GuessedDialect> guessDialect(std::string_view text, bool isWhole,
                                    const LayoutRequest& layoutRequest)
{
    LogRequest request;
    request.layoutRequest = layoutRequest;
    auto found = findDialect(text, isWhole, request);
    if (!found && found.error().decision == Decision::layout)
        return failure(found.error());
    std::optional<GuessedDialect> guess;
    if (!found)
        guess = guessByWidth(text, isWhole, layoutRequest);
    else
        guess = GuessedDialect{
            *found, Phrase::tr("it gives times and numbers"),
            found->headerLine == 0 ? std::string() : Phrase::tr("times and numbers follow").text(),
            true};
    if (!guess)
        return failure(found.error());
    if (layoutRequest.delimiter)
        guess->delimiterReason = Phrase::tr("as chosen");
    if (layoutRequest.headerLine)
        guess->headerReason = Phrase::tr("as chosen");
    return *guess;
}

void guessColumns(const GuessedDialect& guessed, const SampleRows& rows,
                  const std::vector<Target>& targets, LogPreview& preview)
{
    Guesser(guessed, rows, targets, preview).run();
}

} // namespace holdband::intake
