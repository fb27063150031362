#include "ui/run/batch_watch.h"

#include "core/store/records/watches.h"
#include "ui/session/session.h"
#include "ui/words/words.h"

#include <QTimer>
#include <algorithm>

namespace holdband::ui {

using results::BatchEvent;
using results::BatchState;

namespace {

/// None while nothing is watched.
Result<std::vector<BatchState>> readWatched(const store::LogbookFile& file)
{
    auto watches = store::readWatches(file);
    HOLDBAND_TRY(watches);
    if (watches->empty())
        return std::vector<BatchState>();
    return results::openBatchStates(file, decimalSign());
}

} // namespace

std::vector<BatchEvent> ToldEvents::take(const BatchState& state, Instant now)
{
    const bool firstSeen = m_batches.insert(state.batch).second;
    std::vector<BatchEvent> fresh;
    for (BatchEvent& event : results::eventsOf(state, now)) {
        const bool told = std::any_of(m_told.begin(), m_told.end(),
                                      [&](const BatchEvent& each) { return each.isSame(event); });
        if (told)
            continue;
        m_told.push_back(event);
        if (!firstSeen)
            fresh.push_back(std::move(event));
    }
    return fresh;
}

void ToldEvents::forget()
{
    m_told.clear();
    m_batches.clear();
}

BatchWatch::BatchWatch(Session& session, Notify notify, QObject* parent)
    : QObject(parent), m_session(&session), m_notify(std::move(notify))
{
    auto* clock = new QTimer(this);
    clock->start(clockEvery);
    connect(clock, &QTimer::timeout, this, &BatchWatch::lookAtClock);
    // Queued, so that the pages ask the reading worker first.
    connect(m_session, &Session::changed, this, &BatchWatch::look, Qt::QueuedConnection);
    connect(
        m_session, &Session::opened, this,
        [this] {
            m_states.clear();
            m_told.forget();
            look();
        },
        Qt::QueuedConnection);
}

void BatchWatch::setOn(bool on)
{
    m_on = on;
    m_states.clear();
    m_told.forget();
    look();
}

void BatchWatch::look()
{
    if (!m_on || !m_session->isOpen() || m_session->readOnly())
        return;
    m_session->ask<std::vector<BatchState>>(this, readWatched,
                                            [this](Result<std::vector<BatchState>> states) {
                                                if (states && m_on)
                                                    take(std::move(*states));
                                            });
}

void BatchWatch::lookAtClock()
{
    if (m_clock.ranEvenly(m_session->now()))
        tell();
}

void BatchWatch::tell()
{
    for (const BatchState& state : m_states) {
        for (const BatchEvent& event : m_told.take(state, m_session->now()))
            m_notify(shown(event.batch), shown(event.sentence));
    }
}

void BatchWatch::take(std::vector<BatchState> states)
{
    m_states = std::move(states);
    tell();
}

} // namespace holdband::ui
