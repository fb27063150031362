#include "ui/charts/temperature_panel.h"

#include "ui/theme/plain_tips.h"
#include "ui/words/words.h"

#include <QHelpEvent>
#include <QToolTip>

namespace holdband::ui {

TemperaturePanel::TemperaturePanel(TimeView& time, QWidget* parent) : ChartPanel(time, parent)
{
    setMinimumHeight(118);
    setHeading(m_art.heading());
}

void TemperaturePanel::setCoolingShown(bool shown)
{
    m_art.setCoolingShown(shown);
    dataChanged();
}

bool TemperaturePanel::event(QEvent* event)
{
    const RunChart* chart = m_art.chart();
    if (event->type() != QEvent::ToolTip || !chart)
        return ChartPanel::event(event);
    const auto* help = static_cast<QHelpEvent*>(event);
    const PlotMap plotted = map();
    for (std::size_t i = chart->notes.size(); i-- > 0;) {
        if (m_art.noteBox(plotted, font(), i).contains(help->pos()))
            QToolTip::showText(help->globalPos(), tip(noteWords(*chart, i)), this);
    }
    if (const ExcursionMark* mark = m_art.ringAt(plotted, help->pos()))
        QToolTip::showText(help->globalPos(), tip(excursionText(*chart, *mark)), this);
    if (help->pos().y() >= plotted.plot.top())
        return true;
    const double ms = chart->msOf(plotted.instantAt(help->pos().x()));
    for (const StageBox& stage : chart->stages) {
        if (ms >= stage.time.fromMs && ms < stage.time.toMs)
            QToolTip::showText(help->globalPos(), tip(shown(stage.words)), this);
    }
    return true;
}

} // namespace holdband::ui
