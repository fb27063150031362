// One line of the round, for a meter, a thermometer or a gravity: its last reading, the expected
// range, the field, the note, and below the field any error or question. The typed text remains
// until it is saved.
#pragma once

#include "core/model/readings.h"
#include "core/results/rounds/rounds_sheet.h"
#include "ui/rounds/reading_question.h"

#include <QWidget>
#include <optional>

class QGridLayout;
class QHBoxLayout;
class QLabel;
class QLineEdit;

namespace holdband::intake {
struct DoubtfulReading;
struct ReadingCheck;
struct TypedHandReading;
struct TypedReading;
} // namespace holdband::intake

namespace holdband::ui {

class ElidedLabel;
class WeekSparkline;

class RoundLine : public QObject {
    Q_OBJECT
public:
    enum class State { empty, unchecked, waiting, refused, question, unusual, fine };

    /// The texts of its fields.
    struct Texts {
        QString value;
        QString note;
        QString sample; ///< of a gravity only

        bool operator==(const Texts&) const = default;
    };

    /// Puts its widgets into two rows of the grid, starting at `gridRow`.
    RoundLine(const results::RoundRow& row, QGridLayout* grid, int gridRow, QWidget* parent);

    /// The unit in which a gravity's sample temperature is typed.
    void setTemperatureUnit(TemperatureUnit unit);
    void setSheetRow(const results::RoundRow& row, Instant now, const Zone& zone);
    const QString& name() const { return m_name; }
    results::RoundKind kind() const { return m_row.kind; }
    bool isMeter() const { return m_row.kind == results::RoundKind::meter; }
    State state() const { return m_state; }
    QLineEdit* field() const { return m_field; }
    /// For a gravity: the sample's temperature, optional; else null.
    QLineEdit* sample() const { return m_sample; }
    QLineEdit* note() const { return m_note; }
    ReadingQuestion* question() const { return m_question; }
    /// Of a meter, else null; hidden with fewer than three readings in the last week.
    WeekSparkline* week() const { return m_week; }
    QString message() const;
    /// The field with the refused text.
    QLineEdit* troubled() const { return m_sampleRefused ? m_sample : m_field; }

    /// Reads the field for the time `at`. Emits checkWanted() for a reading that can be checked.
    void commit(Instant at, bool isNow);
    void takeCheck(const intake::ReadingCheck& check);
    void refuse(const QString& sentence);
    /// The check found the hand reading possible.
    void takePossible();
    /// The typed reading; only while it is checked, and in state fine.
    intake::TypedReading typed() const;
    intake::TypedHandReading typedHand() const;
    Texts texts() const;
    void clearTyped();
    /// Takes over the texts of a line that this one replaces.
    void putTyped(const Texts& texts);
    void setEnabled(bool enabled);
    /// Whether one of its fields has the focus.
    bool hasFocus() const;

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

Q_SIGNALS:
    void checkWanted();
    /// Enter was pressed in the field or the note.
    void entered();
    /// An arrow key was pressed: go to the row before (-1) or after (+1).
    void stepped(int by);
    /// The user typed something.
    void edited();
    void settled();
    /// More than one line was pasted into the field.
    void tablePasted(const QString& text);
    /// The reading is of a new meter that replaced this one.
    void replaced();

private:
    void addWidgets(QGridLayout* grid, int gridRow, QWidget* parent);
    void setState(State state, const QString& message = {});
    void takeAnswer(Answer answer);
    void takeDoubt(const intake::DoubtfulReading& doubt);

    bool commitMeter(Instant at, bool isNow);
    bool commitHand(Instant at);
    bool refuseSample(const Problem& problem);
    void addSample(QHBoxLayout* layout);
    void showCorrected();
    void explainExpected(bool focused);
    void explain(const QString& words);
    void showUsed();

    QString m_name;
    results::RoundRow m_row;
    Instant m_now;
    Zone m_zone;
    State m_state = State::empty;
    MeterReading m_reading;
    HandReading m_hand;
    std::optional<MeterEvent> m_event;
    bool m_unusualSeen = false;
    bool m_sampleRefused = false;
    TemperatureUnit m_temperatureUnit = TemperatureUnit::celsius;
    QLabel* m_last;
    QLabel* m_lastTime;
    QLabel* m_expected;
    WeekSparkline* m_week; ///< null except for a meter
    QLabel* m_mark;
    QLabel* m_message;
    QLineEdit* m_field;
    QLineEdit* m_sample; ///< null except for a gravity
    QLineEdit* m_note;
    ReadingQuestion* m_question;
};

} // namespace holdband::ui
