#include "ui/window/pages.h"

#include "ui/charts/run_charts.h"
#include "ui/comparison/side_by_side_page.h"
#include "ui/equipment/equipment_actions.h"
#include "ui/equipment/equipment_page.h"
#include "ui/forecast/next_batch_page.h"
#include "ui/imports/imports_page.h"
#include "ui/rounds/rounds_page.h"
#include "ui/run/run_page.h"
#include "ui/session/session.h"

#include <QTimer>

namespace holdband::ui {

namespace {

constexpr int quietAfter = 250;  ///< milliseconds from showing the window to making the other pages
constexpr int quietBetween = 30; ///< between two pages, so that the user's input is handled

} // namespace

Pages::Pages(Session& session, QWidget* parent)
    : QStackedWidget(parent), m_session(&session), m_run(new RunPage(session, this))
{
    addWidget(m_run);
    connect(m_run, &RunPage::reviewShown, this, &Pages::subtitleChanged);
    connect(m_run, &RunPage::failed, this, &Pages::failed);
    connect(m_run, &RunPage::batchWanted, this, &Pages::batchWanted);
}

RoundsPage* Pages::rounds()
{
    if (!m_rounds)
        makeRounds();
    return m_rounds;
}

SideBySidePage* Pages::sideBySide()
{
    if (!m_sideBySide)
        makeSideBySide();
    return m_sideBySide;
}

NextBatchPage* Pages::nextBatch()
{
    if (!m_nextBatch)
        makeNextBatch();
    return m_nextBatch;
}

EquipmentPage* Pages::equipment()
{
    if (!m_equipment)
        makeEquipment();
    return m_equipment;
}

ImportsPage* Pages::imports()
{
    if (!m_imports)
        makeImports();
    return m_imports;
}

void Pages::makeRounds()
{
    m_rounds = new RoundsPage(*m_session, this);
    addWidget(m_rounds);
    connect(m_rounds, &RoundsPage::sheetShown, this, &Pages::subtitleChanged);
    connect(m_rounds, &RoundsPage::tablePasted, this, &Pages::tablePasted);
    connect(m_rounds, &RoundsPage::meterWanted, this,
            [this] { equipment()->actions()->addMeter(); });
    if (m_session->isOpen())
        m_rounds->refresh();
}

void Pages::makeSideBySide()
{
    m_sideBySide = new SideBySidePage(*m_session, this);
    addWidget(m_sideBySide);
    connect(m_sideBySide, &SideBySidePage::comparisonShown, this, &Pages::subtitleChanged);
    connect(m_sideBySide, &SideBySidePage::batchWanted, this, &Pages::batchWanted);
    m_sideBySide->setLanes(m_lanes);
}

void Pages::makeNextBatch()
{
    m_nextBatch = new NextBatchPage(*m_session, this);
    addWidget(m_nextBatch);
    connect(m_nextBatch, &NextBatchPage::forecastShown, this, &Pages::subtitleChanged);
    connect(m_nextBatch, &NextBatchPage::pitchWanted, this, &Pages::pitchWanted);
    connect(m_nextBatch, &NextBatchPage::planWanted, this,
            [this] { equipment()->actions()->addPlan(); });
    if (m_session->isOpen())
        m_nextBatch->refresh();
}

void Pages::makeEquipment()
{
    m_equipment = new EquipmentPage(*m_session, this);
    addWidget(m_equipment);
    connect(m_equipment, &EquipmentPage::equipmentShown, this, &Pages::subtitleChanged);
    connect(m_equipment, &EquipmentPage::failed, this, &Pages::failed);
    if (m_session->isOpen())
        m_equipment->refresh();
}

void Pages::makeImports()
{
    m_imports = new ImportsPage(*m_session, this);
    addWidget(m_imports);
    connect(m_imports, &ImportsPage::looked, this, &Pages::subtitleChanged);
    connect(m_imports, &ImportsPage::chooseWanted, this, &Pages::logsWanted);
    if (m_session->isOpen())
        m_imports->refresh();
}

/// The page of imports first, because it polls the watched files.
bool Pages::makeNext()
{
    for (const PageId page : {PageId::imports, PageId::rounds, PageId::sideBySide,
                              PageId::nextBatch, PageId::equipment}) {
        const int before = count();
        widgetOf(page);
        if (count() > before)
            return true;
    }
    return false;
}

void Pages::showEvent(QShowEvent* event)
{
    QStackedWidget::showEvent(event);
    QTimer::singleShot(quietAfter, this, &Pages::makeRest);
}

void Pages::makeRest()
{
    if (makeNext())
        QTimer::singleShot(quietBetween, this, &Pages::makeRest);
}

QWidget* Pages::widgetOf(PageId page)
{
    switch (page) {
    case PageId::rounds:
        return rounds();
    case PageId::run:
        return m_run;
    case PageId::sideBySide:
        return sideBySide();
    case PageId::nextBatch:
        return nextBatch();
    case PageId::equipment:
        return equipment();
    case PageId::imports:
        break;
    }
    return imports();
}

void Pages::setPage(PageId page)
{
    m_page = page;
    setCurrentWidget(widgetOf(page));
    if (page == PageId::rounds)
        m_rounds->focusFirst();
}

PageId Pages::page() const
{
    return m_page;
}

void Pages::clear()
{
    m_run->clear();
    if (m_rounds)
        m_rounds->clear();
    if (m_sideBySide)
        m_sideBySide->clear();
    if (m_nextBatch)
        m_nextBatch->clear();
    if (m_equipment)
        m_equipment->clear();
    if (m_imports)
        m_imports->clear();
}

void Pages::refresh()
{
    if (m_nextBatch)
        m_nextBatch->refresh();
    if (m_rounds)
        m_rounds->refresh();
    if (m_equipment)
        m_equipment->refresh();
    if (m_imports)
        m_imports->refresh();
    m_run->showAgain();
}

void Pages::setLanes(const results::LanesReview& lanes)
{
    m_lanes = lanes;
    if (m_sideBySide)
        m_sideBySide->setLanes(lanes);
}

bool Pages::hasTypedRound() const
{
    return m_rounds && m_rounds->hasTyped();
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
    case PageId::nextBatch:
        return m_nextBatch->subtitle();
    case PageId::equipment:
        return m_equipment->subtitle();
    case PageId::imports:
        break;
    }
    return m_imports->subtitle();
}

} // namespace holdband::ui
