// One meter's row on the Rounds page: what it read last, what is expected, the field, the note, and
// beneath the field whatever has to be said or asked. Keeps what was typed until it is saved.
#pragma once

#include "core/logbook/readings.h"
#include "core/review/rounds_sheet.h"
#include "ui/rounds/reading_question.h"

#include <QWidget>
#include <optional>

class QGridLayout;
class QLabel;
class QLineEdit;

namespace holdband::intake {
struct DoubtfulReading;
struct ReadingCheck;
struct TypedReading;
} // namespace holdband::intake

namespace holdband::ui {

class ElidedLabel;

class MeterRow : public QObject {
    Q_OBJECT
public:
    enum class State { empty, unchecked, waiting, refused, question, unusual, fine };

    /// Puts its widgets into two rows of the grid, from `gridRow` on.
    MeterRow(const QString& meter, int setup, QGridLayout* grid, int gridRow, QWidget* parent);

    void setSheetRow(const review::RoundRow& row, Instant now, const Zone& zone);
    const QString& meter() const { return m_meter; }
    State state() const { return m_state; }
    QLineEdit* field() const { return m_field; }
    QLineEdit* note() const { return m_note; }
    ReadingQuestion* question() const { return m_question; }
    QString message() const;

    /// Reads the field as of `at`. A reading that can be checked is asked for by checkWanted().
    void commit(Instant at);
    void takeCheck(const intake::ReadingCheck& check);
    void refuse(const QString& sentence);
    /// What was typed; only in state fine.
    intake::TypedReading typed() const;
    void clearTyped();
    void setEnabled(bool enabled);

Q_SIGNALS:
    void checkWanted();
    /// Enter in the field or the note.
    void entered();
    void settled();

private:
    void addWidgets(QGridLayout* grid, int gridRow, QWidget* parent, int setup);
    void setState(State state, const QString& message = {});
    void takeAnswer(Answer answer);
    void takeDoubt(const intake::DoubtfulReading& doubt);

    QString m_meter;
    review::RoundRow m_row;
    State m_state = State::empty;
    MeterReading m_reading;
    std::optional<MeterEvent> m_event;
    bool m_unusualSeen = false;
    QLabel* m_last;
    QLabel* m_lastTime;
    QLabel* m_expected;
    QLabel* m_mark;
    QLabel* m_message;
    QLineEdit* m_field;
    QLineEdit* m_note;
    ReadingQuestion* m_question;
};

} // namespace holdband::ui
