// Paints the parts of a plan's drawing.
#pragma once

#include "ui/forms/unit_format.h"
#include "ui/plans/plan_layout.h"

#include <QPainter>
#include <QWidget>

namespace holdband::ui {

struct PlanPicture {
    const std::vector<DrawnStage>& stages;
    PlanMap map;
    const UnitFormat& format;
    int chosenRow = -1;
};

void paintPlan(QPainter& painter, const QWidget& widget, const PlanPicture& picture);

} // namespace holdband::ui
