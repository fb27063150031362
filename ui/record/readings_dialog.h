// The readings of one sensor or meter, one stretch at a time: view them, leave some out with a
// reason, restore them, correct a single one. Logged values are never changed by it.
#pragma once

#include "ui/record/reading_edit.h"

#include <QDialog>
#include <optional>

class QComboBox;
class QLabel;
class QLineEdit;
class QPushButton;
class QTableView;

namespace holdband::ui {

class Session;
class TableModel;

class ReadingsDialog : public QDialog {
    Q_OBJECT
public:
    /// Shows `first` first; if it has no name, the first sensor. With a `marked` span its readings
    /// are shown and chosen, to be left out.
    explicit ReadingsDialog(Session& session, QWidget* parent = nullptr, ReadingSubject first = {},
                            std::optional<Span> marked = {});

    TableModel* readings() const { return m_readings; }
    QTableView* table() const { return m_table; }
    /// Sensors, then meters.
    QComboBox* subject() const { return m_subject; }
    QLineEdit* from() const { return m_from; }
    QLineEdit* to() const { return m_to; }
    QLineEdit* value() const { return m_value; }
    QLineEdit* why() const { return m_why; }
    QPushButton* leaveOutButton() const { return m_leaveOut; }
    QPushButton* restoreButton() const { return m_restore; }
    QPushButton* correctButton() const { return m_correct; }
    QString message() const;

public Q_SLOTS:
    void refresh();

private:
    void layOut();
    void connectParts();
    void take(ReadingsView view);
    void fillSubjects();
    ReadingSubject chosenSubject() const;
    /// The typed stretch; absent, with a message, if it can't be read.
    std::optional<Span> typedSpan();
    std::vector<std::size_t> chosenRows() const; ///< in order
    void chooseMarked();
    bool isMarkedChosen(std::size_t rows) const;
    void askToLeaveOut();
    void askToCorrect();
    void save(Result<ReadingEdit> edit);
    void say(const QString& words);

    Session* m_session;
    ReadingSubject m_first;
    std::optional<Span> m_marked;
    bool m_markedShown = false;
    ReadingsView m_view;
    TableModel* m_readings;
    QComboBox* m_subject;
    QLineEdit* m_from;
    QLineEdit* m_to;
    QTableView* m_table;
    QLineEdit* m_value;
    QLineEdit* m_why;
    QPushButton* m_leaveOut;
    QPushButton* m_restore;
    QPushButton* m_correct;
    QLabel* m_message;
};

} // namespace holdband::ui
