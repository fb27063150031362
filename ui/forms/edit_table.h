// A small editable list with its buttons: add, remove, move up, move down. By keyboard: type into a
// cell or F2; Enter accepts it and moves on, from the last cell to "Add"; Insert adds, Delete
// empties a cell, Ctrl+Delete removes the row, Alt+Up and Alt+Down move it; Tab leaves the table.
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
    /// `what`: the name of an item, "part", "stage". `wide`: the column that takes the remaining
    /// width.
    EditTable(const QString& what, std::vector<EditColumn> columns, int wide,
              QWidget* parent = nullptr);

    EditTableModel* model() const { return m_model; }
    QTableView* view() const { return m_view; }
    QPushButton* addButton() const { return m_add; }
    /// Rows are in order of time and can't be moved by hand.
    void hideMoves();
    void setVisibleRows(int least, int most);

    /// If a cell is refused: shows why, selects it, and returns false.
    bool check();
    /// The sentence below: why the selected cell is refused, or else any cell.
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
    bool passOnSaving(QEvent& event) const;
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
