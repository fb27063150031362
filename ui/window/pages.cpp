#include "ui/window/pages.h"

#include "ui/charts/run_charts.h"
#include "ui/equipment/equipment_page.h"
#include "ui/imports/imports_page.h"
#include "ui/rounds/rounds_page.h"
#include "ui/run/run_page.h"
#include "ui/session/session.h"
#include "ui/sidebyside/side_by_side_page.h"

namespace holdband::ui {

Pages::Pages(Session& session, QWidget* parent)
    : QStackedWidget(parent), m_rounds(new RoundsPage(session, this)),
      m_run(new RunPage(session, this)), m_sideBySide(new SideBySidePage(session, this)),
      m_equipment(new EquipmentPage(session, this)), m_imports(new ImportsPage(session, this))
{
    for (QWidget* page :
         std::initializer_list<QWidget*>{m_rounds, m_run, m_sideBySide, m_equipment, m_imports})
        addWidget(page);
    setPage(PageId::run);
    connect(m_rounds, &RoundsPage::sheetShown, this, &Pages::subtitleChanged);
    connect(m_run, &RunPage::reviewShown, this, &Pages::subtitleChanged);
    connect(m_run, &RunPage::failed, this, &Pages::failed);
    connect(m_sideBySide, &SideBySidePage::comparisonShown, this, &Pages::subtitleChanged);
    connect(m_equipment, &EquipmentPage::equipmentShown, this, &Pages::subtitleChanged);
    connect(m_equipment, &EquipmentPage::failed, this, &Pages::failed);
    connect(m_imports, &ImportsPage::looked, this, &Pages::subtitleChanged);
}

void Pages::setPage(PageId page)
{
    setCurrentIndex(static_cast<int>(page));
    if (page == PageId::rounds)
        m_rounds->focusFirst();
}

PageId Pages::page() const
{
    return static_cast<PageId>(currentIndex());
}

void Pages::clear()
{
    m_rounds->clear();
    m_run->clear();
    m_sideBySide->clear();
    m_equipment->clear();
    m_imports->clear();
}

void Pages::refresh()
{
    m_rounds->refresh();
    m_equipment->refresh();
    m_imports->refresh();
    if (!m_run->batch().isEmpty())
        m_run->showBatch(m_run->batch());
}

void Pages::setLanes(const review::LanesReview& lanes)
{
    m_sideBySide->setLanes(lanes);
}

void Pages::zoom(Zoom zoom)
{
    TimeView& time = m_run->charts()->time();
    if (page() != PageId::run)
        return;
    if (zoom == Zoom::all)
        time.showAll();
    else
        time.zoom(zoom == Zoom::in ? 0.7 : 1.0 / 0.7);
}

QString Pages::subtitle() const
{
    switch (page()) {
    case PageId::rounds:
        return m_rounds->subtitle();
    case PageId::run:
        return m_run->subtitle();
    case PageId::sideBySide:
        return m_sideBySide->subtitle();
    case PageId::equipment:
        return m_equipment->subtitle();
    case PageId::imports:
        break;
    }
    return m_imports->subtitle();
}

} // namespace holdband::ui
