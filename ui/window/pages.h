// The five pages in a stack, and what each needs when another logbook is opened or this one has
// changed.
#pragma once

#include "core/review/lanes.h"
#include "ui/window/menus.h"
#include "ui/window/page_row.h"

#include <QStackedWidget>

namespace holdband::ui {

class EquipmentPage;
class ImportsPage;
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
    /// Forgets what was shown of another logbook.
    void clear();
    /// Fetches everything shown anew.
    void refresh();
    /// The batches and setups to choose from.
    void setLanes(const review::LanesReview& lanes);
    /// Zooms the chart of the page, where it has one.
    void zoom(Zoom zoom);
    /// What the page row says beside the pages.
    QString subtitle() const;

    RoundsPage* rounds() const { return m_rounds; }
    RunPage* run() const { return m_run; }
    SideBySidePage* sideBySide() const { return m_sideBySide; }
    EquipmentPage* equipment() const { return m_equipment; }
    ImportsPage* imports() const { return m_imports; }

Q_SIGNALS:
    void subtitleChanged();
    void failed(const QString& sentence);

private:
    RoundsPage* m_rounds;
    RunPage* m_run;
    SideBySidePage* m_sideBySide;
    EquipmentPage* m_equipment;
    ImportsPage* m_imports;
};

} // namespace holdband::ui
