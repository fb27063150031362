// The sound copies of a logbook: the user can restore one beside it, and choose the folder for
// copies. Also offered if a logbook is damaged or gone.
#pragma once

#include "core/store/safety/backups.h"

#include <QDialog>
#include <QFutureWatcher>
#include <memory>

class QLabel;
class QPushButton;
class QTableView;

namespace holdband::ui {

class TableModel;

class BackupsDialog : public QDialog {
    Q_OBJECT
public:
    /// `why`: the sentence above the copies; empty if the user only wants to see them.
    BackupsDialog(const QString& logbook, const QString& why, QWidget* parent = nullptr);
    ~BackupsDialog() override;

    /// Reads the copies on another thread; looked() follows.
    void look();
    bool logbookIsBroken() const { return m_broken; }
    const std::vector<store::BackupCopy>& copies() const { return m_copies; }

    QTableView* table() const { return m_table; }
    QPushButton* restoreButton() const { return m_restore; }
    QPushButton* copyButton() const { return m_copy; }
    QString placeSentence() const;
    void copyMade(const Done& made);
    /// The folder for the copies of all logbooks; empty: beside each.
    void setPlace(const QString& folder);

Q_SIGNALS:
    void looked();
    /// A copy of the logbook as it is now; copyMade() takes the answer.
    void copyWanted();
    /// The copy was restored beside the logbook, at `path`.
    void restored(const QString& path);

private:
    struct Found {
        bool broken = false;
        std::vector<store::BackupCopy> copies;
    };
    void layOut(const QString& why);
    void take(const Found& found);
    void restore();
    void choosePlace();
    void showPlace();
    void say(const QString& sentence);

    QString m_logbook;
    bool m_broken = false;
    std::vector<store::BackupCopy> m_copies;
    QFutureWatcher<std::shared_ptr<Found>> m_looking;
    QFutureWatcher<std::shared_ptr<Result<std::string>>> m_restoring;
    TableModel* m_model;
    QTableView* m_table;
    QLabel* m_said;
    QLabel* m_place;
    QPushButton* m_restore;
    QPushButton* m_copy;
    QPushButton* m_beside;
};

} // namespace holdband::ui
