// Rows of typed cells for a small list inside a dialog: parts, stages, price windows. Each cell
// stores the typed text, valid or not; a refused cell has a reason.
#pragma once

#include <QAbstractTableModel>
#include <QStringList>
#include <functional>
#include <vector>

namespace holdband::ui {

struct EditRow {
    QStringList cells;
    int origin = -1; ///< index of the initial value shown in this row; −1: a new row

    bool operator==(const EditRow&) const = default;
};

struct EditColumn {
    QString title;
    QString blank = {};       ///< the text of a new row
    QStringList choices = {}; ///< empty: free text
    bool numeric = false;     ///< right-aligned
    bool readOnly = false;
    /// Returns why a cell is refused, or an empty text; gets all cells of the row.
    std::function<QString(const QStringList& row)> refusal = {};
    /// Whether the cell is used in this row. Absent: always.
    std::function<bool(const QStringList& row)> used = {};
    QString sample = {}; ///< the column is at least as wide as this
    bool time = false;   ///< a calendar opens in its cells
};

class EditTableModel : public QAbstractTableModel {
    Q_OBJECT
public:
    enum Role { RefusedRole = Qt::UserRole + 1, ChoicesRole, SampleRole, TimeRole };

    explicit EditTableModel(std::vector<EditColumn> columns, QObject* parent = nullptr);

    void setColumns(std::vector<EditColumn> columns);
    const std::vector<EditColumn>& columns() const { return m_columns; }
    void setRows(std::vector<EditRow> rows);
    const std::vector<EditRow>& rows() const { return m_rows; }
    EditRow blankRow() const;

    void insertBlank(int at);
    void removeAt(int row);
    /// Removes rows at the end that were added and in which nothing was typed.
    void removeBlankAtEnd();
    /// Moves the row; does nothing if there is no such place.
    void moveTo(int from, int to);
    void setCell(int row, int column, const QString& text);
    /// As setCell, without `edited`: for cells that follow from other cells.
    void showCell(int row, int column, const QString& text);

    QString refusalAt(int row, int column) const;
    /// From now on (until the next row is added) new rows in which nothing was typed are refused
    /// too: a user who just added a row shall not see an error before typing.
    void judgeUntouched();
    /// The first refused cell, row by row; invalid if there is none.
    QModelIndex firstRefused() const;

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    bool setData(const QModelIndex& index, const QVariant& value, int role) override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
    Qt::ItemFlags flags(const QModelIndex& index) const override;

Q_SIGNALS:
    /// By the user, or by a call on the user's behalf.
    void edited();

private:
    const EditColumn& column(int index) const { return m_columns[static_cast<std::size_t>(index)]; }
    const QStringList& cells(int row) const { return m_rows[static_cast<std::size_t>(row)].cells; }
    bool isUsed(int row, int column) const;

    std::vector<EditColumn> m_columns;
    std::vector<EditRow> m_rows;
    bool m_judgesUntouched = false;
};

} // namespace holdband::ui
