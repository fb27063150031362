// Checks every item model with Qt's own tester.
#include "ui/rounds/rounds_grid_model.h"
#include "ui/tables/table_model.h"

#include <QAbstractItemModelTester>
#include <gtest/gtest.h>

namespace holdband::ui {

namespace {

using Tester = QAbstractItemModelTester;

TableText twoRows()
{
    TableText words;
    words.header = {"Stage", "kWh"};
    words.numeric = {false, true};
    words.rows = {{{"Primary", "66 °F ± 3 °F", false}, {"5.79", {}, true}},
                  {{"Crash", {}, false}, {"3.90", {}, true}}};
    return words;
}

results::RoundsSheet sheet()
{
    using namespace std::chrono;
    results::RoundsSheet sheet;
    sheet.rows.resize(1);
    sheet.rows[0].name = "Loop meter";
    sheet.columns = {{2026y / April / 4, 0}, {2026y / April / 4, 1}};
    results::RoundCell read;
    read.value = 58.14;
    read.decimals = 3;
    read.history = "was 85.140, corrected 4 Apr 19:10: digits swapped";
    results::RoundCell missed;
    missed.missed = true;
    sheet.cells = {{read, missed}};
    return sheet;
}

} // namespace

TEST(TableModel, PassesTheTesterWhileItIsFilledAndEmptied)
{
    TableModel model;
    const Tester tester(&model, Tester::FailureReportingMode::Fatal);
    model.setWords(twoRows());
    EXPECT_EQ(model.rowCount(), 2);
    EXPECT_EQ(model.columnCount(), 2);
    EXPECT_EQ(model.index(1, 0).data(), "Crash");
    EXPECT_EQ(model.index(0, 0).data(Qt::ToolTipRole), "66 °F ± 3 °F");
    EXPECT_EQ(model.headerData(1, Qt::Horizontal, Qt::DisplayRole), "kWh");
    model.setWords({});
    EXPECT_EQ(model.rowCount(), 0);
}

TEST(RoundsGridModel, PassesTheTesterAndShowsMissedAndCorrected)
{
    RoundsGridModel model;
    const Tester tester(&model, Tester::FailureReportingMode::Fatal);
    model.setSheet(sheet());
    ASSERT_EQ(model.columnCount(), 2);
    EXPECT_EQ(model.index(0, 0).data(), "58.140");
    EXPECT_TRUE(model.index(0, 0).data(RoundsGridModel::CorrectedRole).toBool());
    EXPECT_TRUE(model.index(0, 0).data(Qt::ToolTipRole).toString().startsWith("was 85.140"));
    EXPECT_TRUE(model.index(0, 1).data(RoundsGridModel::MissedRole).toBool());
    EXPECT_EQ(model.index(0, 1).data(Qt::AccessibleTextRole), "missed");
    EXPECT_EQ(model.headerData(1, Qt::Horizontal, Qt::DisplayRole), "4 Apr\nevening");
    EXPECT_EQ(model.headerData(0, Qt::Vertical, Qt::DisplayRole), "Loop meter");
    model.setSheet({});
}

} // namespace holdband::ui
