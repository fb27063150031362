#include "ui/lanes/lanes_area.h"

#include "ui/lanes/lanes_view.h"
#include "ui/words/words.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QScrollBar>
#include <cmath>

namespace holdband::ui {

namespace {

constexpr double linesShown = 9.5;   ///< of text
constexpr double mostOfWindow = 0.3; ///< of the window's height
constexpr int least = 176;

} // namespace

LanesArea::LanesArea(LanesView* lanes, QWidget* parent)
    : QWidget(parent), m_lanes(lanes), m_bar(new QScrollBar(Qt::Vertical))
{
    auto* layout = new QHBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(2);
    layout->addWidget(lanes, 1);
    layout->addWidget(m_bar);
    lanes->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Preferred);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    m_bar->setAccessibleName(Words::tr("Scroll the lanes"));
    m_bar->hide();
    lanes->installEventFilter(this);
    connect(lanes, &LanesView::rowsChanged, this, &LanesArea::followRows);
    connect(m_bar, &QScrollBar::valueChanged, lanes, [this](int at) { m_lanes->scrollTo(at); });
}

QSize LanesArea::sizeHint() const
{
    return {600, std::min(m_lanes->sizeHint().height(), highest())};
}

int LanesArea::highest() const
{
    const double lines = linesShown * fontMetrics().height();
    return std::max(least, static_cast<int>(std::min(lines, mostOfWindow * window()->height())));
}

QSize LanesArea::minimumSizeHint() const
{
    return {300, sizeHint().height()};
}

void LanesArea::followRows()
{
    const int page = static_cast<int>(std::floor(m_lanes->shownRowsHeight()));
    const int most = std::max(0, static_cast<int>(std::ceil(m_lanes->rowsHeight())) - page);
    const QSignalBlocker quiet(m_bar);
    m_bar->setRange(0, most);
    m_bar->setPageStep(page);
    m_bar->setSingleStep(std::max(1, page / 4));
    m_bar->setValue(static_cast<int>(std::lround(m_lanes->scrolled())));
    m_bar->setVisible(most > 1);
}

bool LanesArea::eventFilter(QObject* watched, QEvent* event)
{
    // The number of rows of the lanes has changed.
    if (watched == m_lanes && event->type() == QEvent::LayoutRequest)
        updateGeometry();
    return QWidget::eventFilter(watched, event);
}

} // namespace holdband::ui
