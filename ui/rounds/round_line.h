// One line of the round, of a meter, a thermometer or a gravity: what it read last, what is
// expected, the field, the note, and beneath the field whatever has to be said or asked. Keeps what
// was typed until it is saved.
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

class RoundLine : public QObject {
    Q_OBJECT
public:
    enum class State { empty, unchecked, waiting, refused, question, unusual, fine };

    /// The texts of its fields.
    struct Texts {
        QString value;
        QString note;
        QString sample; ///< of a gravity

        bool operator==(const Texts&) const = default;
    };

    /// Puts its widgets into two rows of the grid, from `gridRow` on.
    RoundLine(const results::RoundRow& row, int setup, QGridLayout* grid, int gridRow,
              QWidget* parent);

    /// In which a gravity's sample temperature is typed.
    void setTemperatureUnit(TemperatureUnit unit);
    void setSheetRow(const results::RoundRow& row, Instant now, const Zone& zone);
    const QString& name() const { return m_name; }
    results::RoundKind kind() const { return m_row.kind; }
    bool isMeter() const { return m_row.kind == results::RoundKind::meter; }
    State state() const { return m_state; }
    QLineEdit* field() const { return m_field; }
    /// Of a gravity: the sample's temperature, optional; else null.
    QLineEdit* sample() const { return m_sample; }
    QLineEdit* note() const { return m_note; }
    ReadingQuestion* question() const { return m_question; }
    QString message() const;
    /// Where what was refused stands.
    QLineEdit* troubled() const { return m_sampleRefused ? m_sample : m_field; }

    /// Reads the field as of `at`. A reading that can be checked is asked for by
    /// checkWanted().
    void commit(Instant at);
    void takeCheck(const intake::ReadingCheck& check);
    void refuse(const QString& sentence);
    /// A hand reading was found to be possible.
    void takePossible();
    /// What was typed; only while it is checked, and in state fine.
    intake::TypedReading typed() const;
    intake::TypedHandReading typedHand() const;
    Texts texts() const;
    void clearTyped();
    /// Those of a line that this one takes the place of.
    void putTyped(const Texts& texts);
    void setEnabled(bool enabled);
    /// One of its fields has it.
    bool hasFocus() const;

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

Q_SIGNALS:
    void checkWanted();
    /// Enter in the field or the note.
    void entered();
    /// The arrow keys: to the row before (-1) or after (+1).
    void stepped(int by);
    /// Something was typed by the person.
    void typedAnew();
    void settled();
    /// More than one line was pasted into the field.
    void tablePasted(const QString& text);
    /// The reading is of a new meter that took this one's place.
    void replaced();

private:
    void addWidgets(QGridLayout* grid, int gridRow, QWidget* parent, int setup);
    void setState(State state, const QString& message = {});
    void takeAnswer(Answer answer);
    void takeDoubt(const intake::DoubtfulReading& doubt);

    bool commitMeter(Instant at);
    bool commitHand(Instant at);
    bool refuseSample(const Problem& problem);
    void addSample(QHBoxLayout* layout);
    void showCorrected();
    void explainExpected(bool focused);

    QString m_name;
    results::RoundRow m_row;
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
    QLabel* m_mark;
    QLabel* m_message;
    QLineEdit* m_field;
    QLineEdit* m_sample; ///< null but of a gravity
    QLineEdit* m_note;
    ReadingQuestion* m_question;
};

} // namespace holdband::ui
