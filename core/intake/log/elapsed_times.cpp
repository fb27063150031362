#include "core/intake/log/elapsed_times.h"

#include "core/intake/csv/time_numbers.h"
#include "core/intake/log/log_places.h"
#include "core/text/phrase.h"
#include "core/text/times.h"

#include <QtGlobal>
#include <cmath>

namespace holdband {

tl::expected<std::int64_t, const char*> ElapsedTimes::take(const Decimal& number,
                                                           std::string_view text, std::int64_t line)
{
    constexpr double longest = 3.2e12; // ms: a hundred years
    const double ms = number.value * static_cast<double>(msIn(m_unit));
    if (ms < 0.0)
        return tl::unexpected<const char*>(QT_TRANSLATE_NOOP("Phrase", "is before the start"));
    if (ms > longest)
        return tl::unexpected<const char*>(
            QT_TRANSLATE_NOOP("Phrase", "is more than a hundred years after the start"));
    const std::int64_t whole = std::llround(ms);
    if (whole < m_last && m_fall.line == 0)
        m_fall = {line, std::string(text)};
    m_last = whole;
    return whole;
}

Done ElapsedTimes::addStart(const std::string& start, const Zone& zone,
                            std::vector<std::int64_t>& times, const std::string& header) const
{
    if (m_fall.line != 0)
        return dataProblem(
            Phrase::tr("the times since the start fall at \"%1\": they count from several starts")
                .with(m_fall.text),
            linePlace(m_fall.line) + ", " + columnPlace(header),
            Phrase::tr("make a file of each part, and import each with its own start"));
    auto at = parseTime(start, zone);
    if (!at) {
        at.error().decision = Decision::start;
        return failure(at.error());
    }
    for (std::int64_t& time : times)
        time += at->time_since_epoch().count();
    return {};
}

Done needStart(const LogRequest& request, TimeUnit unit, const std::string& header)
{
    if (request.start)
        return {};
    return dataProblem(Phrase::tr("the times are %1 since a start that the file doesn't say")
                           .with(timeUnitText(unit)),
                       columnPlace(header),
                       Phrase::tr("say when they began, such as --start \"2026-03-07 06:30\""),
                       Decision::start);
}

} // namespace holdband
