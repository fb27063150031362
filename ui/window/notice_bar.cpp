#include "ui/window/notice_bar.h"

#include "ui/theme/theme.h"
#include "ui/words/words.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPainter>
#include <QPushButton>

namespace holdband::ui {

NoticeBar::NoticeBar(QWidget* parent)
    : QWidget(parent), m_label(makeLabel({}, "care", this)), m_help(new QLabel(this))
{
    auto* layout = new QHBoxLayout(this);
    layout->setContentsMargins(spacing::card, 6, 6, 6);
    layout->addWidget(m_label, 1);
    layout->addWidget(m_help);
    m_help->setTextFormat(Qt::RichText);
    m_help->setAccessibleName(Words::tr("How it is computed"));
    m_help->setTextInteractionFlags(Qt::LinksAccessibleByMouse | Qt::LinksAccessibleByKeyboard);
    m_help->hide();
    connect(m_help, &QLabel::linkActivated, this, &NoticeBar::helpWanted);
    auto* close = new QPushButton(Words::tr("OK"), this);
    layout->addWidget(close);
    connect(close, &QPushButton::clicked, this, &NoticeBar::hideBar);
    m_label->setTextInteractionFlags(Qt::TextSelectableByMouse);
    hide();
}

void NoticeBar::say(const QString& sentence)
{
    m_label->setText(sentence);
    m_label->setAccessibleName(sentence);
    m_help->hide();
    show();
}

void NoticeBar::sayWithHelp(const QString& sentence, const QString& page)
{
    say(sentence);
    m_help->setText(QStringLiteral("<a href=\"%1\">%2</a>")
                        .arg(page, m_help->accessibleName().toHtmlEscaped()));
    m_help->show();
}

void NoticeBar::hideBar()
{
    m_label->clear();
    hide();
}

QString NoticeBar::sentence() const
{
    return m_label->text();
}

void NoticeBar::paintEvent(QPaintEvent*)
{
    const Colours& colours = coloursOf(*this);
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(colours.careEdge);
    painter.setBrush(colours.careBack);
    painter.drawRoundedRect(QRectF(rect()).adjusted(0.5, 0.5, -0.5, -0.5), spacing::radius,
                            spacing::radius);
}

} // namespace holdband::ui
