#include "ui/forms/edit_table_model.h"

#include "ui/words/words.h"

namespace holdband::ui {

EditTableModel::EditTableModel(std::vector<EditColumn> columns, QObject* parent)
    : QAbstractTableModel(parent), m_columns(std::move(columns))
{
}

void EditTableModel::setColumns(std::vector<EditColumn> columns)
{
    beginResetModel();
    m_columns = std::move(columns);
    endResetModel();
}

void EditTableModel::setRows(std::vector<EditRow> rows)
{
    beginResetModel();
    m_rows = std::move(rows);
    for (EditRow& row : m_rows)
        row.cells.resize(static_cast<qsizetype>(m_columns.size()));
    endResetModel();
}

EditRow EditTableModel::blankRow() const
{
    EditRow row;
    for (const EditColumn& column : m_columns)
        row.cells << column.blank;
    return row;
}

void EditTableModel::insertBlank(int at)
{
    const int row = std::clamp(at, 0, rowCount());
    m_judgesUntouched = false;
    beginInsertRows({}, row, row);
    m_rows.insert(m_rows.begin() + row, blankRow());
    endInsertRows();
    Q_EMIT edited();
}

void EditTableModel::removeAt(int row)
{
    if (row < 0 || row >= rowCount())
        return;
    beginRemoveRows({}, row, row);
    m_rows.erase(m_rows.begin() + row);
    endRemoveRows();
    Q_EMIT edited();
}

void EditTableModel::removeBlankAtEnd()
{
    while (!m_rows.empty() && m_rows.back() == blankRow())
        removeAt(rowCount() - 1);
}

void EditTableModel::moveTo(int from, int to)
{
    if (from == to || from < 0 || to < 0 || from >= rowCount() || to >= rowCount())
        return;
    beginMoveRows({}, from, from, {}, to > from ? to + 1 : to);
    EditRow row = std::move(m_rows[static_cast<std::size_t>(from)]);
    m_rows.erase(m_rows.begin() + from);
    m_rows.insert(m_rows.begin() + to, std::move(row));
    endMoveRows();
    Q_EMIT edited();
}

void EditTableModel::showCell(int row, int column, const QString& text)
{
    if (row < 0 || row >= rowCount() || cells(row).value(column) == text)
        return;
    m_rows[static_cast<std::size_t>(row)].cells[column] = text;
    // The value of one cell can make another one invalid.
    Q_EMIT dataChanged(index(row, 0), index(row, columnCount() - 1));
}

void EditTableModel::setCell(int row, int column, const QString& text)
{
    if (row < 0 || row >= rowCount() || cells(row).value(column) == text)
        return;
    showCell(row, column, text);
    Q_EMIT edited();
}

bool EditTableModel::isUsed(int row, int column) const
{
    const auto& used = this->column(column).used;
    return !used || used(cells(row));
}

QString EditTableModel::refusalAt(int row, int column) const
{
    const auto& refusal = this->column(column).refusal;
    if (!m_judgesUntouched && cells(row) == blankRow().cells)
        return {};
    return refusal && isUsed(row, column) ? refusal(cells(row)) : QString();
}

void EditTableModel::judgeUntouched()
{
    m_judgesUntouched = true;
    if (rowCount() > 0)
        Q_EMIT dataChanged(index(0, 0), index(rowCount() - 1, columnCount() - 1));
}

QModelIndex EditTableModel::firstRefused() const
{
    for (int row = 0; row < rowCount(); ++row) {
        for (int column = 0; column < columnCount(); ++column) {
            if (!refusalAt(row, column).isEmpty())
                return index(row, column);
        }
    }
    return {};
}

int EditTableModel::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
}

int EditTableModel::columnCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_columns.size());
}

QVariant EditTableModel::data(const QModelIndex& at, int role) const
{
    if (!checkIndex(at, CheckIndexOption::IndexIsValid))
        return {};
    const EditColumn& column = this->column(at.column());
    switch (role) {
    case Qt::DisplayRole:
        return isUsed(at.row(), at.column()) ? cells(at.row())[at.column()] : dash;
    case Qt::EditRole:
        return cells(at.row())[at.column()];
    case Qt::ToolTipRole:
    case RefusedRole: {
        const QString refusal = refusalAt(at.row(), at.column());
        return role == RefusedRole || !refusal.isEmpty() ? refusal : cells(at.row())[at.column()];
    }
    case Qt::AccessibleDescriptionRole:
        return refusalAt(at.row(), at.column());
    case ChoicesRole:
        return column.choices;
    case TimeRole:
        return column.time;
    case SampleRole:
        if (!column.sample.isEmpty() || column.readOnly)
            return column.sample;
        return column.numeric ? QStringLiteral("0000.00") : Words::tr("a short name");
    case Qt::TextAlignmentRole:
        return QVariant((column.numeric ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
    default:
        return {};
    }
}

bool EditTableModel::setData(const QModelIndex& at, const QVariant& value, int role)
{
    if (role != Qt::EditRole || !checkIndex(at, CheckIndexOption::IndexIsValid))
        return false;
    setCell(at.row(), at.column(), value.toString());
    return true;
}

QVariant EditTableModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (orientation != Qt::Horizontal || section < 0 || section >= columnCount())
        return {};
    if (role == Qt::DisplayRole)
        return column(section).title;
    if (role == Qt::TextAlignmentRole)
        return QVariant((column(section).numeric ? Qt::AlignRight : Qt::AlignLeft) |
                        Qt::AlignVCenter);
    return {};
}

Qt::ItemFlags EditTableModel::flags(const QModelIndex& at) const
{
    if (!at.isValid())
        return Qt::NoItemFlags;
    Qt::ItemFlags flags = Qt::ItemIsSelectable | Qt::ItemIsEnabled;
    if (!column(at.column()).readOnly && isUsed(at.row(), at.column()))
        flags |= Qt::ItemIsEditable;
    return flags;
}

} // namespace holdband::ui
