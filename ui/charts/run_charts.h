// The three panels of a run on one time axis, a crosshair through all of them, and the bubble with
// the values.
#pragma once

#include "ui/charts/run_chart.h"
#include "ui/charts/time_view.h"

#include <QWidget>
#include <memory>

class QLabel;
class QPushButton;

namespace holdband::ui {

class DeviationPanel;
class EnergyPanel;
class OverviewStrip;
class PointerBubble;
class TemperaturePanel;

class RunCharts : public QWidget {
    Q_OBJECT
public:
    explicit RunCharts(QWidget* parent = nullptr);
    ~RunCharts() override;

    /// Null: the panels are empty. For another chart of the same batch the shown part does not
    /// change.
    void setChart(std::unique_ptr<RunChart> chart);
    /// Draws another judging of the same run.
    void showJudged(const analysis::JudgedBatch& judged);
    const RunChart* chart() const { return m_chart.get(); }
    TimeView& time() { return m_time; }
    void zoomTo(Span span);

    TemperaturePanel* temperature() const { return m_temperature; }
    DeviationPanel* deviation() const { return m_deviation; }
    EnergyPanel* energy() const { return m_energy; }
    OverviewStrip* overview() const { return m_overview; }
    /// While it is pressed, a drag marks a span.
    QPushButton* markButton() const { return m_markButton; }

Q_SIGNALS:
    /// The user marked a span; `at`: on the screen, beside its end. It stays marked until
    /// time().mark() is cleared.
    void spanMarked(const Span& span, const QPoint& at);

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    void movePointer();
    void offerReadings();
    QLayout* makeMarkRow();
    void showMarking();
    void tellMarked(const Span& span);

    TimeView m_time;
    std::unique_ptr<RunChart> m_chart;
    TemperaturePanel* m_temperature;
    DeviationPanel* m_deviation;
    EnergyPanel* m_energy;
    OverviewStrip* m_overview;
    PointerBubble* m_bubble;
    QLabel* m_markHint;
    QPushButton* m_markButton;
};

} // namespace holdband::ui
