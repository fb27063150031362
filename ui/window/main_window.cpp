#include "ui/window/main_window.h"
#include "ui/comparison/comparison_choice.h"
#include "ui/window/preference_menu.h"

#include "core/preferences/preferences.h"
#include "core/results/overview/lanes_cache.h"
#include "ui/charts/chart_tables_dialog.h"
#include "ui/charts/run_charts.h"
#include "ui/charts/temperature_panel.h"
#include "ui/comparison/side_by_side_page.h"
#include "ui/equipment/equipment_actions.h"
#include "ui/equipment/equipment_page.h"
#include "ui/equipment/units_dialog.h"
#include "ui/forecast/next_batch_page.h"
#include "ui/imports/imports_page.h"
#include "ui/lanes/lanes_area.h"
#include "ui/lanes/lanes_view.h"
#include "ui/plans/batch_actions.h"
#include "ui/record/backup_text.h"
#include "ui/record/history_dialog.h"
#include "ui/record/journal_dialog.h"
#include "ui/record/note_dialog.h"
#include "ui/record/readings_dialog.h"
#include "ui/record/undo_actions.h"
#include "ui/report/report_actions.h"
#include "ui/rounds/reminder.h"
#include "ui/rounds/status_text.h"
#include "ui/run/batch_watch.h"
#include "ui/run/run_page.h"
#include "ui/theme/theme.h"
#include "ui/window/help_dialog.h"
#include "ui/window/judging_notice.h"
#include "ui/window/menus.h"
#include "ui/window/notice_bar.h"
#include "ui/window/pages.h"
#include "ui/window/welcome_page.h"
#include "ui/window/window_keys.h"
#include "ui/words/words.h"

#include <QCloseEvent>
#include <QFileInfo>
#include <QLabel>
#include <QScreen>
#include <QStackedWidget>
#include <QVBoxLayout>
#include <algorithm>

namespace holdband::ui {

namespace {

const QString remindKey = QStringLiteral("remind-of-rounds");
const QString reminded = QStringLiteral("true");
const QString watchBatchesKey = QStringLiteral("watch-batches");
const QString unwatched = QStringLiteral("false");

/// A separate window for the full logbook; deleted when closed.
template <typename Dialog>
void openDialog(QWidget& window, Session& session)
{
    if (!session.isOpen())
        return;
    auto* dialog = new Dialog(session, &window);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->show();
}

} // namespace

MainWindow::MainWindow(store::Clock clock, const QString& sampleLogbook, QWidget* parent)
    : QMainWindow(parent), m_session(std::move(clock)), m_undo(new UndoActions(m_session, this)),
      m_batchActions(new BatchActions(m_session, this)),
      m_reminder(new Reminder(m_session, notifyDesktop, this)),
      m_batchWatch(new BatchWatch(m_session, notifyDesktop, this)),
      m_reports(new ReportActions(m_session, this)), m_sampleLogbook(sampleLogbook),
      m_lanes(new LanesView), m_pageRow(new PageRow), m_pages(new Pages(m_session)),
      m_welcome(new WelcomePage(!sampleLogbook.isEmpty())), m_central(new QWidget),
      m_notice(new NoticeBar(m_central)), m_outer(new QStackedWidget),
      m_status(makeLabel({}, "muted", nullptr))
{
    setAcceptDrops(true);
    setWindowTitle(QStringLiteral("Holdband"));
    layOut();
    connectParts();
    addMenus();
    new WindowKeys(this);
    constexpr QSize frame(16, 40); // the desktop's own frame and title, not known before it shows
    resize(QSize(1280, 860).boundedTo(screen()->availableSize() - frame));
    restoreGeometry(preferences::windowGeometry()); // does nothing if none was saved
}

void MainWindow::layOut()
{
    auto* inside = new QWidget;
    auto* pagesLayout = new QVBoxLayout(inside);
    pagesLayout->setContentsMargins(0, 0, 0, 0);
    pagesLayout->setSpacing(spacing::gap);
    pagesLayout->addWidget(new LanesArea(m_lanes));
    pagesLayout->addWidget(m_pageRow);
    pagesLayout->addWidget(m_pages, 1);
    pagesLayout->addWidget(m_status);
    m_outer->addWidget(m_welcome);
    m_outer->addWidget(inside);
    auto* layout = new QVBoxLayout(m_central);
    layout->setContentsMargins(spacing::page, 6, spacing::page, 6);
    layout->setSpacing(spacing::gap);
    layout->addWidget(m_outer, 1);
    setCentralWidget(m_central);
}

void MainWindow::connectParts()
{
    connect(&m_session, &Session::opened, this, &MainWindow::takeOpened);
    connect(&m_session, &Session::changed, this, [this] {
        refreshLanes();
        m_pages->refresh();
    });
    connect(&m_session, &Session::backedUp, this, &MainWindow::refreshBackups);
    connect(&m_session, &Session::backupFailed, this, [this](const Problem& problem) {
        m_notice->say(Words::tr("No copy today: %1 The change is saved all the same.")
                          .arg(sentence(problem)));
    });
    connect(m_reminder, &Reminder::sheetRead, this, &MainWindow::showStatus);
    connect(m_notice, &NoticeBar::helpWanted, this,
            [this](const QString& page) { openHelp(*this, page); });
    connect(m_batchActions, &BatchActions::saved, m_notice, &NoticeBar::sayInPassing);
    connect(m_batchActions, &BatchActions::pitched, this, &MainWindow::openRun);
    connect(m_batchActions, &BatchActions::failed, m_notice, &NoticeBar::say);
    connect(m_undo, &UndoActions::said, m_notice, &NoticeBar::sayInPassing);
    connect(m_reports, &ReportActions::said, m_notice, &NoticeBar::sayInPassing);
    connect(m_welcome->steps(), &FirstSteps::wanted, this, &MainWindow::takeStep);
    connect(m_pages, &Pages::tablePasted, this, [this](const QString& text) {
        setPage(PageId::imports);
        m_pages->imports()->lookAtText(text);
    });
    connect(m_pages->run(), &RunPage::renamed, this,
            [this](const QString& before, const QString& now) {
                QStringList chosen = m_lanes->chosen();
                std::replace(chosen.begin(), chosen.end(), before, now);
                m_lanes->setChosen(chosen);
            });
    connect(m_pages->run(), &RunPage::leaveOutWanted, this, &MainWindow::openReadings);
    connect(m_lanes, &LanesView::batchOpened, this, &MainWindow::openRun);
    connect(m_lanes, &LanesView::secondChosen, this, &MainWindow::openInBackground);
    connect(m_lanes, &LanesView::noteWanted, this, &MainWindow::addNote);
    connect(m_lanes, &LanesView::changeWanted, m_batchActions, &BatchActions::editBatch);
    connect(m_pageRow, &PageRow::pageChosen, this, &MainWindow::setPage);
    connect(m_pages, &Pages::subtitleChanged, this, &MainWindow::updateSubtitle);
    connect(m_pages, &Pages::failed, m_notice, &NoticeBar::say);
    connect(m_pages, &Pages::batchWanted, m_batchActions, &BatchActions::newBatch);
    connect(m_pages, &Pages::logsWanted, this, &MainWindow::askImport);
    connect(m_pages, &Pages::pitchWanted, m_batchActions, &BatchActions::pitchPlanned);
    connect(m_welcome, &WelcomePage::openWanted, this, &MainWindow::askOpen);
    connect(m_welcome, &WelcomePage::newWanted, this, &MainWindow::askNew);
    connect(m_welcome, &WelcomePage::loadWanted, this, &MainWindow::askLoad);
    connect(m_welcome, &WelcomePage::sampleWanted, this, &MainWindow::openSample);
}

void MainWindow::addMenus()
{
    MenuActions actions;
    actions.newLogbook = [this] { askNew(); };
    actions.openLogbook = [this] { askOpen(); };
    actions.importLog = [this] { askImport(); };
    actions.loadDescription = [this] { askLoad(); };
    actions.recentLogbooks = [] { return preferences::recentLogbooks(); };
    actions.openRecent = [this](const QString& path) { openLogbook(path); };
    actions.showBackups = [this] { showBackups(); };
    actions.chooseUnits = [this] { openUnits(m_session, this); };
    actions.makeReport = [this] { m_reports->openDialog(lookedAt()); };
    actions.copyPicture = [this] { m_reports->copyPicture(lookedAt()); };
    actions.batch = batchMenu();
    actions.undo = m_undo;
    actions.remind = [this](bool on) { setReminding(on); };
    actions.reminding = storedChoice(remindKey) == reminded;
    m_reminder->setOn(actions.reminding);
    actions.watchBatches = [this](bool on) { setWatchingBatches(on); };
    actions.watchingBatches = storedChoice(watchBatchesKey) != unwatched;
    m_batchWatch->setOn(actions.watchingBatches);
    actions.showHistory = [this] { openDialog<HistoryDialog>(*this, m_session); };
    actions.showReadings = [this] { showReadings(); };
    actions.addNote = [this] { addNote(m_pages->run()->batch()); };
    actions.showJournal = [this] { openJournal(this, m_session, m_pages->run()->batch()); };
    actions.makeWindowAgain = [this] { askToBeMadeAgain(); };
    actions.showPage = [this](PageId page) { setPage(page); };
    actions.showHelp = [this](const char* page) {
        openHelp(*this, page ? QString::fromLatin1(page) : helpFor(m_pages->page()));
    };
    actions.zoom = [this](Zoom zoom) { m_pages->zoom(zoom); };
    actions.showTables = [this] { showTables(); };
    actions.showCooling = [this](bool shown) {
        m_pages->run()->charts()->temperature()->setCoolingShown(shown);
    };
    fillMenus(*this, actions);
}

BatchMenuActions MainWindow::batchMenu()
{
    // Changing a batch needs a writable logbook.
    const auto may = [this] { return m_session.isOpen() && !m_session.readOnly(); };
    // Plain lambdas: GCC 12 warns falsely of a captured pointer to member with sanitizers.
    const auto onShown = [this, may](auto act) {
        return [this, may, act] {
            const QString batch = m_pages->run()->batch();
            if (may() && !batch.isEmpty())
                act(*m_batchActions, batch);
        };
    };
    BatchMenuActions actions;
    actions.newBatch = [this, may] {
        if (may())
            m_batchActions->newBatch();
    };
    actions.pitchNow = [this, may] {
        if (may())
            m_batchActions->pitchNow(m_pages->run()->batch());
    };
    actions.turnDownNow =
        onShown([](BatchActions& to, const QString& batch) { to.endStageNow(batch); });
    actions.endNow = onShown([](BatchActions& to, const QString& batch) { to.endBatchNow(batch); });
    actions.reopen = onShown([](BatchActions& to, const QString& batch) { to.reopen(batch); });
    actions.edit = onShown([](BatchActions& to, const QString& batch) { to.editBatch(batch); });
    actions.split = onShown([](BatchActions& to, const QString& batch) { to.splitBatch(batch); });
    return actions;
}

void MainWindow::takeOpened()
{
    setWindowTitle(QStringLiteral("%1 – Holdband").arg(QFileInfo(m_session.path()).fileName()));
    m_lanes->clear();
    m_lanes->setMayChange(!m_session.readOnly());
    m_lanesCache = std::make_shared<results::LanesCache>();
    m_pages->clear();
    m_freshlyOpened = true;
    if (m_session.readOnly())
        m_notice->say(Words::tr("Open for reading only: %1. Nothing typed here can be saved.")
                          .arg(m_session.readOnlyBecause()));
    preferences::noteOpened(m_session.path());
    m_lastBackup.reset();
    refreshLanes();
    m_pages->refresh();
    refreshBackups();
    checkSeal();
    tellChangedVerdicts(m_session, *m_notice);
}

void MainWindow::askToBeMadeAgain()
{
    if (m_pages->hasTypedRound())
        return m_notice->say(Words::tr("The window changes at the next start: the round that you "
                                       "typed is not saved yet."));
    Q_EMIT madeAgainWanted();
}

void MainWindow::showStatus(const results::RoundsSheet& sheet)
{
    const QString words = statusText(sheet, m_running);
    const bool madeAgain = !m_lastBackup && m_session.path() == m_sampleLogbook;
    m_status->setText(
        madeAgain
            ? words // the sample can always be made again
            : withLastBackup(words, lastBackupText(m_lastBackup, sheet.zone.localDate(sheet.now))));
    m_lanes->setNow(m_session.now());
}

void MainWindow::openRun(const QString& batch)
{
    m_pages->run()->showBatch(batch);
    m_lanes->setChosen({batch});
    setPage(PageId::run);
}

void MainWindow::openInBackground(const QString& second)
{
    const QString first = m_pages->run()->batch();
    if (first.isEmpty() || first == second)
        return openRun(second);
    m_pages->sideBySide()->compare(first, second);
    m_lanes->setChosen({first, second});
    setPage(PageId::sideBySide);
}

void MainWindow::setPage(PageId page)
{
    if (m_session.isOpen())
        m_outer->setCurrentIndex(1);
    m_pageRow->setPage(page);
    m_pages->setPage(page);
    updateSubtitle();
}

void MainWindow::importFiles(const QStringList& paths)
{
    if (!m_session.isOpen())
        return;
    setPage(PageId::imports);
    m_pages->imports()->look(paths);
}

void MainWindow::updateSubtitle()
{
    m_pageRow->setSubtitle(m_pages->subtitle());
}

void MainWindow::refreshSteps()
{
    m_session.ask<StepsTaken>(this, readStepsTaken, [this](Result<StepsTaken> taken) {
        if (taken)
            m_welcome->steps()->setTaken(*taken);
    });
}

void MainWindow::takeStep(FirstStep step)
{
    switch (step) {
    case FirstStep::setup:
        return m_pages->equipment()->actions()->addSetup();
    case FirstStep::meter:
        return m_pages->equipment()->actions()->addMeter();
    case FirstStep::sensor:
        return m_pages->equipment()->actions()->addSensor();
    case FirstStep::batch:
        return m_batchActions->newBatch();
    case FirstStep::reading:
        return setPage(PageId::rounds);
    }
}

void MainWindow::setReminding(bool on)
{
    storeChoice(remindKey, on ? reminded : QStringLiteral("false"));
    m_reminder->setOn(on);
}

void MainWindow::setWatchingBatches(bool on)
{
    storeChoice(watchBatchesKey, on ? QStringLiteral("true") : unwatched);
    m_batchWatch->setOn(on);
}

/// The run, or the two runs compared, or the forecast.
Looked MainWindow::lookedAt() const
{
    if (m_pages->page() == PageId::sideBySide) {
        const results::SideBySideRequest request = m_pages->sideBySide()->choice()->request();
        return {m_pages->sideBySide()->compared(), {request.fromStage, request.only}};
    }
    if (m_pages->page() == PageId::nextBatch && m_pages->nextBatch()->asked())
        return {{}, {}, m_pages->nextBatch()->asked()};
    const QString batch = m_pages->run()->batch();
    return {batch.isEmpty() ? QStringList() : QStringList{batch}};
}

void MainWindow::addNote(const QString& batch)
{
    if (!m_session.isOpen() || m_session.readOnly())
        return;
    // For the shown run: the time under the pointer.
    const bool shown = m_pages->page() == PageId::run && batch == m_pages->run()->batch();
    const auto at = shown ? m_pages->run()->charts()->time().pointer() : std::nullopt;
    auto* dialog = new NoteDialog(m_session, batch, this, at);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->open();
}

void MainWindow::showTables()
{
    RunCharts* charts = m_pages->run()->charts();
    if (!charts->chart())
        return;
    auto* dialog = new ChartTablesDialog(*charts->chart(), charts->time().shown(), this);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->open();
}

void MainWindow::showReadings()
{
    openReadings(m_pages->run()->beerSensor(), std::nullopt);
}

void MainWindow::openReadings(const QString& sensor, const std::optional<Span>& marked)
{
    if (!m_session.isOpen())
        return;
    auto* dialog = new ReadingsDialog(m_session, this, ReadingSubject{false, core(sensor)}, marked);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->show();
}

QString MainWindow::status() const
{
    return m_status->text();
}

bool MainWindow::showsWelcome() const
{
    return m_outer->currentIndex() == 0;
}

/// Asks once, because an unsaved round is lost when the window closes.
void MainWindow::closeEvent(QCloseEvent* event)
{
    preferences::storeWindowGeometry(saveGeometry());
    if (!m_pages->hasTypedRound() || std::exchange(m_leaveAsked, true)) {
        m_pages->imports()->cancel(); // otherwise the program would wait for it before it ends
        return event->accept();
    }
    event->ignore();
    setPage(PageId::rounds);
    m_notice->say(Words::tr("The round that you typed is not saved. Save it, or close the window "
                            "again to discard it."));
}

} // namespace holdband::ui
