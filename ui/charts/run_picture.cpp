#include "ui/charts/run_picture.h"

#include "core/text/quantities.h"
#include "ui/charts/deviation_plot.h"
#include "ui/charts/energy_plot.h"
#include "ui/charts/temperature_plot.h"
#include "ui/words/words.h"

namespace holdband::ui {

RunPicture::RunPicture(RunChart chart) : m_chart(std::move(chart))
{
    const QString unit = shown(unitText(m_chart.unit));
    if (m_chart.hasReadings()) {
        add(std::make_unique<TemperaturePlot>(), 9.5);
        m_panels.back().plot->setHeading(Words::tr("Temperature, %1").arg(unit));
    }
    if (m_chart.hasDeviation()) {
        add(std::make_unique<DeviationPlot>(), 5.0);
        m_panels.back().plot->setHeading(Words::tr("Deviation from target, %1").arg(unit));
    }
    if (!m_chart.energy.empty())
        add(std::make_unique<EnergyPlot>(), 6.5);
    for (Panel& panel : m_panels)
        panel.plot->setTimeLabels(&panel == &m_panels.back());
}

RunPicture::~RunPicture() = default;

void RunPicture::add(std::unique_ptr<RunPlot> plot, double share)
{
    plot->setChart(&m_chart);
    m_panels.push_back({std::move(plot), share});
}

double RunPicture::heightFor(double width) const
{
    double shares = 0.0;
    for (const Panel& panel : m_panels)
        shares += panel.share;
    return width * shares / 21.0 * 0.63;
}

std::vector<Plot> RunPicture::plots(QSizeF size, const PictureLook& look) const
{
    double shares = 0.0;
    for (const Panel& panel : m_panels)
        shares += panel.share;
    std::vector<Plot> plots;
    const Span all = m_chart.wholeSpan();
    double top = 0.0;
    for (const Panel& panel : m_panels) {
        const double height = size.height() * panel.share / shares;
        const PanelPlace place{{size.width(), height}, all, all, 2.0, top};
        plots.push_back(panel.plot->plot(place, look));
        top += height;
    }
    return plots;
}

} // namespace holdband::ui
