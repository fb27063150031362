// The question below a reading that is lower than the one before: what happened? Answered by a key
// or a button.
#pragma once

#include "core/model/readings.h"

#include <QWidget>
#include <optional>

class QLabel;
class QPushButton;
class QVBoxLayout;

namespace holdband::ui {

enum class Answer { mistyped, restarted, rolledOver, anotherMeter };

/// What the register did by that answer; absent: nothing, the number or the meter is another.
std::optional<MeterEvent> eventAnswered(Answer answer);

class ReadingQuestion : public QWidget {
    Q_OBJECT
public:
    explicit ReadingQuestion(QWidget* parent = nullptr);

    /// Shows the question and takes the focus, so that the keys M, R, T and O answer.
    void ask(const QString& question, bool hasTop);
    QString question() const;

Q_SIGNALS:
    void answered(holdband::ui::Answer answer);

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    /// Adds a button with a text about the effect of the answer.
    QPushButton* addAnswer(QVBoxLayout* layout, const QString& key, const QString& words,
                           Answer answer, const QString& consequence);

    QLabel* m_question;
    QPushButton* m_first = nullptr;
    QPushButton* m_rollover = nullptr;
};

} // namespace holdband::ui
