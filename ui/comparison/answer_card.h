// The answer of a comparison in one sentence, below it what is not decided, and the button that
// opens the details.
#pragma once

#include "core/results/comparison/side_by_side.h"
#include "ui/theme/card.h"

class QLabel;

namespace holdband::ui {

class AnswerCard : public Card {
    Q_OBJECT
public:
    explicit AnswerCard(QWidget* parent = nullptr);

    void setComparison(const results::SideBySide& comparison);
    /// Instead of an answer: why there is none.
    void setProblem(const QString& words);
    /// How the button shows the details' state.
    void setOpen(bool open);

    QString answer() const { return m_answerText; }
    QString undecided() const { return m_openText; }
    /// Checked while the details are open.
    QPushButton* details() const { return m_details; }

private:
    void setTexts(const QString& answer, const QString& open);
    void showDetails();

    QLabel* m_answer;
    QLabel* m_open;
    QPushButton* m_details;
    QString m_answerText;
    QString m_openText;
    QString m_counts; ///< "17 measures · 7 notes on fairness"
};

} // namespace holdband::ui
