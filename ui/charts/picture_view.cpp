#include "ui/charts/picture_view.h"

#include "ui/theme/card.h"

#include <QPainter>

namespace holdband::ui {

PictureView::PictureView(const QString& name, QWidget* parent, bool framed)
    : QWidget(parent), m_framed(framed)
{
    setAccessibleName(name);
    hide();
}

void PictureView::setPicture(std::shared_ptr<const Picture> picture, const QString& words)
{
    m_picture = std::move(picture);
    setAccessibleDescription(words);
    setVisible(m_picture != nullptr);
    updateHeight();
    update();
}

void PictureView::fillHeight()
{
    m_fills = true;
    updateHeight();
}

QRectF PictureView::inner() const
{
    return m_framed ? QRectF(rect()).adjusted(10.0, 5.0, -8.0, -7.0) : QRectF(rect());
}

/// Takes the best height for this width.
void PictureView::updateHeight()
{
    constexpr double least = 130.0;
    constexpr double most = 420.0;
    const double height = m_picture ? m_picture->heightFor(width()) : least;
    const int best = static_cast<int>(std::clamp(height, least, most));
    setMinimumHeight(best);
    setMaximumHeight(m_fills ? QWIDGETSIZE_MAX : best);
}

void PictureView::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    updateHeight();
}

void PictureView::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    if (m_framed)
        paintCard(painter, *this);
    if (!m_picture)
        return;
    PictureLook look;
    look.scheme = schemeOf(palette());
    look.font = font();
    look.columns = devicePixelRatioF();
    painter.translate(inner().topLeft());
    m_picture->paint(painter, inner().size(), look);
}

} // namespace holdband::ui
