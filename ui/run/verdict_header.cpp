#include "ui/run/verdict_header.h"

#include "ui/run/explained_label.h"
#include "ui/run/figure_tile.h"
#include "ui/theme/card.h"
#include "ui/theme/flow_layout.h"
#include "ui/theme/theme.h"
#include "ui/theme/type_scale.h"
#include "ui/words/words.h"

#include <QBoxLayout>
#include <QLabel>
#include <QPainter>
#include <QPainterPath>

namespace holdband::ui {

namespace {

constexpr int leastSentence = 36; ///< letters in a line of the sentence beside the figures

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

void showFigure(FigureTile& tile, const results::GlanceFigure& figure,
                const results::RunReview& review)
{
    tile.setFigure(shown(figure.value), shown(figure.caption),
                   shown(results::explain(review, figure.figure, review.decimalSign)),
                   figure.warns);
}

} // namespace

VerdictHeader::VerdictHeader(QWidget* parent)
    : QWidget(parent), m_parts(new QBoxLayout(QBoxLayout::LeftToRight)),
      m_lead(new FigureTile(TypeSize::figure, this)), m_figures(makeFigures()),
      m_headline(makeLabel({}, "title", this)), m_arrival(new ExplainedLabel(this)),
      m_detail(makeLabel({}, "muted", this))
{
    setLayout(m_parts);
    m_parts->setContentsMargins(18, 10, spacing::card, 10);
    m_parts->setSpacing(24);
    m_parts->addWidget(m_figures);
    m_parts->addWidget(makeSentences(), 1);
    m_headline->setTextInteractionFlags(Qt::TextSelectableByMouse);
    m_detail->setTextInteractionFlags(Qt::TextSelectableByMouse);
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Maximum);
    setFigures(nullptr);
}

QWidget* VerdictHeader::makeFigures()
{
    auto* figures = new QWidget(this);
    auto* flow = new FlowLayout(22, 6);
    figures->setLayout(flow);
    flow->addWidget(m_lead);
    return figures;
}

QWidget* VerdictHeader::makeSentences()
{
    constexpr int focusRoom = 5; // between a text and the frame of its focus
    auto* sentences = new QWidget(this);
    auto* layout = new QVBoxLayout(sentences);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(2);
    for (QLabel* label : std::initializer_list<QLabel*>{m_headline, m_arrival, m_detail}) {
        label->setContentsMargins(focusRoom, label == m_arrival ? 1 : 0, focusRoom, 1);
        layout->addWidget(label);
    }
    layout->addStretch();
    return sentences;
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

void VerdictHeader::setFigures(const results::RunReview* review)
{
    const results::RunGlance glance = review ? results::glanceOf(*review) : results::RunGlance();
    m_lead->setVisible(glance.lead.has_value());
    if (glance.lead)
        showFigure(*m_lead, *glance.lead, *review);
    while (m_others.size() > static_cast<qsizetype>(glance.others.size()))
        delete m_others.takeLast();
    while (m_others.size() < static_cast<qsizetype>(glance.others.size())) {
        m_others << new FigureTile(TypeSize::heading, m_figures);
        m_figures->layout()->addWidget(m_others.back());
    }
    for (qsizetype i = 0; i < m_others.size(); ++i)
        showFigure(*m_others[i], glance.others[static_cast<std::size_t>(i)], *review);
    m_figures->setVisible(glance.lead || !m_others.isEmpty());
    placeSentences(width());
}

int VerdictHeader::heightFor(int width)
{
    placeSentences(width);
    m_parts->invalidate();
    return m_parts->hasHeightForWidth() ? m_parts->heightForWidth(width)
                                        : m_parts->sizeHint().height();
}

/// Beside the figures where there is room for them, else below.
void VerdictHeader::placeSentences(int width)
{
    const int letters = leastSentence * fontMetrics().averageCharWidth();
    const bool beside =
        !m_figures->isVisibleTo(this) || m_figures->sizeHint().width() + letters + 60 <= width;
    m_parts->setDirection(beside ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom);
    m_parts->setSpacing(beside ? 24 : 4);
}

void VerdictHeader::setArrival(const QString& sentence, const QString& explanation)
{
    m_arrival->setWords(sentence, explanation);
}

QString VerdictHeader::headline() const
{
    return m_headline->accessibleName(); // the label's text has no-break spaces
}

void VerdictHeader::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    placeSentences(width());
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
