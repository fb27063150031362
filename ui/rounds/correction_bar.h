// Beneath the grid of rounds: what the chosen reading is to be instead, and why; or a late reading
// for a round that was missed. What was typed stays until it is kept or put away.
#pragma once

#include "core/review/rounds_sheet.h"

#include <QWidget>

class QLabel;
class QLineEdit;
class QPushButton;

namespace holdband::ui {

class Session;

class CorrectionBar : public QWidget {
    Q_OBJECT
public:
    explicit CorrectionBar(Session& session, QWidget* parent = nullptr);

    void take(const review::RoundRow& row, const review::RoundCell& cell, const Zone& zone);
    void putAway();
    QLineEdit* value() const { return m_value; }
    QLineEdit* time() const { return m_time; }
    QLineEdit* why() const { return m_why; }
    /// Of a reading that stands.
    QLineEdit* note() const { return m_note; }
    QString message() const;

Q_SIGNALS:
    void kept(const QString& words);
    void closed();

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    void layOut();
    void keep();
    void takeAway();
    void correct(double value, int decimals);
    void keepNote();
    void addLate(double value, int decimals);
    void finish(Result<bool> done, const QString& words);
    void refuse(const Problem& problem);

    Session* m_session;
    review::RoundRow m_row;
    review::RoundCell m_cell;
    Zone m_zone;
    QLabel* m_words;
    QLineEdit* m_value;
    QLineEdit* m_time;
    QLineEdit* m_why;
    QLineEdit* m_note;
    QPushButton* m_keep;
    QPushButton* m_away;
    QLabel* m_message;
};

} // namespace holdband::ui
