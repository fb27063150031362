#include "ui/lanes/lanes_area.h"

#include "ui/lanes/lanes_view.h"

#include <QEvent>

namespace holdband::ui {

namespace {

constexpr int highest = 172;

} // namespace

LanesArea::LanesArea(LanesView* lanes, QWidget* parent) : QScrollArea(parent), m_lanes(lanes)
{
    setWidget(lanes);
    setWidgetResizable(true);
    setFrameShape(QFrame::NoFrame);
    setFocusPolicy(Qt::NoFocus);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    lanes->installEventFilter(this);
}

QSize LanesArea::sizeHint() const
{
    return {600, std::min(m_lanes->sizeHint().height(), highest)};
}

QSize LanesArea::minimumSizeHint() const
{
    return {300, sizeHint().height()};
}

bool LanesArea::eventFilter(QObject* watched, QEvent* event)
{
    // The lanes have more or fewer rows now.
    if (watched == m_lanes && event->type() == QEvent::LayoutRequest)
        updateGeometry();
    return QScrollArea::eventFilter(watched, event);
}

} // namespace holdband::ui
