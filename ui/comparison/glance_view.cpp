#include "ui/comparison/glance_view.h"

#include "ui/theme/card.h"
#include "ui/theme/plain_tips.h"
#include "ui/words/words.h"

#include <QHelpEvent>
#include <QKeyEvent>
#include <QPainter>
#include <QToolTip>
#include <algorithm>
#include <cmath>

namespace holdband::ui {

namespace {

constexpr int shownForMs = 60'000;

bool isF1(const QEvent& event)
{
    return static_cast<const QKeyEvent&>(event).key() == Qt::Key_F1;
}

/// "Energy, kWh: A 8.87, B 14.50, too close to call"
QString lineOf(const results::GlancePair& pair)
{
    return QStringLiteral("%1: A %2, B %3, %4")
        .arg(shown(pair.title), shown(pair.a.text), shown(pair.b.text), shown(pair.aheadText));
}

} // namespace

GlanceView::GlanceView(QWidget* parent) : QWidget(parent)
{
    setAccessibleName(Words::tr("At a glance"));
    setFocusPolicy(Qt::StrongFocus);
    hide();
}

void GlanceView::setPicture(std::shared_ptr<const PairBarsPicture> picture)
{
    m_picture = std::move(picture);
    m_current = std::clamp(m_current, 0, std::max(0, count() - 1));
    setVisible(m_picture != nullptr);
    describe();
    updateHeight();
    update();
}

int GlanceView::count() const
{
    return m_picture ? static_cast<int>(m_picture->glance().pairs.size()) : 0;
}

QString GlanceView::explanation(int pair) const
{
    return pair >= 0 && pair < count() ? shown(m_picture->glance().pairs[pair].explanation)
                                       : QString();
}

/// The chosen pair comes first, so that a screen reader says it after each key.
void GlanceView::describe()
{
    QStringList lines;
    for (int i = 0; i < count(); ++i) {
        const int pair = (m_current + i) % count();
        lines << lineOf(m_picture->glance().pairs[pair]);
    }
    if (m_picture)
        lines << m_picture->legend();
    setAccessibleDescription(lines.join(QStringLiteral(". ")));
}

QRectF GlanceView::inner() const
{
    return QRectF(rect()).adjusted(10.0, 5.0, -8.0, -7.0);
}

QRectF GlanceView::rowOf(int pair) const
{
    return m_picture->rowBox(static_cast<std::size_t>(pair), inner().size(), font())
        .translated(inner().topLeft());
}

int GlanceView::pairAt(QPointF place) const
{
    for (int i = 0; i < count(); ++i) {
        if (rowOf(i).contains(place))
            return i;
    }
    return -1;
}

void GlanceView::choose(int pair)
{
    if (pair < 0 || pair >= count() || pair == m_current)
        return;
    m_current = pair;
    describe();
    update();
}

void GlanceView::explain(int pair, QPoint at)
{
    const QString why = explanation(pair);
    if (why.isEmpty())
        return QToolTip::hideText();
    QToolTip::showText(mapToGlobal(at), tip(why), this, rowOf(pair).toRect(), shownForMs);
}

/// F1 is handled here and not by the window.
bool GlanceView::event(QEvent* event)
{
    if (event->type() == QEvent::ShortcutOverride && isF1(*event))
        event->accept();
    if (event->type() == QEvent::ToolTip) {
        const QPoint at = static_cast<const QHelpEvent*>(event)->pos();
        explain(pairAt(at), at);
        return true;
    }
    return QWidget::event(event);
}

void GlanceView::keyPressEvent(QKeyEvent* event)
{
    switch (event->key()) {
    case Qt::Key_Up:
        return choose(m_current - 1);
    case Qt::Key_Down:
        return choose(m_current + 1);
    case Qt::Key_Home:
        return choose(0);
    case Qt::Key_End:
        return choose(count() - 1);
    case Qt::Key_F1:
        if (count() > 0)
            explain(m_current, rowOf(m_current).bottomLeft().toPoint());
        return;
    default:
        return QWidget::keyPressEvent(event);
    }
}

void GlanceView::mousePressEvent(QMouseEvent* event)
{
    choose(pairAt(event->position()));
}

/// The least height, so that it takes more where a neighbour is higher.
void GlanceView::updateHeight()
{
    if (!m_picture)
        return;
    const QSizeF frame = QSizeF(size()) - inner().size();
    const double height = m_picture->heightFor(inner().width(), font()) + frame.height();
    setMinimumHeight(static_cast<int>(std::ceil(height)));
}

void GlanceView::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    updateHeight();
}

void GlanceView::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::FontChange)
        updateHeight();
}

void GlanceView::focusInEvent(QFocusEvent* event)
{
    QWidget::focusInEvent(event);
    update();
}

void GlanceView::focusOutEvent(QFocusEvent* event)
{
    QWidget::focusOutEvent(event);
    update();
}

void GlanceView::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    paintCard(painter, *this);
    if (!m_picture)
        return;
    PictureLook look;
    look.scheme = schemeOf(palette());
    look.font = font();
    look.columns = devicePixelRatioF();
    painter.save();
    painter.translate(inner().topLeft());
    m_picture->paint(painter, inner().size(), look);
    painter.restore();
    if (hasFocus() && count() > 0) {
        painter.setRenderHint(QPainter::Antialiasing);
        painter.setPen(QPen(coloursOf(*this).focus, 1.5));
        painter.setBrush(Qt::NoBrush);
        painter.drawRoundedRect(rowOf(m_current).adjusted(-4.0, 2.0, 2.0, -2.0), 4.0, 4.0);
    }
}

} // namespace holdband::ui
