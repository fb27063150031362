// How long one frame of a run's three panels takes with N readings in one series, in each of three
// series, and with 2000 in one. Usage: draw_run READINGS RESULT. RESULT gets, in ms, for each of
// them: a still frame, and the 95th percentile of a frame while panning and zooming.
#include "ui/charts/deviation_panel.h"
#include "ui/charts/energy_panel.h"
#include "ui/charts/run_charts.h"
#include "ui/charts/temperature_panel.h"
#include "ui/theme/theme.h"

#include <QApplication>
#include <QElapsedTimer>
#include <QImage>
#include <QTest>
#include <algorithm>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <fstream>

namespace {

using namespace holdband;

constexpr double stepMs = 60'000.0;

analysis::Track wavy(std::size_t readings, double mean, double swing)
{
    analysis::Track track;
    track.ms.resize(readings);
    track.value.resize(readings);
    for (std::size_t i = 0; i < readings; ++i) {
        track.ms[i] = static_cast<double>(i) * stepMs;
        track.value[i] = mean + swing * std::sin(static_cast<double>(i) / 230.0) +
                         0.2 * static_cast<double>(i * 7919 % 11);
    }
    track.runs = {{0, readings - 1}};
    return track;
}

ui::ChartLine lineOf(ui::LineRole role, const char* name, analysis::Track track)
{
    ui::ChartLine line{role, name, std::move(track)};
    line.pyramid = ui::TrackPyramid(line.track);
    return line;
}

std::unique_ptr<ui::RunChart> chartOf(std::size_t readings, bool one)
{
    auto chart = std::make_unique<ui::RunChart>();
    const double length = static_cast<double>(readings - 1) * stepMs;
    chart->batch = "made for measuring";
    chart->span = {chart->origin, chart->instantOf(length)};
    chart->bands.push_back({{0.0, length}, 52.0, 52.0, 3.0});
    if (!one) {
        chart->lines.push_back(lineOf(ui::LineRole::ambient, "room", wavy(readings, 66.0, 6.0)));
        chart->deviation.push_back(wavy(readings, 0.0, 1.0));
        chart->deviationPyramids.emplace_back(chart->deviation.back());
    }
    chart->lines.push_back(lineOf(ui::LineRole::beer, "beer", wavy(readings, 52.0, 1.0)));
    return chart;
}

class Frames {
public:
    explicit Frames(ui::RunCharts& charts)
        : m_charts(charts), m_image(charts.size(), QImage::Format_ARGB32_Premultiplied)
    {
    }

    double frame(const std::function<void()>& before)
    {
        QElapsedTimer clock;
        clock.start();
        before();
        m_charts.render(&m_image);
        return static_cast<double>(clock.nsecsElapsed()) / 1e6;
    }

    /// The median of a still frame, antialiased.
    double still()
    {
        std::vector<double> times;
        for (int i = 0; i < 9; ++i) {
            QTest::qWait(200); // until the finer drawing is done
            m_charts.resize(m_charts.width() + (i % 2 == 0 ? 2 : -2), m_charts.height());
            QCoreApplication::processEvents();
            QTest::qWait(200);
            times.push_back(frame([this] { m_charts.temperature()->setHeading("Temperature"); }));
        }
        std::sort(times.begin(), times.end());
        return times[times.size() / 2];
    }

    /// The 95th percentile while the axis moves.
    double moving()
    {
        std::vector<double> times;
        ui::TimeView& time = m_charts.time();
        time.showAll();
        for (int i = 0; i < 120; ++i)
            times.push_back(frame([&] {
                if (i % 3 == 0)
                    time.zoom(i < 60 ? 0.93 : 1.0 / 0.93);
                else
                    time.moveByShare(i % 2 == 0 ? 0.03 : -0.02);
            }));
        std::sort(times.begin(), times.end());
        return times[times.size() * 95 / 100];
    }

private:
    ui::RunCharts& m_charts;
    QImage m_image;
};

} // namespace

int main(int argc, char** argv)
{
    if (argc < 3) {
        std::fprintf(stderr, "usage: draw_run READINGS RESULT\n");
        return 2;
    }
    QApplication application(argc, argv);
    ui::dress(application, ui::Scheme::light);
    const auto readings = static_cast<std::size_t>(std::strtoull(argv[1], nullptr, 10));
    ui::RunCharts charts;
    charts.resize(860, 640);
    charts.show();
    QCoreApplication::processEvents();
    const auto measure = [&](std::size_t count, bool one) {
        charts.setChart(chartOf(count, one));
        QCoreApplication::processEvents();
        Frames frames(charts);
        const double moving = frames.moving();
        charts.setChart(nullptr);
        charts.setChart(chartOf(count, one));
        return std::pair{frames.still(), moving};
    };
    std::ofstream result(argv[2]);
    for (const auto& [count, one] :
         {std::pair{std::size_t{2000}, true}, {readings, true}, {readings, false}}) {
        const auto [still, moving] = measure(count, one);
        result << still << ' ' << moving << '\n';
    }
    return 0;
}
