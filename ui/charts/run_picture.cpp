#include "ui/charts/run_picture.h"

#include "core/text/quantities.h"
#include "ui/charts/deviation_art.h"
#include "ui/charts/energy_art.h"
#include "ui/charts/temperature_art.h"
#include "ui/words/words.h"

#include <algorithm>

namespace holdband::ui {

namespace {

bool anyLine(const RunChart& chart)
{
    return std::any_of(chart.lines.begin(), chart.lines.end(),
                       [](const ChartLine& line) { return !line.track.empty(); });
}

bool anyDeviation(const RunChart& chart)
{
    return std::any_of(chart.deviation.begin(), chart.deviation.end(),
                       [](const analysis::Track& track) { return !track.empty(); });
}

} // namespace

RunPicture::RunPicture(RunChart chart) : m_chart(std::move(chart))
{
    const QString unit = shown(unitText(m_chart.unit));
    if (anyLine(m_chart)) {
        add(std::make_unique<TemperatureArt>(), 9.5);
        m_panels.back().art->setHeading(Words::tr("Temperature, %1").arg(unit));
    }
    if (anyDeviation(m_chart)) {
        add(std::make_unique<DeviationArt>(), 5.0);
        m_panels.back().art->setHeading(Words::tr("Deviation from target, %1").arg(unit));
    }
    if (!m_chart.energy.empty())
        add(std::make_unique<EnergyArt>(), 6.5);
    for (Panel& panel : m_panels)
        panel.art->setTimeLabels(&panel == &m_panels.back());
}

RunPicture::~RunPicture() = default;

void RunPicture::add(std::unique_ptr<PanelArt> art, double share)
{
    art->setChart(&m_chart);
    m_panels.push_back({std::move(art), share});
}

double RunPicture::heightFor(double width) const
{
    double shares = 0.0;
    for (const Panel& panel : m_panels)
        shares += panel.share;
    return width * shares / 21.0 * 0.63;
}

void RunPicture::paint(QPainter& painter, QSizeF size, const PictureLook& look) const
{
    PanelLook panelLook;
    panelLook.colours = &look.colours();
    panelLook.font = look.font;
    panelLook.vectors = look.vectors;
    panelLook.columns = look.columns;
    panelLook.headingLeft = 2.0;
    double shares = 0.0;
    for (const Panel& panel : m_panels)
        shares += panel.share;
    double top = 0.0;
    for (const Panel& panel : m_panels) {
        const double height = size.height() * panel.share / shares;
        painter.save();
        painter.translate(0.0, top);
        panel.art->paint(painter, {{size.width(), height}, m_chart.span, m_chart.span}, panelLook);
        painter.restore();
        top += height;
    }
}

} // namespace holdband::ui
