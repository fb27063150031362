// A card with one simple table and a remark below it.
#pragma once

#include "ui/tables/plain_table.h"
#include "ui/tables/table_model.h"
#include "ui/theme/card.h"

namespace holdband::ui {

class TableCard : public Card {
    Q_OBJECT
public:
    /// `wide`: the column that gets the remaining width.
    TableCard(const QString& title, int wide, QWidget* parent = nullptr);

    void setWords(TableText words);
    /// Shown below the table; takes no space if empty.
    void setRemark(const QString& remark);
    void setHeaderShown(bool wanted);
    PlainTable* table() const { return m_table; }
    TableModel* model() const { return m_model; }

private:
    int m_wide;
    TableModel* m_model;
    PlainTable* m_table;
    QLabel* m_remark;
};

} // namespace holdband::ui
