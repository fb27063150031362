// Where everything on the lanes stands: plain geometry from the review, the shown span and the
// width. The widget draws it and asks it what lies under the pointer.
#pragma once

#include "core/review/lanes.h"
#include "core/text/zone.h"

#include <QRectF>
#include <optional>
#include <string>
#include <vector>

namespace holdband::ui {

struct LanesMetrics {
    double width = 0.0;
    double rowHeight = 26.0;
    double top = 8.0;
    double roundsHeight = 18.0;
    double monthsHeight = 16.0;
    double labelWidth = 130.0;
    double rightMargin = 14.0;
};

struct PlacedBar {
    std::string batch;
    int setup = 0; ///< index, for its colour
    QRectF box;    ///< may reach beyond the plot's edges
};

struct PlacedLane {
    std::string setup;
    QRectF box; ///< the whole row or rows
};

struct PlacedTick {
    double x = 0.0;
    bool missed = false;
};

struct PlacedMonth {
    double x = 0.0;
    std::string label;
};

struct LanesLayout {
    QRectF plot; ///< where time runs, the lanes' rows
    std::vector<PlacedLane> lanes;
    std::vector<PlacedBar> bars; ///< lane by lane, in order of pitching
    std::vector<PlacedTick> rounds;
    double roundsY = 0.0; ///< the middle of the rounds' line
    std::vector<PlacedMonth> months;
    double monthsY = 0.0; ///< the top of the months' line
    std::optional<double> nowX;
    double height = 0.0;

    /// Index into bars.
    std::optional<std::size_t> barAt(QPointF point) const;
};

LanesLayout layOut(const review::LanesReview& review, Span shown, const Zone& zone,
                   const LanesMetrics& metrics);

/// What the lanes show at first: all batches, now where it is near, and some margin.
Span lanesSpan(const review::LanesReview& review);

enum class Direction { left, right, up, down };
/// The bar that an arrow key leads to; the same where there is none.
std::size_t neighbour(const LanesLayout& layout, std::size_t from, Direction direction);

} // namespace holdband::ui
