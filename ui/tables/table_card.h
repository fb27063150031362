// A card that holds one quiet table and a remark beneath it.
#pragma once

#include "ui/tables/plain_table.h"
#include "ui/tables/table_model.h"
#include "ui/theme/card.h"

namespace holdband::ui {

class TableCard : public Card {
    Q_OBJECT
public:
    /// `wide`: the column that takes the room left over.
    TableCard(const QString& title, int wide, QWidget* parent = nullptr);

    void setWords(TableWords words);
    /// Beneath the table; an empty one takes no room.
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
