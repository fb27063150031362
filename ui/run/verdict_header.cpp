#include "ui/run/verdict_header.h"

#include "ui/run/explained_label.h"
#include "ui/theme/card.h"
#include "ui/theme/theme.h"
#include "ui/words/words.h"

#include <QLabel>
#include <QPainter>
#include <QPainterPath>
#include <QVBoxLayout>

namespace holdband::ui {

namespace {

QColor stripeOf(analysis::Verdict verdict, const Colours& colours)
{
    switch (verdict) {
    case analysis::Verdict::stayed:
        return colours.target;
    case analysis::Verdict::left:
    case analysis::Verdict::missed:
        return colours.excursion;
    case analysis::Verdict::notEnoughData:
        break;
    }
    return colours.ambient;
}

} // namespace

VerdictHeader::VerdictHeader(QWidget* parent)
    : QWidget(parent), m_headline(makeLabel({}, "title", this)),
      m_arrival(new ExplainedLabel(this)), m_detail(makeLabel({}, "muted", this))
{
    auto* layout = new QVBoxLayout(this);
    constexpr int focusRoom = 5; // between a text and the frame of its focus
    layout->setContentsMargins(20 - focusRoom, 9, spacing::card - focusRoom, 10);
    layout->setSpacing(2);
    for (QLabel* label : std::initializer_list<QLabel*>{m_headline, m_arrival, m_detail})
        label->setContentsMargins(focusRoom, label == m_arrival ? 1 : 0, focusRoom, 1);
    layout->addWidget(m_headline);
    layout->addWidget(m_arrival);
    layout->addWidget(m_detail);
    QFont large = m_headline->font();
    large.setPointSizeF(large.pointSizeF() * 1.25);
    m_headline->setFont(large);
    m_headline->setTextInteractionFlags(Qt::TextSelectableByMouse);
    m_detail->setTextInteractionFlags(Qt::TextSelectableByMouse);
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Maximum);
}

void VerdictHeader::setVerdict(analysis::Verdict verdict, const QString& headline,
                               const QString& detail)
{
    m_verdict = verdict;
    m_headline->setText(withNoBreakSpaces(headline));
    m_detail->setText(withNoBreakSpaces(detail));
    m_detail->setVisible(!detail.isEmpty());
    m_headline->setAccessibleName(headline);
    update();
}

void VerdictHeader::setArrival(const QString& sentence, const QString& explanation)
{
    m_arrival->setWords(sentence, explanation);
}

QString VerdictHeader::headline() const
{
    return m_headline->accessibleName(); // the label's text has no-break spaces
}

void VerdictHeader::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    paintCard(painter, *this);
    QPainterPath card;
    card.addRoundedRect(rect(), spacing::radius, spacing::radius);
    painter.setClipPath(card);
    painter.fillRect(QRect(0, 0, 6, height()), stripeOf(m_verdict, coloursOf(*this)));
}

} // namespace holdband::ui
