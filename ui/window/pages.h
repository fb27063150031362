// The six pages in a stack, and their updates when another logbook is opened or this one has
// changed. A page is made when it is first needed, or when idle after the window is shown.
#pragma once

#include "core/results/overview/lanes.h"
#include "ui/plans/planned_batch.h"
#include "ui/window/menus.h"
#include "ui/window/page_row.h"

#include <QStackedWidget>

namespace holdband::ui {

class EquipmentPage;
class ImportsPage;
class NextBatchPage;
class RoundsPage;
class RunPage;
class Session;
class SideBySidePage;

class Pages : public QStackedWidget {
    Q_OBJECT
public:
    explicit Pages(Session& session, QWidget* parent = nullptr);

    void setPage(PageId page);
    PageId page() const;
    /// Clears what was shown of another logbook.
    void clear();
    /// Fetches everything shown again.
    void refresh();
    /// The batches and setups to choose from.
    void setLanes(const results::LanesReview& lanes);
    /// Zooms the chart of the page, if it has one.
    void zoom(Zoom zoom);
    /// The text that the page row shows beside the pages.
    QString subtitle() const;
    /// Whether a round was begun and not saved.
    bool hasTypedRound() const;

    RoundsPage* rounds();
    RunPage* run() const { return m_run; }
    SideBySidePage* sideBySide();
    NextBatchPage* nextBatch();
    EquipmentPage* equipment();
    ImportsPage* imports();

    /// Makes the next page not made yet; false if all exist.
    bool makeNext();

Q_SIGNALS:
    void subtitleChanged();
    void failed(const QString& sentence);
    void tablePasted(const QString& text);
    void logsWanted();
    void batchWanted();
    /// A forecast is to be pitched.
    void pitchWanted(const holdband::ui::PlannedBatch& planned);

protected:
    void showEvent(QShowEvent* event) override;

private:
    QWidget* widgetOf(PageId page);
    void makeRounds();
    void makeSideBySide();
    void makeNextBatch();
    void makeEquipment();
    void makeImports();
    void makeRest();

    Session* m_session;
    PageId m_page = PageId::run;
    results::LanesReview m_lanes;
    RunPage* m_run;
    RoundsPage* m_rounds = nullptr;
    SideBySidePage* m_sideBySide = nullptr;
    NextBatchPage* m_nextBatch = nullptr;
    EquipmentPage* m_equipment = nullptr;
    ImportsPage* m_imports = nullptr;
};

} // namespace holdband::ui
