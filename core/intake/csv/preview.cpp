#include "core/intake/csv/preview.h"

#include "core/intake/container/log_bytes.h"
#include "core/intake/csv/cells.h"
#include "core/intake/csv/dialect.h"
#include "core/intake/csv/encoding.h"
#include "core/intake/csv/guess.h"
#include "core/intake/csv/temperature_hint.h"
#include "core/intake/log/log_places.h"
#include "core/intake/time/date_order.h"
#include "core/store/records/equipment.h"
#include "core/text/name_suggestions.h"
#include "core/text/phrase.h"
#include "core/text/times.h"
#include "core/text/trimmed.h"

#include <algorithm>
#include <filesystem>

namespace holdband::intake {

namespace {

constexpr std::size_t longestCell = 200; ///< bytes shown of a cell

struct Head {
    std::string text;
    std::string encoding;
    bool whole = false;
    std::int64_t addedLines = 0;
};

/// The first piece of the file as UTF-8.
Result<Head> readHead(const LogSource& source)
{
    auto file = LogBytes::open({source.path, source.text, {}, source.sheet, true});
    HOLDBAND_TRY(file);
    const auto piece = file->next();
    HOLDBAND_TRY(piece);
    const bool whole = piece->size() < SourceFile::pieceSize;
    Decoder decoder;
    std::string_view text = decoder.decode(*piece, whole);
    Decoder windows(Encoding::windows1252);
    if (!decoder.contradicted())
        return Head{std::string(text), std::string(encodingName(decoder.encoding())), whole,
                    file->addedLines()};
    text = windows.decode(*piece, whole);
    return Head{std::string(text), std::string(encodingName(windows.encoding())), whole};
}

std::vector<PreviewRow> previewRows(const Sample& sample)
{
    std::vector<PreviewRow> rows;
    for (const SampleRow& row : sample.rows) {
        if (rows.size() == mostPreviewRows)
            break;
        PreviewRow shown{row.line, {}};
        for (const std::string& field : row.fields)
            shown.cells.push_back(clipped(field, longestCell));
        rows.push_back(std::move(shown));
    }
    return rows;
}

/// The reason for the one possible date order of the first rows; empty where several are possible,
/// or none.
std::string orderReasonOf(const LogPreview& preview, std::size_t timeColumn)
{
    DateOrderVotes votes;
    for (const PreviewRow& row : preview.rows) {
        if (row.line <= preview.layout.lastHeaderLine() || timeColumn >= row.cells.size())
            continue;
        std::string text(trimmed(row.cells[timeColumn]));
        if (isDateAlone(text))
            text += " 00:00";
        const auto stamp = scanStamp(zonedText(text).stamp);
        if (stamp && stamp->kind == StampKind::loose)
            votes.take(unpacked(stamp->value), row.line, trimmed(row.cells[timeColumn]));
    }
    const auto decided = votes.decide();
    return votes.any() && decided ? decided->reason : std::string();
}

std::string shapeFor(const Dialect& dialect)
{
    return shapeOf(dialect.delimiter, dialect.headerLine > 0, dialect.header);
}

FoundLayout layoutOf(const GuessedDialect& guess)
{
    return {guess.dialect.delimiter, guess.delimiterReason, guess.dialect.headerLine,
            guess.headerReason, shapeFor(guess.dialect)};
}

/// The layout found without the user's requested settings.
std::optional<FoundLayout> foundIn(const Head& head)
{
    const auto guess = guessDialect(head.text, head.whole);
    return guess ? std::optional(layoutOf(*guess)) : std::nullopt;
}

/// The unit of temperatures to which no log gives one.
TemperatureUnit unmarkedUnit(const store::LogbookFile& logbook)
{
    const auto settings = store::readSettings(logbook);
    return settings ? settings->temperatureUnit() : TemperatureUnit::celsius;
}

bool contains(const std::vector<Target>& targets, const std::string& name)
{
    return std::any_of(targets.begin(), targets.end(),
                       [&](const Target& target) { return target.name == name; });
}

} // namespace

ColumnMap LogPreview::map() const
{
    ColumnMap map;
    for (const ColumnGuess& column : columns)
        map.columns.push_back(column.choice);
    for (const NameGuess& name : names)
        map.names.push_back(name.choice);
    return map;
}

std::vector<std::string> sheetsOf(const LogSource& source)
{
    return LogBytes::sheetNames({source.path, source.text}).value_or(std::vector<std::string>{});
}

Result<LogPreview> previewLog(const store::LogbookFile& logbook, const LogSource& source,
                              const LayoutRequest& layoutRequest)
{
    const std::string name = fileName(source.path);
    auto head = readHead(source);
    if (!head)
        return inFile(head.error(), source.path);
    auto dialect = guessDialect(head->text, head->whole, layoutRequest);
    if (!dialect && head->addedLines > 0)
        dialect = inTable(dialect.error());
    if (!dialect)
        return inFile(dialect.error(), source.path);
    auto targets = readTargets(logbook);
    HOLDBAND_TRY(targets);
    LogPreview preview;
    preview.fileName = name;
    preview.encoding = head->encoding;
    preview.addedLines = head->addedLines;
    preview.layout = {dialect->dialect.delimiter, dialect->dialect.headerLine,
                      dialect->dialect.time.first, dialect->dialect.time.second,
                      dialect->dialect.unitsLine};
    preview.layoutReason = dialect->reason();
    preview.asked = layoutRequest;
    preview.found = layoutRequest == LayoutRequest{} ? layoutOf(*dialect) : foundIn(*head);
    preview.shape = shapeFor(dialect->dialect);
    const Sample sample = sampleRows(head->text, head->whole, dialect->dialect.delimiter);
    preview.rows = previewRows(sample);
    guessColumns(*dialect, sample.rows, *targets, preview);
    markTemperatures(dialect->dialect, sample.rows, unmarkedUnit(logbook), preview);
    if (dialect->hasTime)
        preview.orderReason = orderReasonOf(preview, preview.layout.timeColumn);
    return preview;
}

void applyMap(const store::LogbookFile& logbook, const ColumnMap& map, LogPreview& preview)
{
    const auto targets = readTargets(logbook);
    if (!targets || map.columns.size() != preview.columns.size())
        return;
    const std::string before = Phrase::tr("as chosen before");
    for (std::size_t i = 0; i < map.columns.size(); ++i) {
        const ColumnChoice& choice = map.columns[i];
        if (choice.meaning == Meaning::reading && !contains(*targets, choice.of))
            continue;
        preview.columns[i].choice = choice;
        preview.columns[i].reason = before;
        preview.columns[i].mayBeTemperature = false;
        if (choice.unit)
            preview.columns[i].unitReason = before;
    }
    for (const NameChoice& choice : map.names) {
        if (!choice.of.empty() && !contains(*targets, choice.of))
            continue;
        const auto found =
            std::find_if(preview.names.begin(), preview.names.end(),
                         [&](const NameGuess& guess) { return guess.choice.name == choice.name; });
        if (found == preview.names.end())
            preview.names.push_back({choice, before});
        else
            *found = {choice, before};
    }
    if (const auto time = map.columnOf(Meaning::time))
        preview.layout.timeColumn = *time;
    preview.layout.clockColumn = map.columnOf(Meaning::clock);
}

Result<std::vector<PatternTry>> tryPattern(const LogPreview& preview, const ColumnMap& map,
                                           const std::string& pattern)
{
    auto compiled = TimePattern::compile(pattern);
    if (!compiled)
        return failure(compiled.error());
    std::vector<PatternTry> tries;
    const auto time = map.columnOf(Meaning::time);
    const auto clock = map.columnOf(Meaning::clock);
    for (const PreviewRow& row : preview.rows) {
        if (!time || row.line <= preview.layout.lastHeaderLine() || *time >= row.cells.size())
            continue;
        std::string text(trimmed(row.cells[*time]));
        if (clock && *clock < row.cells.size())
            text += " " + std::string(trimmed(row.cells[*clock]));
        const auto stamp = compiled->read(text);
        const Zone utc = Zone::utc();
        tries.push_back(
            {row.line, text,
             stamp ? localText(instantFromMs(stamp->value), utc) : Phrase::tr(stamp.error()).text(),
             stamp.has_value()});
    }
    return tries;
}

} // namespace holdband::intake
