// The most recent rounds as a table: a row for each line of the round, a column for each round.
#pragma once

#include "core/results/rounds/rounds_sheet.h"

#include <QAbstractTableModel>

namespace holdband::ui {

class RoundsGridModel : public QAbstractTableModel {
    Q_OBJECT
public:
    enum Role { MissedRole = Qt::UserRole + 1, CorrectedRole };

    using QAbstractTableModel::QAbstractTableModel;
    void setSheet(results::RoundsSheet sheet);
    const results::RoundsSheet& sheet() const { return m_sheet; }

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    /// The first round of the row without a reading; else -1.
    int firstEmpty(int row) const;
    bool anyMissed() const;
    bool anyCorrected() const;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    template <typename Test>
    bool anyCell(const Test& test) const;
    QVariant cellData(const results::RoundCell& cell, int role) const;
    results::RoundsSheet m_sheet;
};

} // namespace holdband::ui
