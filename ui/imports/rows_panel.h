// The rows behind one of the counts, shown in place of the preview.
#pragma once

#include "ui/imports/log_tables.h"
#include "ui/theme/card.h"

class QPushButton;
class QTableView;

namespace holdband::ui {

class RowsPanel : public Card {
    Q_OBJECT
public:
    explicit RowsPanel(QWidget* parent = nullptr);

    void showRows(const intake::ImportReport& report, RowOutcome outcome, const Zone& zone);
    TableModel* model() const { return m_model; }
    QTableView* table() const { return m_table; }
    QPushButton* saveButton() const { return m_save; }

Q_SIGNALS:
    void closed();
    /// The user wants to save the rejected rows as a file.
    void saveWanted();

private:
    TableModel* m_model;
    QTableView* m_table;
    QPushButton* m_save;
};

/// A table of the page: unobtrusive, scrolling, with sensible column widths and no selection of
/// cells.
QTableView* makeLogTable(const QString& name, TableModel* model, QWidget* parent);
/// Sets the widths by the contents of the first rows, within bounds.
void fitColumns(QTableView& table, int least, int most);

} // namespace holdband::ui
