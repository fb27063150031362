#include "ui/rounds/week_sparkline.h"

#include "ui/theme/theme.h"
#include "ui/words/words.h"

#include <QPainter>
#include <QPolygonF>

namespace holdband::ui {

namespace {

constexpr double lineHeights = 1.7; ///< its height in lines of text
constexpr double shape = 90.0 / 28.0;

/// One level for each rate, at its time; `box` holds the whole week from 0 to the largest rate.
QPolygonF stepsOf(const results::MeterWeek& week, const QRectF& box)
{
    const Instant start = week.rates.front().from;
    const double hours = hoursBetween(start, week.rates.back().to);
    const double most = std::max(week.mostWatts, 1e-9);
    const auto x = [&](Instant at) {
        return box.left() + hoursBetween(start, at) / hours * box.width();
    };
    QPolygonF steps;
    for (const results::MeterRate& rate : week.rates) {
        const double y = box.bottom() - rate.watts / most * box.height();
        steps << QPointF(x(rate.from), y) << QPointF(x(rate.to), y);
    }
    return steps;
}

} // namespace

WeekSparkline::WeekSparkline(const QString& meter, QWidget* parent) : QWidget(parent)
{
    setAccessibleName(Words::tr("%1, the last week").arg(meter));
    setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
    hide();
}

QSize WeekSparkline::sizeHint() const
{
    const double height = lineHeights * fontMetrics().height();
    return QSizeF(height * shape, height).toSize();
}

void WeekSparkline::setWeek(results::MeterWeek week, std::optional<int> setup)
{
    m_week = std::move(week);
    m_setup = setup;
    setVisible(m_room && !m_week.rates.empty());
    if (m_week.rates.empty())
        return setAccessibleDescription({});
    const QString words =
        Words::tr("Mean power between the readings of the last 7 days: %1 – %2 W, lately %3 W")
            .arg(numberText(m_week.leastWatts, 0), numberText(m_week.mostWatts, 0),
                 numberText(m_week.rates.back().watts, 0));
    setAccessibleDescription(words);
    setToolTip(words);
    update();
}

void WeekSparkline::setRoom(bool enough)
{
    m_room = enough;
    setVisible(m_room && !m_week.rates.empty());
}

void WeekSparkline::paintEvent(QPaintEvent*)
{
    if (m_week.rates.empty())
        return;
    const Colours& colours = coloursOf(*this);
    const QColor colour = m_setup ? setupLine(*m_setup, colours) : colours.ambient;
    const QRectF box = QRectF(rect()).adjusted(2.0, 3.0, -2.0, -2.0);
    const QPolygonF steps = stepsOf(m_week, box);
    QPolygonF below = steps;
    below << box.bottomRight() << box.bottomLeft();
    QPainter painter(this);
    painter.setPen(Qt::NoPen);
    painter.setBrush(mixed(colour, colours.card, 0.18));
    painter.drawPolygon(below);
    painter.setPen(QPen(colours.grid, 1.0));
    painter.drawLine(box.bottomLeft(), box.bottomRight());
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(colour, 1.5));
    painter.drawPolyline(steps);
}

} // namespace holdband::ui
