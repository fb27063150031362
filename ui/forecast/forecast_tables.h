// The texts of a forecast as a table: a column for each setup.
#pragma once

#include "core/results/forecast/next_batch.h"
#include "ui/tables/table_model.h"

#include <QStringList>

namespace holdband::ui {

/// Energy, cost, cold after, can it hold, needs, work; each cell says how it came about.
TableText forecastTable(const results::NextBatch& review);

/// What is missing for a forecast, one sentence for each setup without one.
QStringList missingSentences(const results::NextBatch& review);

/// How often past batches lay in their ranges, one sentence for each setup.
QString pastSentences(const results::NextBatch& review);

/// How a figure of each setup came about, one paragraph for each.
QString explanations(const results::NextBatch& review,
                     std::string results::SetupForecastText::*explained);

} // namespace holdband::ui
