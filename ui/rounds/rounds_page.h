// The page for the twice-daily round of readings: a row for each meter, one save, usable by
// keyboard alone.
#pragma once

#include "core/results/rounds/rounds_sheet.h"

#include <QWidget>
#include <optional>

class QGridLayout;
class QLabel;
class QPushButton;

namespace holdband::ui {

class Card;
class EmptyPage;
class RoundLine;
class RoundTime;
class RoundsGrid;
class RunningView;
class Session;

class RoundsPage : public QWidget {
    Q_OBJECT
public:
    explicit RoundsPage(Session& session, QWidget* parent = nullptr);

    void refresh();
    void clear();
    void save();
    /// The form for two weeks, as a PDF or on a printer.
    void savePaper(const QString& path);
    void printPaper();
    const QString& subtitle() const { return m_subtitle; }
    /// Finds a row by the name of its meter, sensor or batch.
    RoundLine* row(const QString& name) const;
    RoundTime* time() const { return m_time; }
    RoundsGrid* grid() const { return m_grid; }
    /// The energy of the running batches; hidden if none of them is metered.
    RunningView* running() const { return m_running; }
    QString message() const;
    /// Shown instead of the round while there is nothing to read.
    EmptyPage* empty() const { return m_empty; }
    /// Whether there is unsaved text.
    bool hasTyped() const;
    void focusFirst();

Q_SIGNALS:
    void sheetShown();
    /// A first meter is to be added.
    void meterWanted();
    /// Rows of times and readings were pasted, as from a spreadsheet: for the imports page.
    void tablePasted(const QString& text);

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    void layOut();
    QWidget* makeBar();
    QWidget* makePaperRow();
    void askPaper();
    void refreshSheet();
    void takeSheet(results::RoundsSheet sheet);
    void rebuildRows(const results::RoundsSheet& sheet);
    void addHeading();
    void showWeeks();
    void step(RoundLine* from, int by);
    void takeTime();
    void check(RoundLine* row);
    void checkHand(RoundLine* row);
    void replaceMeter(RoundLine* row);
    void enterRow(RoundLine* row);
    void rowSettled(RoundLine* row);
    void moveOn(RoundLine* row);
    void continueSave();
    void storeRound();
    void say(const QString& words, bool trouble);

    Session* m_session;
    Card* m_card;
    QGridLayout* m_gridLayout;
    RoundTime* m_time;
    QPushButton* m_save;
    QLabel* m_message;
    QLabel* m_weekHeading = nullptr; ///< shown above the charts of the week
    RoundsGrid* m_grid;
    RunningView* m_running;
    EmptyPage* m_empty;
    QWidget* m_area = nullptr; ///< the round and its grid
    std::vector<RoundLine*> m_rows;
    RoundLine* m_entered = nullptr; ///< Enter was pressed in it; its check is still running
    bool m_saveWanted = false;      ///< save when all rows are checked
    bool m_saving = false;          ///< the save is running
    QString m_subtitle;
};

} // namespace holdband::ui
