#include "ui/tables/table_model.h"

#include <QFont>

namespace holdband::ui {

void TableModel::setWords(TableText words)
{
    beginResetModel();
    m_words = std::move(words);
    endResetModel();
}

int TableModel::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_words.rows.size());
}

int TableModel::columnCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_words.header.size());
}

Qt::Alignment TableModel::alignment(int column) const
{
    const auto index = static_cast<std::size_t>(column);
    const bool right = index < m_words.numeric.size() && m_words.numeric[index];
    return (right ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter;
}

QVariant TableModel::data(const QModelIndex& index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid))
        return {};
    const TableCell& cell =
        m_words
            .rows[static_cast<std::size_t>(index.row())][static_cast<std::size_t>(index.column())];
    switch (role) {
    case Qt::DisplayRole:
        return cell.text;
    case Qt::ToolTipRole:
        return cell.why.isEmpty() ? QVariant(cell.text) : QVariant(cell.why);
    case Qt::AccessibleDescriptionRole:
        return cell.why;
    case Qt::TextAlignmentRole:
        return QVariant(alignment(index.column()));
    case Qt::FontRole: {
        if (!cell.strong)
            return {};
        QFont font;
        font.setWeight(QFont::DemiBold);
        return font;
    }
    default:
        return {};
    }
}

QVariant TableModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (orientation != Qt::Horizontal || section < 0 || section >= columnCount())
        return {};
    if (role == Qt::DisplayRole)
        return m_words.header[section];
    if (role == Qt::TextAlignmentRole)
        return QVariant(alignment(section));
    return {};
}

} // namespace holdband::ui
