#include "core/results/rounds/shown_readings.h"

#include "core/store/readings/reading_units.h"
#include "core/text/numbers.h"
#include "core/text/phrase.h"
#include "core/text/times.h"

#include <algorithm>

namespace holdband::results {

namespace {

std::string wasText(double value, int decimals, Instant until, const std::string& why,
                    const HistoryFormat& format)
{
    const std::string number = fixedText(value, decimals, format.sign);
    const std::string when = localShortText(until, format.zone);
    if (why.empty())
        return Phrase::tr("was %1, corrected %2", "a value and when").with(number, when);
    return Phrase::tr("was %1, corrected %2: %3", "a value, when and why").with(number, when, why);
}

void addHistory(std::string& text, const std::string& more)
{
    text += (text.empty() ? "" : "; ") + more;
}

} // namespace

double inUnit(double value, ReadingUnit from, ReadingUnit to)
{
    return from == to ? value : store::rawValue(store::baseValue(value, from), to);
}

std::vector<ShownReading> shownOf(const std::vector<store::StoredReading>& readings,
                                  const HistoryFormat& format)
{
    std::vector<ShownReading> all;
    for (const store::StoredReading& stored : readings) {
        ShownReading shown{stored.inForce.at,       stored.inForce.registerReading.kilowattHours(),
                           stored.inForce.decimals, stored.id.value,
                           stored.inForce.note,     {}};
        for (const store::Replaced& before : stored.before)
            addHistory(shown.history,
                       wasText(before.kwh, before.decimals, before.until, before.why, format));
        all.push_back(std::move(shown));
    }
    return all;
}

std::vector<ShownReading> shownOf(const std::vector<store::StoredHandReading>& readings,
                                  ReadingUnit unit, const HistoryFormat& format)
{
    std::vector<ShownReading> all;
    for (const store::StoredHandReading& stored : readings) {
        const HandReading& now = stored.inForce;
        // A converted value has no decimals of its own.
        const int decimals = now.unit == unit ? now.decimals : std::max(now.decimals, 1);
        ShownReading shown{
            now.at, inUnit(now.value, now.unit, unit), decimals, stored.id.value, now.note, {}};
        for (const store::ReplacedHandReading& before : stored.before)
            addHistory(shown.history, wasText(inUnit(before.value, now.unit, unit), before.decimals,
                                              before.until, before.why, format));
        all.push_back(std::move(shown));
    }
    return all;
}

} // namespace holdband::results
