// The card with the most recent rounds. Missed ones are open circles, corrected ones underlined.
// Enter, a digit or a double click on a cell opens it; Enter there saves and goes to the next
// round.
#pragma once

#include "ui/rounds/rounds_grid_model.h"
#include "ui/theme/card.h"

class QLabel;
class QPushButton;
class QTableView;

namespace holdband::ui {

class CorrectionBar;
class Session;

class RoundsGrid : public Card {
    Q_OBJECT
public:
    explicit RoundsGrid(Session& session, QWidget* parent = nullptr);

    void setSheet(results::RoundsSheet sheet);
    void clear();
    /// How many sheets of 14 rounds before the most recent ones to show.
    int sheetsBack() const { return m_sheetsBack; }
    QPushButton* earlier() const { return m_earlier; }
    QPushButton* later() const { return m_later; }
    RoundsGridModel* model() const { return m_model; }
    QTableView* table() const { return m_table; }
    CorrectionBar* correction() const { return m_correction; }
    /// What to do here, and the signs that occur.
    QLabel* legend() const { return m_legend; }

Q_SIGNALS:
    void corrected(const QString& words);
    void turned(); ///< the user wants other rounds

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    RoundsGridModel* m_model;
    QTableView* m_table;
    CorrectionBar* m_correction;
    Session* m_session;

    QLabel* m_legend;
    QPushButton* m_earlier;
    QPushButton* m_later;
    int m_sheetsBack = 0;

    QLayout* makeFoot();
    void turn(int sheets);
    void open(const QModelIndex& index);
    bool openTyped(const QString& text);
    void moveOn();
    void fitSections();
    void fitHeight();
    QString legendText() const;
};

} // namespace holdband::ui
