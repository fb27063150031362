// What a new batch begins with, from a forecast.
#pragma once

#include "core/model/batch_forecast.h"
#include "core/quantity/gravity.h"
#include "core/quantity/volume.h"
#include "ui/plans/plan_rows.h"

#include <QString>
#include <map>
#include <optional>
#include <string>

namespace holdband::ui {

struct PlannedBatch {
    std::string setup;
    std::optional<Volume> volume;
    std::optional<Gravity> originalGravity;
    QString planName; ///< as the list of plans shows it
    PlanValue plan;
    /// By setup: what is kept with the batch if its plan and volume stay as they are.
    std::map<std::string, BatchForecast> forecasts;
};

} // namespace holdband::ui
