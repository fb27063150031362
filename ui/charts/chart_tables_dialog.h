// Shows the contents of a run's panels as two tables.
#pragma once

#include "ui/charts/run_chart.h"

#include <QDialog>

namespace holdband::ui {

class TableModel;

class ChartTablesDialog : public QDialog {
    Q_OBJECT
public:
    /// `shown`: the part of the chart shown now.
    ChartTablesDialog(const RunChart& chart, Span shown, QWidget* parent = nullptr);

    TableModel* temperature() const { return m_temperature; }
    TableModel* energy() const { return m_energy; }

private:
    TableModel* m_temperature;
    TableModel* m_energy;
};

} // namespace holdband::ui
