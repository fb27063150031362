// The window: lanes on top, the page row, the pages, the status line. Builds its parts and passes
// requests between them; each part does its own work.
#pragma once

#include "core/results/overview/lanes.h"
#include "core/results/rounds/rounds_sheet.h"
#include "core/text/zone.h"
#include "ui/session/session.h"
#include "ui/window/menus.h"
#include "ui/window/page_row.h"

#include <QMainWindow>
#include <memory>
#include <optional>

class QLabel;
class QStackedWidget;

namespace holdband::ui {

class BackupsDialog;
class BatchActions;
class BatchWatch;
class LanesView;
class NoticeBar;
class Pages;
class Reminder;
class ReportActions;
struct Looked;
class UndoActions;
class WelcomePage;
enum class FirstStep;

class MainWindow : public QMainWindow {
    Q_OBJECT
public:
    /// `sampleLogbook`: empty if there is none.
    MainWindow(store::Clock clock, const QString& sampleLogbook, QWidget* parent = nullptr);

    void openLogbook(const QString& path);
    void createLogbook(const QString& path);
    void loadDescription(const QString& path);
    /// The description from which the sample logbook is made on first use.
    void setSampleDescription(const QString& path) { m_sampleDescription = path; }
    void openSample();
    void openRun(const QString& batch);
    void openInBackground(const QString& second);
    void setPage(PageId page);
    void importFile(const QString& path) { importFiles({path}); }
    void importFiles(const QStringList& paths);

    Session& session() { return m_session; }
    LanesView* lanes() const { return m_lanes; }
    PageRow* pageRow() const { return m_pageRow; }
    Pages* pages() const { return m_pages; }
    WelcomePage* welcome() const { return m_welcome; }
    NoticeBar* notice() const { return m_notice; }
    QString status() const;
    Reminder* reminder() const { return m_reminder; }
    BatchWatch* batchWatch() const { return m_batchWatch; }
    UndoActions* undoActions() const { return m_undo; }
    bool showsWelcome() const;
    /// The batch to show when the next logbook is open, if it has it.
    void setFirstBatch(const QString& batch) { m_firstBatch = batch; }

Q_SIGNALS:
    /// In another language or size of text, which its widgets take only when they are made.
    void madeAgainWanted();

protected:
    void dragEnterEvent(QDragEnterEvent* event) override;
    void dropEvent(QDropEvent* event) override;
    void closeEvent(QCloseEvent* event) override;

private:
    void layOut();
    void connectParts();
    void addMenus();
    BatchMenuActions batchMenu();
    void takeOpened();
    void refreshLanes();
    void takeLanes(results::LanesReview lanes, const Zone& zone);
    void showStatus(const results::RoundsSheet& sheet);
    void askToBeMadeAgain();
    void chooseFirst(const results::LanesReview& lanes);
    void updateSubtitle();
    void askOpen();
    void askNew();
    void askLoad();
    void askImport();
    void takeStep(FirstStep step);
    void refreshSteps();
    void addNote(const QString& batch);
    Looked lookedAt() const;
    void showTables();
    /// Starts with the sensor of the shown batch's beer.
    void showReadings();
    void openReadings(const QString& sensor, const std::optional<Span>& marked);
    void setReminding(bool on);
    void setWatchingBatches(bool on);
    void refreshBackups();
    void checkSeal();
    void loadInto(const QString& logbook, const QString& description);
    void showBackups();
    void backUpFor(BackupsDialog& dialog);
    BackupsDialog* makeBackupsDialog(const QString& logbook, const QString& why);
    void offerBackups(const QString& logbook, const QString& why);
    void takeAnswer(const QString& path, const Done& opened);

    Session m_session;
    UndoActions* m_undo;
    BatchActions* m_batchActions;
    Reminder* m_reminder;
    BatchWatch* m_batchWatch;
    ReportActions* m_reports;
    std::shared_ptr<results::LanesCache> m_lanesCache; ///< used only by the reading worker
    QStringList m_running;                             ///< setups with a running batch
    bool m_freshlyOpened = false;                      ///< until the lanes are known
    QString m_sampleLogbook;
    QString m_firstBatch;
    QString m_sampleDescription;
    bool m_leaveAsked = false; ///< about an unsaved round
    std::optional<LocalTime> m_lastBackup;
    QString m_wantedPath; ///< requested, but missing
    LanesView* m_lanes;
    PageRow* m_pageRow;
    Pages* m_pages;
    WelcomePage* m_welcome;
    QWidget* m_central;
    NoticeBar* m_notice;
    QStackedWidget* m_outer;
    QLabel* m_status;
};

} // namespace holdband::ui
