// Below the grid of rounds: the new value of the selected reading, and why; or a late reading for a
// missed round. The typed text remains until it is saved or cancelled.
#pragma once

#include "core/model/readings.h"
#include "core/results/rounds/rounds_sheet.h"
#include "ui/rounds/correction_changes.h"
#include "ui/rounds/reading_question.h"

#include <QWidget>
#include <optional>

class QLabel;
class QLineEdit;
class QPushButton;

namespace holdband::intake {
struct ReadingCheck;
} // namespace holdband::intake

namespace holdband::ui {

class Session;

class CorrectionBar : public QWidget {
    Q_OBJECT
public:
    explicit CorrectionBar(Session& session, QWidget* parent = nullptr);

    void take(const results::RoundRow& row, const results::RoundCell& cell, const Zone& zone);
    void hideBar();
    QLineEdit* value() const { return m_value; }
    QLineEdit* time() const { return m_time; }
    QLineEdit* why() const { return m_why; }
    /// For an existing reading.
    QLineEdit* note() const { return m_note; }
    QString message() const;
    /// Shown if a register reads less than before.
    ReadingQuestion* question() const { return m_question; }

Q_SIGNALS:
    void saved(const QString& words);
    void closed();
    /// A typed value was saved, before closed(): go on to the next round.
    void typed();

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    void layOut();
    void enterValue();
    QString storedText() const;
    void save();
    void deleteReading();
    void saveTypedRegister();
    void saveHand();
    void saveNote();
    void checkRegister(const MeterReading& reading);
    void takeCheck(const MeterReading& reading, const intake::ReadingCheck& check);
    void takeAnswer(Answer answer);
    void saveRegister(const MeterReading& reading);
    void replaceMeter();
    RowReading stored() const;
    CorrectionNote typedNote() const;
    void change(const ReadingChange& work, const QString& words);
    std::optional<Instant> instant();
    bool confirmed(const QString& question);
    void finish(Result<bool> done, const QString& words);
    void refuse(const Problem& problem);
    void say(const QString& words);

    Session* m_session;
    results::RoundRow m_row;
    results::RoundCell m_cell;
    Zone m_zone;
    QLabel* m_words;
    QLineEdit* m_value;
    QLineEdit* m_time;
    QLineEdit* m_why;
    QLineEdit* m_note;
    QPushButton* m_save;
    QPushButton* m_delete;
    QLabel* m_message;
    ReadingQuestion* m_question;
    bool m_typed = false; ///< the change that is running is a typed value, not a deletion
    std::optional<MeterEvent> m_event; ///< the user's answer to the question
    QString m_asked;                   ///< the value already asked about, which may be saved now
};

} // namespace holdband::ui
