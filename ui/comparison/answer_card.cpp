#include "ui/comparison/answer_card.h"

#include "ui/theme/columns_layout.h"
#include "ui/theme/fold_button.h"
#include "ui/theme/theme.h"
#include "ui/theme/type_scale.h"
#include "ui/words/words.h"

#include <QLabel>
#include <QPushButton>
#include <QSignalBlocker>
#include <QVBoxLayout>

namespace holdband::ui {

AnswerCard::AnswerCard(QWidget* parent)
    : Card({}, parent), m_answer(makeLabel({}, "title", this)),
      m_open(makeLabel({}, "muted", this)), m_details(new FoldButton(this))
{
    m_answer->setFont(sized(m_answer->font(), TypeSize::heading));
    for (QLabel* label : {m_answer, m_open})
        label->setTextInteractionFlags(Qt::TextSelectableByMouse);
    auto* texts = new QWidget(this);
    auto* column = new QVBoxLayout(texts);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(4);
    column->addWidget(m_answer);
    column->addWidget(m_open);
    auto* row = new ColumnsLayout(spacing::gap);
    row->addColumn(texts, 1, 20 * fontMetrics().height());
    row->addColumn(m_details, 0);
    contents()->addLayout(row);
    connect(m_details, &QPushButton::toggled, this, &AnswerCard::showDetails);
    setProblem({});
}

void AnswerCard::setComparison(const results::SideBySide& comparison)
{
    setTexts(shown(comparison.glance.answer), shown(comparison.glance.open));
    m_counts = Words::counted("%n measures", "%n measure", comparison.measures.size());
    if (!comparison.notes.empty())
        m_counts +=
            QStringLiteral(" · ") +
            Words::counted("%n notes on fairness", "%n note on fairness", comparison.notes.size());
    m_details->show();
    showDetails();
}

void AnswerCard::setProblem(const QString& words)
{
    setTexts(words, {});
    m_counts.clear();
    showDetails();
    m_details->hide();
}

void AnswerCard::setTexts(const QString& answer, const QString& open)
{
    m_answerText = answer;
    m_openText = open;
    m_answer->setText(withNoBreakSpaces(answer));
    m_answer->setAccessibleName(answer);
    m_open->setText(withNoBreakSpaces(open));
    m_open->setAccessibleName(open);
    m_open->setVisible(!open.isEmpty());
}

void AnswerCard::setOpen(bool open)
{
    const QSignalBlocker quiet(m_details);
    m_details->setChecked(open);
    showDetails();
}

void AnswerCard::showDetails()
{
    const QString words =
        m_counts.isEmpty() ? Words::tr("Details") : Words::tr("Details: %1").arg(m_counts);
    m_details->setText(words +
                       (m_details->isChecked() ? QStringLiteral(" ▾") : QStringLiteral(" ▸")));
    m_details->setAccessibleName(words);
}

} // namespace holdband::ui
