// The readings of one sensor, a stretch at a time: look at them, leave a stretch out with a reason,
// bring it back, correct a single one. Nothing that was logged is changed by it.
#pragma once

#include "core/store/exclusions.h"
#include "core/store/reading_list.h"
#include "core/text/zone.h"

#include <QDialog>

class QComboBox;
class QLabel;
class QLineEdit;
class QPushButton;
class QTableView;

namespace holdband::ui {

class Session;
class TableModel;

/// What the dialog shows, read at once.
struct ReadingsView {
    std::vector<std::string> sensors;
    std::string sensor;
    Zone zone;
    Span span;
    store::ReadingList list;
    std::vector<store::Exclusion> exclusions; ///< of the sensor, that touch the span
};

class ReadingsDialog : public QDialog {
    Q_OBJECT
public:
    explicit ReadingsDialog(Session& session, QWidget* parent = nullptr);

    TableModel* readings() const { return m_readings; }
    QTableView* table() const { return m_table; }
    QComboBox* sensor() const { return m_sensor; }
    QLineEdit* from() const { return m_from; }
    QLineEdit* to() const { return m_to; }
    QLineEdit* value() const { return m_value; }
    QLineEdit* why() const { return m_why; }
    QPushButton* leaveOutButton() const { return m_leaveOut; }
    QPushButton* bringBackButton() const { return m_bringBack; }
    QPushButton* correctButton() const { return m_correct; }
    QString message() const;

public Q_SLOTS:
    void refresh();

private:
    void layOut();
    void connectParts();
    void take(ReadingsView view);
    void fillTable();
    /// The stretch that is typed; absent with a word about it where it can't be read.
    std::optional<Span> typedSpan();
    /// From the first to the last chosen reading.
    std::optional<Span> chosenSpan() const;
    void leaveOut();
    void bringBack();
    void correct();
    void save(const std::string& what, std::function<Done(const store::Change&)> work);
    void say(const QString& words);

    Session* m_session;
    ReadingsView m_view;
    TableModel* m_readings;
    QComboBox* m_sensor;
    QLineEdit* m_from;
    QLineEdit* m_to;
    QTableView* m_table;
    QLineEdit* m_value;
    QLineEdit* m_why;
    QPushButton* m_leaveOut;
    QPushButton* m_bringBack;
    QPushButton* m_correct;
    QLabel* m_message;
};

} // namespace holdband::ui
