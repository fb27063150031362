// How long it takes to lay out and draw the lanes once, as while they are moved: 500 batches over
// ten years, and the same zoomed to one year. Usage: paint_lanes RESULT RESULT gets both as
// milliseconds, medians of 41.
#include "ui/lanes/lanes_view.h"
#include "ui/theme/theme.h"

#include <QApplication>
#include <QElapsedTimer>
#include <QImage>
#include <QWheelEvent>
#include <algorithm>
#include <cstdio>
#include <fstream>
#include <vector>

namespace {

using namespace holdband;

constexpr int batches = 500;

results::LanesReview tenYears()
{
    const Instant start = instantFromMs(1'478'000'000'000);
    results::LanesReview review;
    for (int lane = 0; lane < 4; ++lane)
        review.lanes.push_back({"Setup " + std::to_string(lane), {}, 1});
    for (int i = 0; i < batches; ++i) {
        results::LaneBar bar;
        bar.batch = "Batch " + std::to_string(i);
        const Instant pitched = start + std::chrono::hours{24 * 29} * (i / 4);
        bar.span = {pitched, pitched + std::chrono::hours{24 * (9 + i % 17)}};
        bar.mark = "3";
        review.lanes[static_cast<std::size_t>(i % 4)].bars.push_back(bar);
    }
    for (int i = 0; i < 7300; ++i)
        review.rounds.push_back({start + std::chrono::hours{12} * i, i % 41 == 0});
    review.now = start + std::chrono::hours{24 * 3650};
    review.shown = {start, review.now};
    return review;
}

double drawingMs(ui::LanesView& view)
{
    QImage image(view.size(), QImage::Format_ARGB32_Premultiplied);
    std::vector<double> times;
    for (int i = 0; i < 41; ++i) {
        const QPointF at(600.0, 40.0);
        QWheelEvent move(at, at, {}, {0, i % 2 == 0 ? 12 : -12}, Qt::NoButton, Qt::ShiftModifier,
                         Qt::NoScrollPhase, false);
        QElapsedTimer clock;
        clock.start();
        QApplication::sendEvent(&view, &move);
        view.render(&image);
        times.push_back(static_cast<double>(clock.nsecsElapsed()) / 1e6);
    }
    std::nth_element(times.begin(), times.begin() + 20, times.end());
    return times[20];
}

} // namespace

int main(int argc, char** argv)
{
    if (argc < 2) {
        std::fprintf(stderr, "usage: paint_lanes RESULT\n");
        return 2;
    }
    QApplication application(argc, argv);
    ui::dress(application, ui::Scheme::light);
    ui::LanesView view;
    view.resize(1250, 170);
    view.setReview(tenYears(), Zone::utc());
    view.show();
    QCoreApplication::processEvents();
    const double whole = drawingMs(view);
    const QPointF at(600.0, 40.0);
    for (int i = 0; i < 10; ++i) { // 0.8 to the tenth: a tenth of the time
        QWheelEvent zoom(at, at, {}, {0, 120}, Qt::NoButton, {}, Qt::NoScrollPhase, false);
        QApplication::sendEvent(&view, &zoom);
    }
    const double year = drawingMs(view);
    std::ofstream(argv[1]) << whole << ' ' << year << '\n';
    return 0;
}
