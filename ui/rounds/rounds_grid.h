// The card with the last rounds. Missed ones are open circles, corrected ones underlined.
#pragma once

#include "ui/rounds/rounds_grid_model.h"
#include "ui/theme/card.h"

class QTableView;

namespace holdband::ui {

class RoundsGrid : public Card {
    Q_OBJECT
public:
    explicit RoundsGrid(QWidget* parent = nullptr);

    void setSheet(review::RoundsSheet sheet);
    RoundsGridModel* model() const { return m_model; }

private:
    RoundsGridModel* m_model;
    QTableView* m_table;
};

} // namespace holdband::ui
