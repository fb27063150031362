#include "ui/imports/import_words.h"

#include "core/text/near.h"
#include "ui/imports/log_state.h"
#include "ui/words/words.h"

#include <QLocale>

namespace holdband::ui {

namespace {

QString delimiterWord(char delimiter)
{
    return delimiter == '\t' ? QStringLiteral("tab") : QString(QLatin1Char(delimiter));
}

} // namespace

QString countText(std::int64_t count)
{
    return QLocale().toString(static_cast<qlonglong>(count));
}

QString countsSentence(const intake::ImportReport& report)
{
    return QStringLiteral("%1: %2 rows read, %3 readings new, %4 already there, %5 conflicting, "
                          "%6 rejected.")
        .arg(shown(report.file.fileName), countText(report.file.rowsRead),
             countText(report.added()), countText(report.alreadyThere()),
             countText(report.conflicting()), countText(report.file.rejectedTotal));
}

QString problemWords(const Problem& problem)
{
    Problem page = problem;
    switch (problem.decision) {
    case Decision::none:
        break;
    case Decision::timeColumn:
        page.remedy = "choose which column has the time; write its pattern if it is an unusual one";
        break;
    case Decision::dateOrder:
        page.remedy = "choose the order of the dates above";
        break;
    case Decision::decimalSign:
        page.remedy = "choose above what the comma is";
        break;
    case Decision::zone:
        page.remedy = "choose the zone of the logger’s clock above";
        break;
    case Decision::unit:
        page.remedy = "choose the unit above the column";
        break;
    case Decision::columns:
        page.remedy = "choose above each column what it is";
        break;
    case Decision::layout:
        page.remedy = "choose above what parts the columns and which line has their names";
        break;
    case Decision::registerDrop:
        page.remedy = "say above what happened to the register";
        break;
    }
    return sentence(page);
}

namespace {

/// Half of a long log would else stay out and nobody would notice.
QString passedOver(const intake::ImportReport& report)
{
    const std::vector<std::string>& names = report.file.ignoredNames;
    return names.empty()
               ? QString()
               : QStringLiteral(" Passed over, with all their rows: %1.").arg(shown(joined(names)));
}

} // namespace

QString stateSentence(const LogState& log)
{
    switch (log.stage) {
    case LogStage::waiting:
        return QStringLiteral("%1 waits for its turn.").arg(log.name);
    case LogStage::looking:
        return QStringLiteral("Looking at %1…").arg(log.name);
    case LogStage::keeping:
        return QStringLiteral("Keeping %1…").arg(log.name);
    case LogStage::asking:
        return log.problem ? problemWords(*log.problem) : QString();
    case LogStage::ready:
        return countsSentence(*log.report) + passedOver(*log.report);
    case LogStage::nothingNew:
        return countsSentence(*log.report) + QStringLiteral(" There is nothing new to keep.");
    case LogStage::kept:
        break;
    }
    return QStringLiteral("Kept. ") + countsSentence(*log.report);
}

QString stateWord(const LogState& log)
{
    switch (log.stage) {
    case LogStage::waiting:
        return QStringLiteral("waits");
    case LogStage::looking:
    case LogStage::keeping:
        return QStringLiteral("…");
    case LogStage::asking:
        return QStringLiteral("asks");
    case LogStage::ready:
        return QStringLiteral("ready");
    case LogStage::nothingNew:
        return QStringLiteral("nothing new");
    case LogStage::kept:
        break;
    }
    return QStringLiteral("kept");
}

QStringList remarksOn(const LogState& log)
{
    QStringList remarks;
    if (log.preview) {
        QString how =
            capitalised(shown(log.preview->layoutReason)) +
            QStringLiteral(". Text: %1, columns parted by “%2”")
                .arg(shown(log.preview->encoding), delimiterWord(log.preview->layout.delimiter));
        if (log.report && !log.problem)
            how += QStringLiteral(", decimal sign “%1”")
                       .arg(QString(QLatin1Char(log.report->file.decimalSign)));
        remarks << how + QLatin1Char('.');
    }
    if (!log.report || log.problem)
        return remarks;
    if (!log.report->file.ignoredNames.empty())
        remarks
            << QStringLiteral("Passed over: %1.").arg(shown(joined(log.report->file.ignoredNames)));
    for (const std::string& warning : log.report->file.warnings)
        remarks << capitalised(shown(warning)) + QLatin1Char('.');
    return remarks;
}

} // namespace holdband::ui
