#include "ui/rounds/reading_question.h"

#include "ui/theme/theme.h"
#include "ui/words/words.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QPainter>
#include <QPushButton>
#include <QVBoxLayout>

namespace holdband::ui {

std::optional<MeterEvent> eventAnswered(Answer answer)
{
    switch (answer) {
    case Answer::restarted:
        return MeterEvent::reset;
    case Answer::rolledOver:
        return MeterEvent::rollover;
    case Answer::mistyped:
    case Answer::anotherMeter:
        break;
    }
    return std::nullopt;
}

ReadingQuestion::ReadingQuestion(QWidget* parent)
    : QWidget(parent), m_question(makeLabel({}, "warn", this))
{
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(12, 8, 12, 9);
    layout->setSpacing(6);
    QFont bold = m_question->font();
    bold.setWeight(QFont::DemiBold);
    m_question->setFont(bold);
    layout->addWidget(m_question);
    m_first = addAnswer(layout, QStringLiteral("M"), Words::tr("mistyped"), Answer::mistyped,
                        Words::tr("nothing was saved; type it again"));
    addAnswer(layout, QStringLiteral("R"), Words::tr("restarted at 0"), Answer::restarted,
              Words::tr("counts what it reads now; what was lost before is a wider bound"));
    m_rollover = addAnswer(layout, QStringLiteral("T"), Words::tr("over its top"),
                           Answer::rolledOver, Words::tr("counts up to the top and on from 0"));
    addAnswer(layout, QStringLiteral("O"), Words::tr("another meter"), Answer::anotherMeter,
              Words::tr("a new meter begins here, the old one goes out of service"));
    hide();
}

QPushButton* ReadingQuestion::addAnswer(QVBoxLayout* layout, const QString& key,
                                        const QString& words, Answer answer,
                                        const QString& consequence)
{
    auto* button = new QPushButton(key + QStringLiteral("  ") + words, this);
    button->setAccessibleName(words + QStringLiteral(": ") + consequence);
    button->setToolTip(Words::tr("Key %1").arg(key));
    button->setAutoDefault(true);
    button->setMinimumWidth(170);
    connect(button, &QPushButton::clicked, this, [this, answer] { Q_EMIT answered(answer); });
    auto* line = new QHBoxLayout;
    line->setSpacing(8);
    line->addWidget(button);
    QLabel* what = makeLabel(consequence, "muted", this);
    line->addWidget(what, 1);
    layout->addLayout(line);
    return button;
}

void ReadingQuestion::ask(const QString& question, bool hasTop)
{
    m_question->setText(question);
    m_question->setAccessibleName(question);
    m_rollover->setEnabled(hasTop);
    m_rollover->setToolTip(hasTop ? Words::tr("Key T")
                                  : Words::tr("the meter's top is not on record"));
    show();
    m_first->setFocus();
}

QString ReadingQuestion::question() const
{
    return m_question->text();
}

void ReadingQuestion::keyPressEvent(QKeyEvent* event)
{
    switch (event->key()) {
    case Qt::Key_M:
    case Qt::Key_Escape:
        Q_EMIT answered(Answer::mistyped);
        return;
    case Qt::Key_R:
        Q_EMIT answered(Answer::restarted);
        return;
    case Qt::Key_T:
        if (m_rollover->isEnabled())
            Q_EMIT answered(Answer::rolledOver);
        return;
    case Qt::Key_O:
        Q_EMIT answered(Answer::anotherMeter);
        return;
    default:
        QWidget::keyPressEvent(event);
    }
}

void ReadingQuestion::paintEvent(QPaintEvent*)
{
    const Colours& colours = coloursOf(*this);
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(colours.warn, 1.2));
    painter.setBrush(colours.warnBack);
    painter.drawRoundedRect(QRectF(rect()).adjusted(1, 1, -1, -1), 4, 4);
}

} // namespace holdband::ui
