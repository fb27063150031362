#include "ui/imports/import_words.h"

#include "core/intake/header.h"
#include "core/text/near.h"
#include "ui/words/words.h"

#include <QLocale>

namespace holdband::ui {

namespace {

constexpr std::size_t rejectedShown = 8;

bool mentions(const Problem& problem, const char* option)
{
    return problem.remedy.find(option) != std::string::npos;
}

} // namespace

QString countText(std::int64_t count)
{
    return QLocale().toString(static_cast<qlonglong>(count));
}

TableWords countsTable(const intake::ImportReport& report)
{
    TableWords table;
    table.header = {
        QStringLiteral("Column"), QStringLiteral("becomes"),       QStringLiteral("in"),
        QStringLiteral("new"),    QStringLiteral("already there"), QStringLiteral("conflicting")};
    table.numeric = {false, false, false, true, true, true};
    for (const intake::ImportedColumn& column : report.columns)
        table.rows.push_back({{shown(column.header), {}, false},
                              {shown(column.name), {}, true},
                              {shown(unitSymbol(column.unit)), shown(column.unitReason), false},
                              {countText(column.added), {}, true},
                              {countText(column.alreadyThere), {}, false},
                              {countText(column.conflicting), {}, column.conflicting > 0}});
    return table;
}

TableWords rejectedTable(const intake::ImportReport& report)
{
    TableWords table;
    table.header = {QStringLiteral("line"), QStringLiteral("column"), QStringLiteral("text"),
                    QStringLiteral("why it is left out")};
    table.numeric = {true, false, false, false};
    for (const RejectedRow& row : report.file.rejected) {
        if (table.rows.size() == rejectedShown)
            break;
        table.rows.push_back({{countText(row.line), {}, false},
                              {row.column.empty() ? dash : shown(row.column), {}, false},
                              {shown(row.text), {}, false},
                              {shown(row.reason), {}, false}});
    }
    return table;
}

TableWords pastTable(const std::vector<store::RawImport>& imports)
{
    TableWords table;
    table.header = {QStringLiteral("File"), QStringLiteral("rows"), QStringLiteral("for")};
    table.numeric = {false, true, false};
    for (auto import = imports.rbegin(); import != imports.rend(); ++import) {
        std::vector<std::string> names;
        for (const store::RawColumn& column : import->columns)
            names.push_back(column.sensor);
        table.rows.push_back({{shown(import->file.file), {}, true},
                              {countText(import->file.rowsRead), {}, false},
                              {shown(joined(names)), {}, false}});
    }
    return table;
}

QStringList reasonsOf(const intake::ImportReport& report)
{
    const LogFile& file = report.file;
    QStringList reasons;
    reasons << QStringLiteral("Time: column %1, %2")
                   .arg(shown(file.timeHeader), shown(file.timeReason));
    reasons << (file.zoneName.empty() ? QStringLiteral("Zone: each row says its own offset")
                                      : QStringLiteral("Zone: ") + shown(file.zoneName));
    for (const intake::ImportedColumn& column : report.columns)
        reasons << QStringLiteral("%1: %2").arg(shown(column.header), shown(column.unitReason));
    reasons << QStringLiteral("Text: %1, fields parted by “%2”, decimal sign “%3”")
                   .arg(shown(file.encoding),
                        file.delimiter == '\t' ? QStringLiteral("tab")
                                               : QString(QLatin1Char(file.delimiter)),
                        QString(QLatin1Char(file.decimalSign)));
    if (!file.ignoredColumns.empty()) {
        QStringList ignored;
        for (const std::string& header : file.ignoredColumns)
            ignored << shown(header);
        reasons << QStringLiteral("Ignored: ") + ignored.join(QStringLiteral(", "));
    }
    for (const std::string& warning : file.warnings)
        reasons << capitalised(shown(warning));
    for (const std::string& conflict : report.conflicts)
        reasons << capitalised(shown(conflict));
    return reasons;
}

QString countsSentence(const intake::ImportReport& report)
{
    return QStringLiteral("%1: %2 rows read, %3 readings new, %4 already there, %5 conflicting, "
                          "%6 rejected.")
        .arg(shown(report.file.fileName), countText(report.file.rowsRead),
             countText(report.added()), countText(report.alreadyThere()),
             countText(report.conflicting()), countText(report.file.rejectedTotal));
}

Decision decisionIn(const Problem& problem)
{
    if (mentions(problem, "--date-order"))
        return Decision::dateOrder;
    if (mentions(problem, "--zone"))
        return Decision::zone;
    if (mentions(problem, "--unit"))
        return Decision::unit;
    if (mentions(problem, "--column"))
        return Decision::columns;
    return Decision::none;
}

QString problemWords(const Problem& problem)
{
    Problem own = problem;
    switch (decisionIn(problem)) {
    case Decision::dateOrder:
        own.remedy = "choose the order of the date on the left";
        break;
    case Decision::zone:
        own.remedy = "choose a zone, or a fixed offset such as -07:00, on the left";
        break;
    case Decision::unit:
        own.remedy = "choose the unit of the temperatures on the left";
        break;
    case Decision::columns:
        own.remedy = "choose on the left what each column is";
        break;
    case Decision::none:
        break;
    }
    return sentence(own);
}

} // namespace holdband::ui
