// A log on its way into the logbook: looked at first, with counts and reasons; kept on a word.
#pragma once

#include "core/problem.h"
#include "ui/imports/log_head.h"

#include <QStringList>
#include <QWidget>
#include <atomic>
#include <memory>
#include <optional>

class QLabel;
class QProgressBar;
class QPushButton;

namespace holdband::intake {
struct ImportOptions;
struct ImportReport;
} // namespace holdband::intake

namespace holdband::ui {

class Card;
class ImportChoices;
class NotesCard;
class Session;
class TableCard;

class ImportsPage : public QWidget {
    Q_OBJECT
public:
    explicit ImportsPage(Session& session, QWidget* parent = nullptr);

    /// Looks at the file and shows what would come of it; keeps nothing.
    void look(const QString& path);
    /// Keeps what was looked at.
    void keep();
    void cancel();
    /// Lists the imports that were kept.
    void refresh();
    void clear();
    QString message() const;
    QString subtitle() const;
    bool canKeep() const;
    QPushButton* keepButton() const { return m_keep; }
    ImportChoices* choices() const { return m_choices; }
    TableCard* counts() const { return m_counts; }
    TableCard* rejected() const { return m_rejected; }

Q_SIGNALS:
    void chooseWanted();
    void looked();
    void kept();

private:
    enum class Stage { idle, looking, ready, keeping, done };

    QWidget* makeTop();
    QWidget* makeBody();
    void begin(const QString& path);
    void lookAgain();
    intake::ImportOptions options(bool dryRun) const;
    void run(bool dryRun);
    void takeReport(Result<intake::ImportReport> report, bool dryRun);
    void showReport(const intake::ImportReport& report);
    void setStage(Stage stage);
    void say(const QString& words, bool trouble);

    Session* m_session;
    QString m_path;
    Stage m_stage = Stage::idle;
    std::shared_ptr<std::atomic<bool>> m_cancelled;
    QLabel* m_hint;
    QLabel* m_message;
    QPushButton* m_choose;
    QPushButton* m_keep;
    QPushButton* m_cancel;
    QProgressBar* m_progress;
    ImportChoices* m_choices;
    TableCard* m_counts;
    TableCard* m_rejected;
    TableCard* m_past;
    NotesCard* m_reasons;
};

} // namespace holdband::ui
