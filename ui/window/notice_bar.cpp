#include "ui/window/notice_bar.h"

#include "ui/theme/theme.h"
#include "ui/words/words.h"

#include <QAccessible>
#include <QAccessibleWidget>
#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QPainter>
#include <QPushButton>
#include <QTimer>
#include <algorithm>

namespace holdband::ui {

namespace {

constexpr int shownForMs = 8'000;
constexpr int mostWidth = 760;
constexpr int aboveEdge = 30; ///< so that the status line can be read

/// Screen readers speak a message of this role without the focus on it.
QAccessibleInterface* noticeInterfaceFor(const QString&, QObject* object)
{
    auto* bar = qobject_cast<NoticeBar*>(object);
    return bar ? new QAccessibleWidget(bar, QAccessible::AlertMessage) : nullptr;
}

void makeNoticesAccessible()
{
    static const bool installed = [] {
        QAccessible::installFactory(noticeInterfaceFor);
        return true;
    }();
    Q_UNUSED(installed);
}

} // namespace

NoticeBar::NoticeBar(QWidget* over)
    : QWidget(over), m_label(makeLabel({}, "plain", this)), m_help(new QLabel(this)),
      m_timer(new QTimer(this))
{
    makeNoticesAccessible();
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
    m_timer->setSingleShot(true);
    m_timer->setInterval(shownForMs);
    connect(m_timer, &QTimer::timeout, this, &NoticeBar::hideBar);
    over->installEventFilter(this);
    hide();
}

void NoticeBar::say(const QString& sentence)
{
    m_timer->stop();
    m_passing = false;
    m_label->setText(sentence);
    m_label->setAccessibleName(sentence);
    m_help->hide();
    show();
    place();
    setAccessibleName(sentence);
    QAccessibleEvent alert(this, QAccessible::Alert); // it takes no focus: else nobody hears it
    QAccessible::updateAccessibility(&alert);
}

void NoticeBar::sayInPassing(const QString& sentence)
{
    say(sentence);
    m_passing = true;
    m_timer->start();
}

void NoticeBar::sayWithHelp(const QString& sentence, const QString& page)
{
    say(sentence);
    m_help->setText(QStringLiteral("<a href=\"%1\">%2</a>")
                        .arg(page, m_help->accessibleName().toHtmlEscaped()));
    m_help->show();
    place();
}

void NoticeBar::hideBar()
{
    m_timer->stop();
    m_label->clear();
    hide();
}

QString NoticeBar::sentence() const
{
    return m_label->text();
}

void NoticeBar::place()
{
    const QWidget& over = *parentWidget();
    const int width = std::min(mostWidth, over.width() - 4 * spacing::page);
    const int height = layout()->hasHeightForWidth() ? layout()->heightForWidth(width)
                                                     : layout()->sizeHint().height();
    setGeometry((over.width() - width) / 2, over.height() - height - aboveEdge, width, height);
    raise();
}

bool NoticeBar::eventFilter(QObject* watched, QEvent* event)
{
    if (event->type() == QEvent::Resize && !isHidden())
        place();
    return QWidget::eventFilter(watched, event);
}

void NoticeBar::enterEvent(QEnterEvent* event)
{
    m_timer->stop();
    QWidget::enterEvent(event);
}

void NoticeBar::leaveEvent(QEvent* event)
{
    if (m_passing && !isHidden())
        m_timer->start();
    QWidget::leaveEvent(event);
}

void NoticeBar::paintEvent(QPaintEvent*)
{
    const Colours& colours = coloursOf(*this);
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(colours.fieldEdge, 1.0));
    painter.setBrush(colours.card);
    painter.drawRoundedRect(QRectF(rect()).adjusted(0.5, 0.5, -0.5, -0.5), spacing::radius,
                            spacing::radius);
}

} // namespace holdband::ui
