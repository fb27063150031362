#include "ui/theme/card.h"

#include "ui/theme/fold_button.h"
#include "ui/theme/motion.h"
#include "ui/theme/theme.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPainter>
#include <QPushButton>
#include <QVBoxLayout>

namespace holdband::ui {

namespace {

void paintFrame(QPainter& painter, const QWidget& widget, const QColor& fill, const QColor& edge)
{
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setBrush(fill);
    painter.setPen(QPen(edge, 1.0));
    painter.drawRoundedRect(QRectF(widget.rect()).adjusted(0.5, 0.5, -0.5, -0.5), spacing::radius,
                            spacing::radius);
}

} // namespace

Card::Card(const QString& title, QWidget* parent, Tone tone)
    : QWidget(parent), m_tone(tone), m_title(new QLabel(this)), m_secondaryText(new QLabel(this)),
      m_body(new QWidget(this))
{
    auto* outer = new QVBoxLayout(this);
    outer->setContentsMargins(spacing::card, 9, spacing::card, 10);
    outer->setSpacing(5);
    auto* heading = new QHBoxLayout;
    heading->setObjectName(QStringLiteral("heading"));
    setRole(m_title, tone == Tone::care ? "caretitle" : "title");
    setRole(m_secondaryText, "muted");
    heading->addWidget(m_title);
    heading->addStretch();
    heading->addWidget(m_secondaryText);
    outer->addLayout(heading);
    m_contents = new QVBoxLayout(m_body);
    m_contents->setContentsMargins(0, 0, 0, 0);
    m_contents->setSpacing(3);
    outer->addWidget(m_body, 1);
    setTitle(title);
    m_secondaryText->hide();
}

void Card::setTitle(const QString& title)
{
    m_title->setText(title);
    m_title->setVisible(!title.isEmpty() && !m_fold);
    setAccessibleName(title);
    if (m_fold)
        showFold();
}

void Card::makeFoldable(bool folded)
{
    m_fold = new FoldButton(this);
    m_fold->setFont(m_title->font());
    m_title->hide();
    findChild<QHBoxLayout*>(QStringLiteral("heading"))->insertWidget(0, m_fold);
    connect(m_fold, &QPushButton::toggled, this, &Card::showFold);
    m_fold->setChecked(!folded);
    showFold();
}

QPushButton* Card::foldButton() const
{
    return m_fold;
}

void Card::setFolded(bool folded)
{
    m_fold->setChecked(!folded);
}

bool Card::isFolded() const
{
    return m_fold && !m_fold->isChecked();
}

void Card::showFold()
{
    m_fold->setText((isFolded() ? QStringLiteral("▸ ") : QStringLiteral("▾ ")) + m_title->text());
    m_fold->setAccessibleName(m_title->text());
    easeOpen(*m_body, !isFolded());
    update();
}

void Card::setSecondaryText(const QString& words)
{
    m_secondaryText->setText(words);
    m_secondaryText->setVisible(!words.isEmpty());
}

void Card::paintEvent(QPaintEvent*)
{
    if (isFolded())
        return;
    QPainter painter(this);
    const Colours& colours = coloursOf(*this);
    if (m_tone == Tone::care)
        paintFrame(painter, *this, colours.careBack, colours.careEdge);
    else
        paintFrame(painter, *this, colours.card, colours.cardEdge);
}

void paintCard(QPainter& painter, const QWidget& widget)
{
    const Colours& colours = coloursOf(widget);
    paintFrame(painter, widget, colours.card, colours.cardEdge);
}

QPixmap cardPicture(const QWidget& widget)
{
    const double ratio = widget.devicePixelRatioF();
    QPixmap picture(widget.size() * ratio);
    picture.setDevicePixelRatio(ratio);
    picture.fill(Qt::transparent);
    QPainter painter(&picture);
    paintCard(painter, widget);
    return picture;
}

void clearLayout(QLayout* layout)
{
    while (QLayoutItem* item = layout->takeAt(0)) {
        if (QLayout* inner = item->layout())
            clearLayout(inner);
        delete item->widget();
        delete item;
    }
}

} // namespace holdband::ui
