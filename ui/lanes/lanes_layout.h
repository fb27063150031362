// Where everything on the lanes stands: plain geometry from the review, the shown span and the
// room. The widget draws it and asks it what lies under the pointer. Bars that grow too thin to
// stand apart are drawn as one, with their count.
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
    double rowsHeight = std::numeric_limits<double>::infinity(); ///< the room for rows
    double scrolled = 0.0; ///< how far the rows are moved up in it
    double nowWidth = 24.0;
    TextWidth labelWidth = [](const std::string& text) { return 7.0 * double(text.size()); };
};

struct PlacedBar {
    std::string batch;
    int setup = 0;                         ///< index, for its colour
    int row = 0;                           ///< of the setup
    QRectF box;                            ///< may reach beyond the plot's edges
    std::optional<std::size_t> group = {}; ///< index into groups, where it is drawn with others
};

/// Bars of one row that can't be told apart at this scale.
struct PlacedGroup {
    int setup = 0;
    QRectF box;
    Span span;
    std::vector<std::size_t> bars; ///< indices, in order of time
};

struct PlacedLane {
    std::string setup;
    QRectF box; ///< the whole row or rows
};

/// One round, or all of a few pixels where they lie closer.
struct PlacedTick {
    double x = 0.0;
    int rounds = 1;
    int missed = 0;
    Span span; ///< from the first to the last of them

    bool mostMissed() const { return 2 * missed > rounds; }
};

struct LanesLayout {
    QRectF plot; ///< where time runs, the rows that can be seen
    std::vector<PlacedLane> lanes;
    std::vector<PlacedBar> bars; ///< lane by lane, in order of pitching
    std::vector<PlacedGroup> groups;
    std::vector<PlacedTick> rounds;
    double roundsY = 0.0; ///< the middle of the rounds' line
    std::vector<PlacedLabel> labels;
    double labelsY = 0.0; ///< the top of the line of months
    std::optional<double> nowX;
    std::optional<double> nowWordX; ///< its left edge, in the rounds' line; absent without room
    double rowsHeight = 0.0;        ///< of all rows, also those scrolled away
    double height = 0.0;

    /// Index into bars; those of a group are not found.
    std::optional<std::size_t> barAt(QPointF point) const;
    /// Index into groups.
    std::optional<std::size_t> groupAt(QPointF point) const;
    /// Index into rounds.
    std::optional<std::size_t> roundAt(QPointF point) const;
    /// What is drawn for the bar: itself or its group.
    QRectF drawnBox(std::size_t bar) const;
};

LanesLayout layOut(const results::LanesReview& review, Span shown, const Zone& zone,
                   const LanesMetrics& metrics);

/// What the lanes show at first: all batches, now where it is near, and some margin.
Span lanesSpan(const results::LanesReview& review);

enum class Direction { left, right, up, down };
/// The bar that an arrow key leads to; the same where there is none.
std::size_t neighbour(const LanesLayout& layout, std::size_t from, Direction direction);

} // namespace holdband::ui
