#include "ui/charts/span_mark.h"

#include <algorithm>

namespace holdband::ui {

void SpanMark::setWanted(bool wanted)
{
    if (wanted == m_wanted)
        return;
    m_wanted = wanted;
    Q_EMIT wantedChanged(wanted);
}

std::optional<Span> SpanMark::span() const
{
    if (!m_ends)
        return std::nullopt;
    return Span{std::min(m_ends->start, m_ends->end), std::max(m_ends->start, m_ends->end)};
}

void SpanMark::begin(Instant at)
{
    m_ends = Span{at, at};
    m_open = true;
    Q_EMIT changed();
}

void SpanMark::follow(Instant at)
{
    if (!m_open || m_ends->end == at)
        return;
    m_ends->end = at;
    Q_EMIT changed();
}

void SpanMark::finish(Milliseconds least)
{
    if (!m_open)
        return;
    const Span marked = *span();
    if (marked.end - marked.start < least)
        return clear();
    m_open = false;
    setWanted(false);
    Q_EMIT finished(marked);
}

void SpanMark::clear()
{
    m_ends.reset();
    m_open = false;
    setWanted(false);
    Q_EMIT changed();
}

} // namespace holdband::ui
