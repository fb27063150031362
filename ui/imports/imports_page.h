// The page to import logs: previewed first, with counts and reasons, and stored when the user
// confirms. Below: past imports and the watched files.
#pragma once

#include "core/text/zone.h"
#include "ui/imports/log_queue.h"

#include <QWidget>

class QLabel;
class QProgressBar;
class QPushButton;
class QShortcut;
class QStackedWidget;
class QTabBar;

namespace holdband::ui {

class EmptyPage;
class LogView;
class PastImports;
class Session;
class WatchCard;

class ImportsPage : public QWidget {
    Q_OBJECT
public:
    explicit ImportsPage(Session& session, QWidget* parent = nullptr);

    /// Previews the files and shows the result; stores nothing.
    void look(const QStringList& paths);
    void look(const QString& path) { look(QStringList{path}); }
    /// Rows copied from a spreadsheet.
    void paste();
    void lookAtText(const QString& text);
    /// Stores the log that is shown.
    void save();
    /// Stops the running work; if there is none, closes the logs. Stores nothing.
    void cancel();
    /// Fetches the imports, watches, sensors and meters again.
    void refresh();
    void clear();
    QString message() const;
    QString subtitle() const;
    bool canImport() const;
    /// Whether a log is shown.
    bool isAtWork() const { return m_queue->size() > 0; }

    QPushButton* importButton() const { return m_save; }
    QPushButton* importAllButton() const { return m_saveAll; }
    QTabBar* tabs() const { return m_tabs; }
    LogView* view() const { return m_view; }
    LogQueue* queue() const { return m_queue; }
    PastImports* past() const { return m_past; }
    /// Shown while nothing was imported.
    EmptyPage* empty() const { return m_empty; }
    WatchCard* watches() const { return m_watches; }

Q_SIGNALS:
    void chooseWanted();
    void looked();
    void saved();

private:
    QWidget* makeTop();
    QWidget* makeFoot();
    QWidget* makeLists();
    void connectParts();
    void showCurrent();
    void showTabs();
    void showEmpty();
    void showState(const LogState& log);
    void takeSettled(int index);
    void askNewTarget(bool meter, int column, const QString& name);
    void takeNewTarget(int column, const QString& name, const QString& target);
    void askSaveRejects();
    void askWatch(bool folder);
    void readTargets();
    int current() const;
    void say(const QString& words, bool trouble);

    Session* m_session;
    LogQueue* m_queue;
    std::vector<intake::Target> m_targets;
    Zone m_zone;
    QPushButton* m_choose;
    QPushButton* m_paste;
    QLabel* m_message;
    QTabBar* m_tabs;
    QStackedWidget* m_stack;
    LogView* m_view;
    PastImports* m_past;
    WatchCard* m_watches;
    EmptyPage* m_empty;
    QPushButton* m_save;
    QPushButton* m_saveAll;
    QPushButton* m_cancel;
    QProgressBar* m_progress;
    QWidget* m_foot = nullptr;
    QShortcut* m_watchKey = nullptr; ///< while a log is shown
};

} // namespace holdband::ui
