// The positions of everything on the lanes: plain geometry from the review, the shown span and the
// available size. The widget draws it and asks it what is under the pointer. Bars too thin to be
// drawn separately are drawn as one, with their count.
#pragma once

#include "core/results/overview/lanes.h"
#include "core/text/zone.h"
#include "ui/lanes/time_labels.h"

#include <QRectF>
#include <limits>
#include <optional>
#include <string>
#include <vector>

namespace holdband::ui {

struct LanesMetrics {
    double width = 0.0;
    double rowHeight = 26.0;
    double top = 8.0;
    double roundsHeight = 18.0;
    double labelsHeight = 16.0;
    double nameWidth = 130.0; ///< of the column with the setups' names
    double rightMargin = 14.0;
    double rowsHeight = std::numeric_limits<double>::infinity(); ///< the height for rows
    double scrolled = 0.0; ///< how far the rows are scrolled up
    double nowWidth = 24.0;
    TextWidth labelWidth = [](const std::string& text) { return 7.0 * double(text.size()); };
};

struct PlacedBar {
    std::string batch;
    int setup = 0;                         ///< index, for its colour
    int row = 0;                           ///< of the setup
    QRectF box;                            ///< may reach beyond the plot's edges
    std::optional<std::size_t> group = {}; ///< index into groups, if it is drawn with others
};

/// Bars of one row that are too close to be drawn separately at this scale.
struct PlacedGroup {
    int setup = 0;
    QRectF box;
    Span span;
    std::vector<std::size_t> bars; ///< indices, in order of time
};

struct PlacedLane {
    std::string setup;
    QRectF box; ///< covers its row or rows
};

/// One round, or all rounds within a few pixels.
struct PlacedTick {
    double x = 0.0;
    int rounds = 1;
    int missed = 0;
    Span span; ///< from the first to the last of them

    bool mostMissed() const { return 2 * missed > rounds; }
};

struct LanesLayout {
    QRectF plot; ///< the time axis and the visible rows
    std::vector<PlacedLane> lanes;
    std::vector<PlacedBar> bars; ///< lane by lane, in order of pitching
    std::vector<PlacedGroup> groups;
    std::vector<PlacedTick> rounds;
    double roundsY = 0.0; ///< the middle of the line of rounds
    std::vector<PlacedLabel> labels;
    double labelsY = 0.0; ///< the top of the line of months
    std::optional<double> nowX;
    /// Its left edge, in the line of rounds; absent if there is no space.
    std::optional<double> nowWordX;
    double rowsHeight = 0.0; ///< of all rows, including those scrolled away
    double height = 0.0;

    /// Index into bars; bars in a group are not found.
    std::optional<std::size_t> barAt(QPointF point) const;
    /// Index into groups.
    std::optional<std::size_t> groupAt(QPointF point) const;
    /// Index into rounds.
    std::optional<std::size_t> roundAt(QPointF point) const;
    /// The box drawn for the bar: its own or its group's.
    QRectF drawnBox(std::size_t bar) const;
};

LanesLayout layOut(const results::LanesReview& review, Span shown, const Zone& zone,
                   const LanesMetrics& metrics);

/// The span shown at first: all batches, now if it is close, and some margin.
Span lanesSpan(const results::LanesReview& review);

enum class Direction { left, right, up, down };
/// The bar that an arrow key moves to; the same one if there is none.
std::size_t neighbour(const LanesLayout& layout, std::size_t from, Direction direction);

} // namespace holdband::ui
