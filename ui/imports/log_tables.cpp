#include "ui/imports/log_tables.h"

#include "core/intake/csv/header.h"
#include "core/text/numbers.h"
#include "core/text/times.h"
#include "ui/imports/import_text.h"
#include "ui/words/words.h"

#include <map>

namespace holdband::ui {

namespace {

QString valueText(double value)
{
    return shown(shortestText(value, decimalSign()));
}

QString valueText(double value, ReadingUnit unit)
{
    return valueText(value) + QLatin1Char(' ') + shown(unitSymbol(unit));
}

std::size_t widest(const intake::LogPreview& preview)
{
    std::size_t width = preview.columns.size();
    for (const intake::PreviewRow& row : preview.rows)
        width = std::max(width, row.cells.size());
    return width;
}

TableCell plain(const QString& text)
{
    return {text, {}, false};
}

/// The rows left out completely, and the single values left out, by line.
struct LeftOut {
    std::map<std::int64_t, QString> rows;
    std::map<std::pair<std::int64_t, std::string>, QString> values;

    explicit LeftOut(const intake::ImportReport& report)
    {
        for (const RejectedRow& row : report.file.rejected) {
            const bool whole = row.column.empty() || row.column == report.file.timeHeader;
            if (whole)
                rows.emplace(row.line, Words::tr("left out: %1").arg(shown(row.reason)));
            else
                values.emplace(std::pair(row.line, row.column), shown(row.reason));
        }
        for (const auto& [line, column] : report.rows.repeated)
            rows.emplace(line, Words::tr("the same again"));
    }
};

TableText resultHeader(const intake::ImportReport& report, const Zone& zone)
{
    TableText table;
    table.header = {Words::tr("time in %1").arg(shown(zone.name()))};
    table.numeric = {false};
    for (const intake::ImportedColumn& column : report.columns) {
        table.header << QStringLiteral("%1, %2").arg(shown(column.name),
                                                     shown(unitSymbol(column.unit)));
        table.numeric.push_back(true);
    }
    return table;
}

std::vector<TableCell> resultCells(const intake::ImportReport& report, const intake::ResultRow* row,
                                   std::int64_t line, const LeftOut& leftOut, const Zone& zone)
{
    std::vector<TableCell> cells(report.columns.size() + 1);
    if (const auto whole = leftOut.rows.find(line); !row && whole != leftOut.rows.end())
        cells[0] = plain(whole->second);
    else if (row)
        cells[0] = plain(shown(localText(row->at, zone)));
    for (std::size_t i = 0; i < report.columns.size(); ++i) {
        if (row && row->values[i])
            cells[i + 1] = plain(valueText(*row->values[i]));
        else if (const auto value = leftOut.values.find({line, report.columns[i].header});
                 value != leftOut.values.end())
            cells[i + 1] = {Words::tr("left out"), value->second, false};
    }
    return cells;
}

std::vector<TableCell> cellsOf(const intake::ImportReport& report, const intake::ReportedRow& row,
                               const Zone& zone, bool conflict)
{
    const intake::ImportedColumn& column = report.columns[row.column];
    std::vector<TableCell> cells{plain(countText(row.line)), plain(shown(column.name)),
                                 plain(shown(localText(row.at, zone))),
                                 plain(valueText(row.value, column.unit))};
    if (conflict)
        cells.push_back(plain(row.stored ? valueText(*row.stored, column.unit) : dash));
    return cells;
}

TableText readingRows(const intake::ImportReport& report,
                      const std::vector<intake::ReportedRow>& rows, const Zone& zone, bool conflict)
{
    TableText table;
    table.header = {Words::tr("line"), Words::tr("of"), Words::tr("time"), Words::tr("value")};
    table.numeric = {true, false, false, true};
    if (conflict) {
        table.header << Words::tr("stored (unchanged)");
        table.numeric.push_back(true);
    }
    for (const intake::ReportedRow& row : rows)
        table.rows.push_back(cellsOf(report, row, zone, conflict));
    return table;
}

TableText rejectedRows(const intake::ImportReport& report)
{
    TableText table;
    table.header = {Words::tr("line"), Words::tr("column"), Words::tr("text"),
                    Words::tr("why it is left out")};
    table.numeric = {true, false, false, false};
    for (const RejectedRow& row : report.file.rejected) {
        if (table.rows.size() == maxRowsListed)
            break;
        table.rows.push_back({plain(countText(row.line)),
                              plain(row.column.empty() ? dash : shown(row.column)),
                              plain(shown(row.text)), plain(shown(row.reason))});
    }
    return table;
}

} // namespace

TableText rawTable(const intake::LogPreview& preview)
{
    TableText table;
    const std::size_t width = widest(preview);
    table.header << Words::tr("line");
    table.numeric = {true};
    for (std::size_t i = 0; i < width; ++i)
        table.header << (i < preview.columns.size() ? shown(preview.columns[i].header) : QString());
    for (const intake::PreviewRow& row : preview.rows) {
        const bool header = row.line == preview.layout.headerLine;
        const bool added = row.line <= preview.addedLines; // a header that the file doesn't have
        std::vector<TableCell> cells{
            plain(added ? QString() : countText(row.line - preview.addedLines))};
        for (std::size_t i = 0; i < width; ++i)
            cells.push_back({i < row.cells.size() ? shown(row.cells[i]) : QString(), {}, header});
        table.rows.push_back(std::move(cells));
    }
    return table;
}

TableText resultTable(const LogState& log, const Zone& zone)
{
    if (!log.report || !log.preview || log.problem)
        return {};
    const intake::ImportReport& report = *log.report;
    TableText table = resultHeader(report, zone);
    const LeftOut leftOut(report);
    std::map<std::int64_t, const intake::ResultRow*> byLine;
    for (const intake::ResultRow& row : report.firstRows)
        byLine[row.line] = &row;
    for (const intake::PreviewRow& row : log.preview->rows) {
        const std::int64_t line = row.line - log.preview->addedLines; // in the file
        const auto found = byLine.find(line);
        auto cells = resultCells(report, found == byLine.end() ? nullptr : found->second, line,
                                 leftOut, zone);
        if (row.line <= log.preview->layout.headerLine)
            cells[0] =
                plain(row.line == log.preview->layout.headerLine ? Words::tr("the header")
                                                                 : Words::tr("before the header"));
        table.rows.push_back(std::move(cells));
    }
    return table;
}

TableText outcomeTable(const intake::ImportReport& report, RowOutcome outcome, const Zone& zone)
{
    switch (outcome) {
    case RowOutcome::added:
        return readingRows(report, report.rows.added, zone, false);
    case RowOutcome::alreadyThere: {
        TableText table = readingRows(report, report.rows.alreadyThere, zone, false);
        for (const auto& [line, column] : report.rows.repeated)
            table.rows.push_back({plain(countText(line)), plain(shown(report.columns[column].name)),
                                  plain(dash), plain(Words::tr("twice in the file"))});
        return table;
    }
    case RowOutcome::conflicting:
        return readingRows(report, report.rows.conflicting, zone, true);
    case RowOutcome::rejected:
        break;
    }
    return rejectedRows(report);
}

std::int64_t countOf(const intake::ImportReport& report, RowOutcome outcome)
{
    switch (outcome) {
    case RowOutcome::added:
        return report.added();
    case RowOutcome::alreadyThere:
        return report.alreadyThere();
    case RowOutcome::conflicting:
        return report.conflicting();
    case RowOutcome::rejected:
        break;
    }
    return report.file.rejectedTotal;
}

QString countWords(std::int64_t count, RowOutcome outcome)
{
    const QString words[] = {Words::tr("%1 new"), Words::tr("%1 already there"),
                             Words::tr("%1 conflicting"), Words::tr("%1 rejected")};
    return words[static_cast<int>(outcome)].arg(countText(count));
}

QString outcomeTitle(const intake::ImportReport& report, RowOutcome outcome)
{
    const std::int64_t count = countOf(report, outcome);
    const auto listed =
        static_cast<std::int64_t>(outcomeTable(report, outcome, Zone::utc()).rows.size());
    QString title = shown(report.file.fileName) + QStringLiteral(": ") + countWords(count, outcome);
    if (listed < count)
        title += Words::tr(", the first %1 of them").arg(countText(listed));
    return title;
}

} // namespace holdband::ui
