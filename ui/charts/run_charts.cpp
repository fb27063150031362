#include "ui/charts/run_charts.h"

#include "core/text/quantities.h"
#include "ui/charts/deviation_panel.h"
#include "ui/charts/energy_panel.h"
#include "ui/charts/overview_strip.h"
#include "ui/charts/pointer_bubble.h"
#include "ui/charts/pointer_text.h"
#include "ui/charts/temperature_panel.h"
#include "ui/theme/theme.h"
#include "ui/words/words.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QSignalBlocker>
#include <QVBoxLayout>
#include <algorithm>

namespace holdband::ui {

RunCharts::RunCharts(QWidget* parent)
    : QWidget(parent), m_temperature(new TemperaturePanel(m_time, this)),
      m_deviation(new DeviationPanel(m_time, this)), m_energy(new EnergyPanel(m_time, this)),
      m_overview(new OverviewStrip(m_time, this)), m_bubble(new PointerBubble(this)),
      m_markHint(makeLabel({}, "muted", this)),
      m_markButton(new QPushButton(Words::tr("Mark a &span"), this))
{
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(spacing::gap);
    layout->addWidget(m_temperature, 10);
    layout->addWidget(m_deviation, 4);
    layout->addWidget(m_energy, 6);
    layout->addWidget(m_overview);
    layout->addLayout(makeMarkRow());
    connect(&m_time, &TimeView::pointerChanged, this, &RunCharts::movePointer);
    connect(&m_time, &TimeView::shownChanged, this, &RunCharts::movePointer);
}

RunCharts::~RunCharts() = default;

QLayout* RunCharts::makeMarkRow()
{
    auto* row = new QHBoxLayout;
    row->addWidget(m_markHint, 1);
    row->addWidget(m_markButton);
    m_markHint->setWordWrap(false);
    m_markButton->setCheckable(true);
    m_markButton->setAutoDefault(false);
    m_markButton->setToolTip(Words::tr("Marks a span of time, to leave its readings out or to zoom "
                                       "to it. Shift and drag does the same, or the key M."));
    SpanMark* mark = &m_time.mark();
    connect(m_markButton, &QPushButton::toggled, this, [this, mark](bool on) {
        on ? mark->setWanted(true) : mark->clear();
        if (on)
            m_temperature->setFocus(); // its keys mark too
    });
    connect(mark, &SpanMark::changed, this, &RunCharts::showMarking);
    connect(mark, &SpanMark::wantedChanged, this, &RunCharts::showMarking);
    connect(mark, &SpanMark::finished, this, &RunCharts::tellMarked);
    showMarking();
    return row;
}

void RunCharts::showMarking()
{
    const SpanMark& mark = m_time.mark();
    const QSignalBlocker silent(m_markButton);
    m_markButton->setChecked(mark.isWanted());
    m_markHint->setText(
        mark.isWanted() || mark.isOpen()
            ? Words::tr("Drag over a chart, or press M at both ends. Escape "
                        "cancels.")
            : Words::tr("Drag to move, turn the wheel to zoom, Shift and drag to mark."));
}

void RunCharts::tellMarked(const Span& span)
{
    const PlotMap map = m_temperature->map();
    const double x = std::clamp(map.x(span.end), map.plot.left(), map.plot.right());
    const QPoint at(static_cast<int>(x), static_cast<int>(map.plot.center().y()));
    Q_EMIT spanMarked(span, m_temperature->mapToGlobal(at));
}

void RunCharts::setChart(std::unique_ptr<RunChart> chart)
{
    m_temperature->setChart(chart.get());
    m_deviation->setChart(chart.get());
    m_energy->setChart(chart.get());
    m_overview->setChart(chart.get());
    // The lowest panel with a plot shows the dates.
    m_deviation->setTimeLabels(chart && chart->energy.empty());
    const bool same = chart && m_chart && chart->batch == m_chart->batch;
    m_chart = std::move(chart);
    m_markButton->setEnabled(m_chart != nullptr);
    if (m_chart) {
        const QString unit = shown(unitText(m_chart->unit));
        m_temperature->setHeading(Words::tr("Temperature, %1").arg(unit));
        m_deviation->setHeading(Words::tr("Deviation from target, %1").arg(unit));
    }
    const Span all = m_chart ? m_chart->wholeSpan() : Span{};
    offerReadings();
    same ? m_time.extend(all) : m_time.reset(all);
}

void RunCharts::offerReadings()
{
    TimeView::Readings readings;
    readings.nearest = [this](Instant at) -> std::optional<Instant> {
        const auto ms = m_chart ? nearestReading(*m_chart, m_chart->msOf(at)) : std::nullopt;
        return ms ? std::optional(m_chart->instantOf(*ms)) : std::nullopt;
    };
    readings.beside = [this](Instant at, bool after) -> std::optional<Instant> {
        const auto ms =
            m_chart ? adjacentReading(*m_chart, m_chart->msOf(at), after) : std::nullopt;
        return ms ? std::optional(m_chart->instantOf(*ms)) : std::nullopt;
    };
    m_time.setReadings(std::move(readings));
}

void RunCharts::showJudged(const analysis::JudgedBatch& judged)
{
    if (!m_chart)
        return;
    setJudged(*m_chart, judged);
    m_temperature->setChart(m_chart.get());
    m_deviation->setChart(m_chart.get());
}

void RunCharts::zoomTo(Span span)
{
    m_time.show(span, 0.75);
}

void RunCharts::movePointer()
{
    const std::optional<Instant> at = m_time.pointer();
    const Span seen = m_time.shown();
    if (!m_chart || !at || *at < seen.start || *at > seen.end) {
        m_bubble->hide();
        return;
    }
    const double x = m_temperature->map().x(*at);
    m_bubble->say(wordsAt(*m_chart, *at), {static_cast<int>(x), m_deviation->y() + 4}, size());
    setAccessibleDescription(wordsAt(*m_chart, *at).join(QStringLiteral(", ")));
}

void RunCharts::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    movePointer();
}

} // namespace holdband::ui
