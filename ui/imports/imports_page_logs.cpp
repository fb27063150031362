// The page's logs: how they are shown, and the questions about them.
#include "ui/imports/imports_page.h"

#include "core/exchange/file_writer.h"
#include "ui/imports/column_heads.h"
#include "ui/imports/import_text.h"
#include "ui/imports/log_view.h"
#include "ui/imports/new_target_dialog.h"
#include "ui/imports/past_imports.h"
#include "ui/imports/watch_card.h"
#include "ui/imports/with_zone.h"
#include "ui/session/session.h"
#include "ui/theme/empty_page.h"
#include "ui/theme/theme.h"
#include "ui/words/words.h"

#include <QClipboard>
#include <QFileDialog>
#include <QGuiApplication>
#include <QProgressBar>
#include <QPushButton>
#include <QShortcut>
#include <QSignalBlocker>
#include <QStackedWidget>
#include <QTabBar>

namespace holdband::ui {

namespace {

bool isTrouble(const LogState& log)
{
    return log.stage == LogStage::asking;
}

} // namespace

void ImportsPage::refresh()
{
    m_past->refresh();
    m_watches->refresh();
    readTargets();
}

void ImportsPage::readTargets()
{
    using Targets = WithZone<std::vector<intake::Target>>;
    const auto read = [](const store::LogbookFile& file) {
        return readWithZone(file, intake::readTargets);
    };
    m_session->ask<Targets>(this, read, [this](Result<Targets> targets) {
        if (!targets)
            return say(sentence(targets.error()), true);
        const bool same = m_targets.size() == targets->value.size();
        m_targets = std::move(targets->value);
        m_zone = targets->zone;
        if (!same)
            showCurrent();
    });
}

void ImportsPage::showTabs()
{
    const QSignalBlocker quiet(m_tabs);
    while (m_tabs->count() > m_queue->size())
        m_tabs->removeTab(m_tabs->count() - 1);
    while (m_tabs->count() < m_queue->size())
        m_tabs->addTab(QString());
    for (int i = 0; i < m_queue->size(); ++i) {
        const QString words =
            m_queue->at(i).name + QStringLiteral(" · ") + stateWord(m_queue->at(i));
        m_tabs->setTabText(i, QString(words).replace(QLatin1Char('&'), QStringLiteral("&&")));
        m_tabs->setTabToolTip(i, words);
    }
    m_tabs->setVisible(m_queue->size() > 1);
}

void ImportsPage::showCurrent()
{
    const bool any = current() >= 0 && current() < m_queue->size();
    m_stack->setCurrentIndex(any ? 1 : 0);
    m_foot->setVisible(any);
    m_watchKey->setEnabled(any);
    showEmpty();
    if (!any)
        return;
    const LogState& log = m_queue->at(current());
    m_view->showLog(log, m_targets, m_zone);
    showState(log);
    Q_EMIT looked();
}

/// The primary button is the one that chooses files, until there is a log to save.
void ImportsPage::showEmpty()
{
    const bool any = current() >= 0 && current() < m_queue->size();
    const bool none = m_past->lines().empty();
    m_empty->setVisible(none);
    m_choose->setVisible(any || !none);
    setRole(m_choose, any ? "field" : "main");
}

void ImportsPage::showState(const LogState& log)
{
    const bool busy = m_queue->isBusy();
    say(stateSentence(log), isTrouble(log));
    m_save->setVisible(log.stage == LogStage::ready || log.stage == LogStage::asking);
    m_save->setEnabled(log.stage == LogStage::ready);
    m_save->setText(log.stage == LogStage::ready
                        ? Words::tr("&Save %1 readings").arg(countText(log.report->added()))
                        : Words::tr("&Save"));
    const int ready = m_queue->readyCount();
    m_saveAll->setText(Words::tr("Save &all %1 that are ready").arg(ready));
    m_saveAll->setVisible(ready > 1 && !busy);
    const bool over = !busy && (log.stage == LogStage::saved || log.stage == LogStage::nothingNew);
    m_cancel->setText(over ? Words::tr("Close") : Words::tr("Cancel"));
    m_progress->setVisible(busy);
    if (!busy)
        m_progress->setValue(0);
    m_view->setChoosable(!log.isBusy() && log.stage != LogStage::saved);
    m_view->setSheetChoosable(!log.isBusy());
}

void ImportsPage::takeSettled(int index)
{
    if (index != current())
        return;
    const LogState& log = m_queue->at(index);
    if (log.problem)
        m_view->pointAt(log.problem->decision);
    else if (log.stage == LogStage::ready)
        m_save->setFocus();
    else
        m_cancel->setFocus();
}

void ImportsPage::paste()
{
    lookAtText(QGuiApplication::clipboard()->text());
}

void ImportsPage::askNewTarget(bool meter, int column, const QString& name)
{
    const LogState& log = m_queue->at(current());
    QString suggested = name;
    if (column >= 0)
        suggested =
            shown(headerParts(log.preview->columns[static_cast<std::size_t>(column)].header).bare);
    auto* dialog = new NewTargetDialog(
        *m_session, meter ? NewTargetDialog::Kind::meter : NewTargetDialog::Kind::sensor, suggested,
        this);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    connect(dialog, &NewTargetDialog::made, this,
            [this, column, name](const QString& target) { takeNewTarget(column, name, target); });
    dialog->open();
}

/// Assigns the new sensor or meter to the column or name for which it was made.
void ImportsPage::takeNewTarget(int column, const QString& name, const QString& target)
{
    if (current() < 0)
        return;
    readTargets();
    intake::ColumnMap map = m_queue->at(current()).map;
    if (column >= 0)
        map.columns[static_cast<std::size_t>(column)] = {intake::Meaning::reading, core(target)};
    bool found = column >= 0;
    for (intake::NameChoice& choice : map.names) {
        if (!found && choice.name == core(name)) {
            choice.of = core(target);
            found = true;
        }
    }
    if (!found)
        map.names.push_back({core(name), core(target)});
    m_queue->choose(current(), map);
    m_session->announceChange();
}

void ImportsPage::askSaveRejects()
{
    const LogState& log = m_queue->at(current());
    if (!log.report)
        return;
    const QString path = QFileDialog::getSaveFileName(
        this, Words::tr("Save the rejected rows"), Words::tr("%1 rejected.csv").arg(log.name),
        QStringLiteral("CSV (*.csv)"), nullptr, QFileDialog::DontConfirmOverwrite);
    if (path.isEmpty())
        return;
    const Done done = exchange::writeNewFile(core(path), intake::rejectsCsv(*log.report));
    say(done ? Words::tr("Saved %1.").arg(path) : sentence(done.error()), !done);
}

void ImportsPage::askWatch(bool folder)
{
    const QString path =
        folder
            ? QFileDialog::getExistingDirectory(this, Words::tr("Watch a folder"))
            : QFileDialog::getOpenFileName(this, Words::tr("Watch a file"), {},
                                           Words::tr("Logs (*.csv *.txt *.tsv *.log *.xlsx *.jsonl "
                                                     "*.ndjson *.gz *.zip);;All files (*)"));
    if (!path.isEmpty())
        m_watches->watch(path);
}

} // namespace holdband::ui
