#include "ui/rounds/rounds_grid_model.h"

#include "core/text/times.h"
#include "ui/words/choice_text.h"
#include "ui/words/words.h"

#include <algorithm>

namespace holdband::ui {

namespace {

/// A header drawn by a style sheet does not elide its text automatically.
QString shortened(const QString& name)
{
    constexpr qsizetype most = 22;
    return name.size() <= most ? name : name.left(most - 1) + QStringLiteral("…");
}

} // namespace

void RoundsGridModel::setSheet(results::RoundsSheet sheet)
{
    beginResetModel();
    m_sheet = std::move(sheet);
    endResetModel();
}

int RoundsGridModel::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_sheet.rows.size());
}

int RoundsGridModel::columnCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_sheet.columns.size());
}

QVariant RoundsGridModel::cellData(const results::RoundCell& cell, int role) const
{
    switch (role) {
    case Qt::DisplayRole:
        return cell.value ? numberText(*cell.value, cell.decimals) : QString();
    case Qt::ToolTipRole:
        return cell.missed ? Words::tr("missed", "of a round") : shown(cell.history);
    case Qt::AccessibleTextRole:
        if (cell.missed)
            return Words::tr("missed", "of a round");
        return cell.value ? numberText(*cell.value, cell.decimals) : Words::tr("not read");
    case Qt::TextAlignmentRole:
        return QVariant(Qt::AlignCenter);
    case MissedRole:
        return cell.missed;
    case CorrectedRole:
        return !cell.history.empty();
    default:
        return {};
    }
}

QVariant RoundsGridModel::data(const QModelIndex& index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid))
        return {};
    return cellData(m_sheet.cells[static_cast<std::size_t>(index.row())]
                                 [static_cast<std::size_t>(index.column())],
                    role);
}

int RoundsGridModel::firstEmpty(int row) const
{
    const auto& cells = m_sheet.cells[static_cast<std::size_t>(row)];
    const auto found = std::find_if(cells.begin(), cells.end(),
                                    [](const results::RoundCell& cell) { return !cell.value; });
    return found == cells.end() ? -1 : static_cast<int>(found - cells.begin());
}

template <typename Test>
bool RoundsGridModel::anyCell(const Test& test) const
{
    return std::any_of(m_sheet.cells.begin(), m_sheet.cells.end(),
                       [&](const std::vector<results::RoundCell>& row) {
                           return std::any_of(row.begin(), row.end(), test);
                       });
}

bool RoundsGridModel::anyMissed() const
{
    return anyCell([](const results::RoundCell& cell) { return cell.missed; });
}

bool RoundsGridModel::anyCorrected() const
{
    return anyCell([](const results::RoundCell& cell) { return !cell.history.empty(); });
}

QVariant RoundsGridModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    const auto index = static_cast<std::size_t>(section);
    const bool help = role == Qt::ToolTipRole && orientation == Qt::Vertical;
    if (section < 0 || (role != Qt::DisplayRole && !help))
        return {};
    if (orientation == Qt::Vertical)
        return index < m_sheet.rows.size()
                   ? QVariant(help ? shown(m_sheet.rows[index].name)
                                   : shortened(shown(m_sheet.rows[index].name)))
                   : QVariant();
    if (index >= m_sheet.columns.size())
        return {};
    const results::RoundColumn& round = m_sheet.columns[index];
    return shown(shortDateText(round.date)) + QLatin1Char('\n') +
           roundWordInLine(m_sheet.windowOf(round).label);
}

} // namespace holdband::ui
