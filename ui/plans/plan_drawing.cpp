#include "ui/plans/plan_drawing.h"

#include "core/text/durations.h"
#include "core/text/quantities.h"
#include "ui/plans/plan_painting.h"
#include "ui/words/words.h"

#include <QMouseEvent>
#include <QPainter>

namespace holdband::ui {

namespace {

/// The contents of the drawing as text, for people who use a screen reader.
QString spokenPlan(const std::vector<DrawnStage>& stages, const UnitFormat& format)
{
    QStringList words;
    for (const DrawnStage& drawn : stages) {
        const QString target =
            shown(temperatureText(drawn.stage.target, format.temperature(), 1, format.sign));
        const QString length = drawn.endKnown
                                   ? shown(durationText(Hours{drawn.to - drawn.from}, format.sign))
                                   : Words::tr("until it is ended");
        words << QStringLiteral("%1: %2 %3, %4")
                     .arg(shown(drawn.stage.label),
                          drawn.stage.kind == StageKind::ramp ? Words::tr("ramp to")
                                                              : Words::tr("hold at"),
                          target, length);
    }
    return words.join(QStringLiteral("; "));
}

} // namespace

PlanDrawing::PlanDrawing(QWidget* parent) : QWidget(parent)
{
    setMouseTracking(true);
    setAccessibleName(Words::tr("The plan, drawn"));
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Preferred);
}

void PlanDrawing::setPlan(std::vector<DrawnStage> stages, const UnitFormat& format)
{
    m_stages = std::move(stages);
    m_format = format;
    setAccessibleDescription(spokenPlan(m_stages, format));
    update();
}

void PlanDrawing::setChosenRow(int row)
{
    m_chosenRow = row;
    update();
}

QRectF PlanDrawing::plot() const
{
    const double line = fontMetrics().height();
    const double left = fontMetrics().horizontalAdvance(QStringLiteral("000 °F")) + 10.0;
    return QRectF(rect()).adjusted(left, line + 8.0, -10.0, -(line + 6.0));
}

PlanMap PlanDrawing::map() const
{
    return m_held ? m_heldMap : mapFor(m_stages, plot());
}

void PlanDrawing::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    paintPlan(painter, *this, {m_stages, map(), m_format, m_chosenRow});
}

void PlanDrawing::mousePressEvent(QMouseEvent* event)
{
    if (event->button() != Qt::LeftButton)
        return;
    const PlanMap map = mapFor(m_stages, plot());
    m_held = handleAt(m_stages, map, event->position());
    m_heldMap = map;
    if (m_held) {
        Q_EMIT rowChosen(m_stages[static_cast<std::size_t>(m_held->index)].row);
        return;
    }
    for (const DrawnStage& drawn : m_stages) {
        const double hour = map.hourAt(event->position().x());
        if (hour >= drawn.from && hour < drawn.to)
            Q_EMIT rowChosen(drawn.row);
    }
}

void PlanDrawing::mouseMoveEvent(QMouseEvent* event)
{
    if (m_held)
        drag(event->position());
    else
        showHand(event->position());
}

void PlanDrawing::mouseReleaseEvent(QMouseEvent*)
{
    m_held.reset();
    update();
}

void PlanDrawing::drag(QPointF place)
{
    const auto index = static_cast<std::size_t>(m_held->index);
    if (index >= m_stages.size())
        return;
    const DrawnStage& drawn = m_stages[index];
    if (m_held->part == PlanHandle::Part::target)
        Q_EMIT targetDragged(drawn.row,
                             snappedTarget(m_heldMap.celsiusAt(place.y()), m_format.temperature()));
    else
        Q_EMIT lengthDragged(drawn.row, snappedLength(m_heldMap.hourAt(place.x()) - drawn.from,
                                                      m_heldMap.pixelsPerHour()));
}

void PlanDrawing::showHand(QPointF place)
{
    const auto handle = handleAt(m_stages, map(), place);
    if (!handle)
        setCursor(Qt::ArrowCursor);
    else
        setCursor(handle->part == PlanHandle::Part::target ? Qt::SizeVerCursor : Qt::SizeHorCursor);
}

} // namespace holdband::ui
