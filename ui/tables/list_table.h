// A scrollable table of many rows, selected row by row.
#pragma once

#include <QTableView>

namespace holdband::ui {

/// `name`: the accessible name.
QTableView* makeListTable(const QString& name, QAbstractItemModel* model, QWidget* parent);

/// Gives the column the remaining width; the others fit their visible contents. Call after the
/// model has its columns; it applies to later contents too.
void widen(QTableView& table, int column);

} // namespace holdband::ui
