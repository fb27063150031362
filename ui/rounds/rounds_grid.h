// The card with the last rounds. Missed ones are open circles, corrected ones underlined. Enter or
// a double click on a cell opens it for correction.
#pragma once

#include "ui/rounds/rounds_grid_model.h"
#include "ui/theme/card.h"

class QTableView;

namespace holdband::ui {

class CorrectionBar;
class Session;

class RoundsGrid : public Card {
    Q_OBJECT
public:
    explicit RoundsGrid(Session& session, QWidget* parent = nullptr);

    void setSheet(review::RoundsSheet sheet);
    RoundsGridModel* model() const { return m_model; }
    QTableView* table() const { return m_table; }
    CorrectionBar* correction() const { return m_correction; }

Q_SIGNALS:
    void corrected(const QString& words);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    RoundsGridModel* m_model;
    QTableView* m_table;
    CorrectionBar* m_correction;
    Session* m_session;

    void open(const QModelIndex& index);
};

} // namespace holdband::ui
