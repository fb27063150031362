// The parts of a comparison's report below its measures: deviations, every batch, the same weather,
// money, judgement. Each adds nothing if it has no data.
#pragma once

#include "core/results/comparison/side_by_side.h"
#include "ui/charts/pair_sides.h"
#include "ui/report/compose/cells.h"
#include "ui/report/compose/document.h"

namespace holdband::report {

/// The unit of the analysis; for money the logbook's currency.
QString unitOf(const analysis::Measure& measure, const LogbookSettings& settings);

void addDeviations(Document& document, const results::SideBySide& pair, const ui::PairSides& sides);
/// For setups: every batch's figure, and the energy used while no batch ran.
void addBatchFigures(Document& document, const results::SideBySide& pair,
                     const ui::PairSides& sides);
void addWeather(Document& document, const results::SideBySide& pair, const ui::PairSides& sides,
                const Cells& cells);
void addMoney(Document& document, const results::SideBySide& pair, const ui::PairSides& sides,
              const Cells& cells);
void addJudgement(Document& document, const results::SideBySide& pair);

} // namespace holdband::report
