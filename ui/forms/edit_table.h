// A small editable list with its buttons: add, remove, move up, move down. By keyboard: type into a
// cell or F2; Enter takes it and goes on, from the last cell to "Add"; Insert adds, Delete empties
// a cell, Ctrl+Delete removes the row, Alt+Up and Alt+Down move it; Tab leaves the table.
#pragma once

#include "ui/forms/edit_table_model.h"

#include <QWidget>

class QLabel;
class QPushButton;
class QTableView;

namespace holdband::ui {

class EditTable : public QWidget {
    Q_OBJECT
public:
    /// `what` is in a row: "part", "stage". `wide`: the column that takes the room left over.
    EditTable(const QString& what, std::vector<EditColumn> columns, int wide,
              QWidget* parent = nullptr);

    EditTableModel* model() const { return m_model; }
    QTableView* view() const { return m_view; }
    QPushButton* addButton() const { return m_add; }
    /// Rows stand in the order of time and are not moved by hand.
    void hideMoves();
    void setVisibleRows(int least, int most);

    /// Where a cell is refused: shows why, goes there, and gives false.
    bool check();
    /// The sentence beneath: what is refused in the cell that is chosen, else anywhere.
    QString problem() const;

    int currentRow() const;
    void chooseRow(int row);
    void addRow();
    void removeRow();
    void moveRow(int by);

Q_SIGNALS:
    void edited();
    void rowChosen(int row);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void prepareView();
    void layOut();
    QPushButton* addButtonFor(const QString& words, const QString& name);
    void showProblem();
    void fit();
    void fitColumns();
    bool actOn(int key, Qt::KeyboardModifiers modifiers);
    void goOn();
    int firstToType(int row) const;

    QString m_what;
    EditTableModel* m_model;
    QTableView* m_view;
    QPushButton* m_add;
    QPushButton* m_remove;
    QPushButton* m_up;
    QPushButton* m_down;
    QLabel* m_problem;
    int m_wide;
    int m_leastRows = 2;
    int m_mostRows = 7;
};

} // namespace holdband::ui
