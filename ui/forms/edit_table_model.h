// Rows of typed cells for a small list inside a dialog: parts, stages, price windows. Each cell
// keeps what was typed, whether or not it can stand; a refused cell says why.
#pragma once

#include <QAbstractTableModel>
#include <QStringList>
#include <functional>
#include <vector>

namespace holdband::ui {

struct EditRow {
    QStringList cells;
    int origin = -1; ///< which of the values shown first this row is; −1: a new row

    bool operator==(const EditRow&) const = default;
};

struct EditColumn {
    QString title;
    QString blank = {};       ///< what a new row has
    QStringList choices = {}; ///< empty: typed freely
    bool numeric = false;     ///< stands right-aligned
    bool readOnly = false;
    /// The sentence that refuses a cell, or an empty one; sees the whole row.
    std::function<QString(const QStringList& row)> refusal = {};
    /// Whether the cell means anything in this row. Absent: always.
    std::function<bool(const QStringList& row)> used = {};
    QString sample = {}; ///< the column is at least as wide as this
};

class EditTableModel : public QAbstractTableModel {
    Q_OBJECT
public:
    enum Role { RefusedRole = Qt::UserRole + 1, ChoicesRole, SampleRole };

    explicit EditTableModel(std::vector<EditColumn> columns, QObject* parent = nullptr);

    void setColumns(std::vector<EditColumn> columns);
    const std::vector<EditColumn>& columns() const { return m_columns; }
    void setRows(std::vector<EditRow> rows);
    const std::vector<EditRow>& rows() const { return m_rows; }
    EditRow blankRow() const;

    void insertBlank(int at);
    void removeAt(int row);
    /// Puts the row at another place; nothing happens where there is none.
    void moveTo(int from, int to);
    void setCell(int row, int column, const QString& text);
    /// As setCell, without `edited`: for what follows from other cells.
    void showCell(int row, int column, const QString& text);

    QString refusalAt(int row, int column) const;
    /// Rows as they were added, with nothing typed, are refused too from here on (until the next
    /// one is added): whoever adds a row is not told off before typing.
    void judgeUntouched();
    /// The first refused cell, row by row; invalid where there is none.
    QModelIndex firstRefused() const;

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    bool setData(const QModelIndex& index, const QVariant& value, int role) override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
    Qt::ItemFlags flags(const QModelIndex& index) const override;

Q_SIGNALS:
    /// By the person, or by a call in the person's name.
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
