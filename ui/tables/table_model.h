// A read-only table of ready-made words, filled at once: what the page's cards show.
#pragma once

#include <QAbstractTableModel>
#include <QStringList>
#include <vector>

namespace holdband::ui {

struct TableCell {
    QString text;
    QString why; ///< tooltip: how it came about
    bool strong = false;
};

struct TableWords {
    QStringList header;
    std::vector<std::vector<TableCell>> rows; ///< each as long as the header
    std::vector<bool> numeric;                ///< columns that stand right-aligned
};

class TableModel : public QAbstractTableModel {
    Q_OBJECT
public:
    using QAbstractTableModel::QAbstractTableModel;

    void setWords(TableWords words);
    const TableWords& words() const { return m_words; }

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    Qt::Alignment alignment(int column) const;
    TableWords m_words;
};

} // namespace holdband::ui
