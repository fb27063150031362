#include "ui/imports/import_text.h"

#include "core/text/name_suggestions.h"
#include "core/text/phrase.h"
#include "ui/imports/log_state.h"
#include "ui/words/words.h"

#include <QLocale>

namespace holdband::ui {

namespace {

QString delimiterWord(char delimiter)
{
    if (delimiter == ' ')
        return Words::tr("blanks");
    return delimiter == '\t' ? Words::tr("tab") : QString(QLatin1Char(delimiter));
}

} // namespace

QString countText(std::int64_t count)
{
    return QLocale().toString(static_cast<qlonglong>(count));
}

QString countsSentence(const intake::ImportReport& report)
{
    return Words::tr("%1: %2 rows read, %3 readings new, %4 already there, %5 conflicting, "
                     "%6 rejected.")
        .arg(shown(report.file.fileName), countText(report.file.rowsRead),
             countText(report.added()), countText(report.alreadyThere()),
             countText(report.conflicting()), countText(report.file.rejectedTotal));
}

QString problemText(const Problem& problem)
{
    Problem page = problem;
    switch (problem.decision) {
    case Decision::none:
        break;
    case Decision::timeUnit:
        page.remedy = Phrase::tr("choose above what the times count, or which column has the time");
        break;
    case Decision::start:
        page.remedy = Phrase::tr("say above when they began");
        break;
    case Decision::timeColumn:
    case Decision::timeOfDay:
    case Decision::timePattern:
        page.remedy = Phrase::tr(
            "choose which column has the time; write its pattern if it is an unusual one");
        break;
    case Decision::dateOrder:
        page.remedy = Phrase::tr("choose the order of the dates above");
        break;
    case Decision::decimalSign:
        page.remedy = Phrase::tr("choose above what the comma is");
        break;
    case Decision::zone:
        page.remedy = Phrase::tr("choose the zone of the logger’s clock above");
        break;
    case Decision::unit:
    case Decision::headerUnit:
        page.remedy = Phrase::tr("choose the unit above the column");
        break;
    case Decision::columns:
        page.remedy = Phrase::tr("choose above each column what it is");
        break;
    case Decision::layout:
        page.remedy =
            Phrase::tr("choose above what parts the columns and which line has their names");
        break;
    case Decision::registerDrop:
        page.remedy = Phrase::tr("say above what happened to the register");
        break;
    }
    return sentence(page);
}

namespace {

/// Otherwise the user would not notice that half of a long log is left out.
QString passedOver(const intake::ImportReport& report)
{
    const std::vector<std::string>& names = report.file.ignoredNames;
    return names.empty()
               ? QString()
               : Words::tr(" Passed over, with all their rows: %1.").arg(shown(joined(names)));
}

/// Times read in the wrong zone are off by hours, but look right.
QString zoneRead(const intake::ImportReport& report)
{
    const QString zone = shown(intake::zoneSentence(report));
    return zone.isEmpty() ? QString() : QLatin1Char(' ') + capitalised(zone) + QLatin1Char('.');
}

bool allRejected(const intake::ImportReport& report)
{
    return !report.file.rejected.empty() && report.alreadyThere() + report.conflicting() == 0;
}

/// Why the file's first value was rejected, if none could be read.
QString firstReject(const intake::ImportReport& report)
{
    const RejectedRow& row = report.file.rejected.front();
    const QString line = QString::number(row.line);
    return row.column.empty()
               ? Words::tr(" No value could be read. The first: line %1: %2 %3.")
                     .arg(line, shown(row.text), shown(row.reason))
               : Words::tr(" No value could be read. The first: line %1, column %2: %3 %4.")
                     .arg(line, shown(row.column), shown(row.text), shown(row.reason));
}

/// Where nothing of a workbook's sheet can be shown, nothing about it can be chosen either.
QString askingText(const LogState& log)
{
    Problem problem = *log.problem;
    if (log.preview || log.sheets.size() < 2)
        return problemText(problem);
    problem.remedy = Phrase::tr("choose another sheet above");
    return sentence(problem);
}

QString changedSince(const LogState& log)
{
    return log.changedSince
               ? Words::tr("The file changed after it was looked at; nothing was stored. Now: ")
               : QString();
}

QString storedBeforeCancel(const LogState& log)
{
    return log.cancelledLate ? Words::tr(" It was stored before Cancel took effect; it can be "
                                         "withdrawn under Past imports.")
                             : QString();
}

} // namespace

QString stateSentence(const LogState& log)
{
    switch (log.stage) {
    case LogStage::waiting:
        return Words::tr("%1 waits for its turn.").arg(log.name);
    case LogStage::looking:
        return Words::tr("Looking at %1…").arg(log.name);
    case LogStage::saving:
        return Words::tr("Saving %1…").arg(log.name);
    case LogStage::asking:
        return log.problem ? changedSince(log) + askingText(log) : QString();
    case LogStage::ready:
        return changedSince(log) + countsSentence(*log.report) + zoneRead(*log.report) +
               passedOver(*log.report);
    case LogStage::nothingNew:
        if (allRejected(*log.report))
            return changedSince(log) + countsSentence(*log.report) + firstReject(*log.report);
        return changedSince(log) +
               Words::tr("%1 There is nothing new to save.").arg(countsSentence(*log.report));
    case LogStage::saved:
        break;
    }
    return Words::tr("Saved. %1").arg(countsSentence(*log.report)) + zoneRead(*log.report) +
           storedBeforeCancel(log);
}

QString stateWord(const LogState& log)
{
    switch (log.stage) {
    case LogStage::waiting:
        return Words::tr("waits");
    case LogStage::looking:
    case LogStage::saving:
        return QStringLiteral("…");
    case LogStage::asking:
        return Words::tr("asks");
    case LogStage::ready:
        return Words::tr("ready");
    case LogStage::nothingNew:
        return Words::tr("nothing new");
    case LogStage::saved:
        break;
    }
    return Words::tr("saved");
}

QStringList remarksOn(const LogState& log)
{
    QStringList remarks;
    if (log.preview) {
        const QString why = capitalised(shown(log.preview->layoutReason));
        const QString delimiter = delimiterWord(log.preview->layout.delimiter);
        if (log.report && !log.problem)
            remarks << Words::tr("%1. Text: %2, separator “%3”, decimal sign “%4”.")
                           .arg(why, shown(log.preview->encoding), delimiter,
                                QString(QLatin1Char(log.report->file.decimalSign)));
        else
            remarks << Words::tr("%1. Text: %2, separator “%3”.")
                           .arg(why, shown(log.preview->encoding), delimiter);
    }
    if (!log.report || log.problem)
        return remarks;
    if (!log.report->file.ignoredNames.empty())
        remarks << Words::tr("Passed over: %1.").arg(shown(joined(log.report->file.ignoredNames)));
    for (const std::string& warning : log.report->file.warnings)
        remarks << capitalised(shown(warning)) + QLatin1Char('.');
    return remarks;
}

} // namespace holdband::ui
