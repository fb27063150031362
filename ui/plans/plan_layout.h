// The positions of a plan's stages in its drawing: hours from pitching on the x axis, temperature
// on the y axis. No widgets, no painting.
#pragma once

#include "core/model/batch.h"

#include <QRectF>
#include <optional>
#include <vector>

namespace holdband::ui {

struct DrawnStage {
    int row = 0; ///< in the table
    Stage stage;
    double from = 0.0; ///< hours after pitching
    double to = 0.0;   ///< hours; assumed if the plan doesn't give the end
    bool endKnown = true;
    Temperature startTarget;
    std::optional<TemperatureDifference> tolerance;
    double settling = 0.0; ///< hours at its beginning that are allowed for settling

    bool operator==(const DrawnStage&) const = default;
};

/// `rows` gives the table row of each stage.
std::vector<DrawnStage> drawnStages(const Schedule& schedule, const std::vector<int>& rows,
                                    const std::optional<TemperatureDifference>& tolerance);

/// Converts between the drawing's pixels and hours and degrees Celsius.
struct PlanMap {
    QRectF plot;
    double hours = 24.0; ///< over the full width
    double low = 0.0;    ///< °C at the lower edge
    double high = 30.0;  ///< °C at the upper edge

    double x(double hour) const { return plot.left() + plot.width() * hour / hours; }
    double y(double celsius) const
    {
        return plot.bottom() - plot.height() * (celsius - low) / (high - low);
    }
    double hourAt(double x) const { return (x - plot.left()) / plot.width() * hours; }
    double celsiusAt(double y) const
    {
        return low + (plot.bottom() - y) / plot.height() * (high - low);
    }
    double pixelsPerHour() const { return plot.width() / hours; }
};

/// Contains all stages with their bands.
PlanMap mapFor(const std::vector<DrawnStage>& stages, const QRectF& plot);

/// A part of the drawing that can be dragged.
struct PlanHandle {
    enum class Part { target, end };
    Part part = Part::target;
    int index = 0; ///< of the drawn stage

    bool operator==(const PlanHandle&) const = default;
};

/// The end of a stage within 5 pixels, else the target line within 8.
std::optional<PlanHandle> handleAt(const std::vector<DrawnStage>& stages, const PlanMap& map,
                                   QPointF place);

/// Rounded to half a degree of the unit.
Temperature snappedTarget(double celsius, TemperatureUnit unit);
/// Rounded to full hours, or to 6 or 12 if an hour is too narrow on the screen; never below one
/// such step.
Hours snappedLength(double hours, double pixelsPerHour);

} // namespace holdband::ui
