// A table of many rows that scrolls by itself, chosen row by row.
#pragma once

#include <QTableView>

namespace holdband::ui {

/// `name` for those who hear the window.
QTableView* makeListTable(const QString& name, QAbstractItemModel* model, QWidget* parent);

/// The column that takes the room left over; the others are as wide as what is seen of them. To be
/// called once the model has its columns; it holds for later contents too.
void widen(QTableView& table, int column);

} // namespace holdband::ui
