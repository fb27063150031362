#include "ui/charts/temperature_panel.h"

#include "ui/theme/plain_tips.h"
#include "ui/words/words.h"

#include <QHelpEvent>
#include <QToolTip>

namespace holdband::ui {

TemperaturePanel::TemperaturePanel(TimeView& time, QWidget* parent) : ChartPanel(time, parent)
{
    setMinimumHeight(11 * fontMetrics().height());
    setHeading(m_plot.heading());
}

void TemperaturePanel::setCoolingShown(bool shown)
{
    m_plot.setCoolingShown(shown);
    dataChanged();
}

bool TemperaturePanel::event(QEvent* event)
{
    const RunChart* chart = m_plot.chart();
    if (event->type() != QEvent::ToolTip || !chart)
        return ChartPanel::event(event);
    const auto* help = static_cast<QHelpEvent*>(event);
    const Plot marked = m_plot.frame(place(), look());
    for (std::size_t i = chart->notes.size(); i-- > 0;) {
        if (noteBox(marked, i).contains(help->pos()))
            QToolTip::showText(help->globalPos(), tip(noteWords(*chart, i)), this);
    }
    if (const int ring = ringAt(marked, help->pos()); ring >= 0)
        QToolTip::showText(
            help->globalPos(),
            tip(excursionText(*chart, chart->excursions[static_cast<std::size_t>(ring)])), this);
    if (help->pos().y() >= marked.area().top())
        return true;
    const double ms = chart->msOf(map().instantAt(help->pos().x()));
    for (const StageBox& stage : chart->stages) {
        if (ms >= stage.time.fromMs && ms < stage.time.toMs)
            QToolTip::showText(help->globalPos(), tip(shown(stage.words)), this);
    }
    return true;
}

} // namespace holdband::ui
