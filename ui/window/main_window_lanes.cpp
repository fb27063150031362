// The main window and its lanes: what they show, and the batch that is opened first.
#include "ui/window/main_window.h"

#include "core/results/overview/lanes_cache.h"
#include "core/store/records/equipment.h"
#include "ui/lanes/lanes_view.h"
#include "ui/rounds/reminder.h"
#include "ui/run/run_page.h"
#include "ui/window/notice_bar.h"
#include "ui/window/pages.h"
#include "ui/window/welcome_page.h"
#include "ui/words/words.h"

#include <QFileInfo>
#include <QStackedWidget>
#include <algorithm>

namespace holdband::ui {

namespace {

struct LanesAndZone {
    results::LanesReview lanes;
    Zone zone;
};

Result<LanesAndZone> readLanes(const store::LogbookFile& file, results::LanesCache& cache)
{
    auto lanes = results::reviewLanes(file, &cache, decimalSign());
    if (!lanes)
        return failure(lanes.error());
    auto settings = store::readSettings(file);
    if (!settings)
        return failure(settings.error());
    auto zone = Zone::named(settings->zone);
    if (!zone)
        return failure(zone.error());
    return LanesAndZone{std::move(*lanes), *zone};
}

} // namespace

void MainWindow::refreshLanes()
{
    const auto read = [cache = m_lanesCache](const store::LogbookFile& file) {
        return readLanes(file, *cache);
    };
    m_session.ask<LanesAndZone>(this, read, [this](Result<LanesAndZone> lanes) {
        if (lanes)
            takeLanes(std::move(lanes->lanes), lanes->zone);
        else
            m_notice->say(sentence(lanes.error()));
    });
}

void MainWindow::takeLanes(results::LanesReview lanes, const Zone& zone)
{
    QStringList running;
    bool any = false;
    for (const results::Lane& lane : lanes.lanes) {
        any = any || !lane.bars.empty();
        for (const results::LaneBar& bar : lane.bars) {
            if (bar.open && !running.contains(shown(lane.setup)))
                running << shown(lane.setup);
        }
    }
    m_welcome->setState(WelcomePage::State::emptyLogbook, QFileInfo(m_session.path()).fileName());
    // The steps are shown until something is chosen, or there is a first batch.
    if (any || m_freshlyOpened)
        m_outer->setCurrentIndex(any ? 1 : 0);
    m_freshlyOpened = false;
    refreshSteps();
    m_pages->setLanes(lanes);
    if (m_pages->run()->batch().isEmpty())
        chooseFirst(lanes);
    m_lanes->setReview(std::move(lanes), zone);
    if (!m_lanes->chosen().contains(m_pages->run()->batch()))
        m_lanes->setChosen({m_pages->run()->batch()});
    m_running = running;
    m_reminder->look();
}

namespace {

bool hasBatch(const results::LanesReview& lanes, const QString& batch)
{
    return std::any_of(lanes.lanes.begin(), lanes.lanes.end(), [&](const results::Lane& lane) {
        return std::any_of(lane.bars.begin(), lane.bars.end(),
                           [&](const results::LaneBar& bar) { return shown(bar.batch) == batch; });
    });
}

} // namespace

/// Chooses the batch asked for, else the open one, else the last one pitched.
void MainWindow::chooseFirst(const results::LanesReview& lanes)
{
    const results::LaneBar* best = nullptr;
    for (const results::Lane& lane : lanes.lanes) {
        for (const results::LaneBar& bar : lane.bars) {
            const bool later = !best || bar.span.start > best->span.start;
            if (!best || (bar.open && !best->open) || (bar.open == best->open && later))
                best = &bar;
        }
    }
    const QString batch = hasBatch(lanes, m_firstBatch) ? m_firstBatch
                          : best                        ? shown(best->batch)
                                                        : QString();
    if (!batch.isEmpty())
        m_pages->run()->showBatch(batch);
    m_firstBatch.clear();
}

} // namespace holdband::ui
