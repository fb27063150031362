// A read-only table of finished texts, set all at once: the contents of the pages' cards.
#pragma once

#include <QAbstractTableModel>
#include <QStringList>
#include <vector>

namespace holdband::ui {

struct TableCell {
    QString text;
    QString why; ///< tooltip: how it was computed
    bool strong = false;
};

struct TableText {
    QStringList header;
    std::vector<std::vector<TableCell>> rows; ///< each as long as the header
    std::vector<bool> numeric;                ///< right-aligned columns
};

class TableModel : public QAbstractTableModel {
    Q_OBJECT
public:
    using QAbstractTableModel::QAbstractTableModel;

    void setWords(TableText words);
    const TableText& words() const { return m_words; }

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    Qt::Alignment alignment(int column) const;
    TableText m_words;
};

} // namespace holdband::ui
