#include "ui/plans/beer_uses.h"

#include "core/text/phrase.h"
#include "ui/forms/time_cells.h"
#include "ui/words/words.h"

#include <algorithm>

namespace holdband::ui {

namespace {

enum UseColumn : int { useFrom, useSensor, useVessel };

Done inside(const Instant at, const Batch& batch, const std::string& place)
{
    if (at <= batch.pitched)
        return dataProblem(Phrase::tr("the sensor used from pitching is set in the details"), place,
                           Phrase::tr("type a later time"));
    if (batch.ended && at >= *batch.ended)
        return dataProblem(Phrase::tr("the batch has ended by then"), place);
    return {};
}

} // namespace

std::vector<EditColumn> useColumns(const QStringList& sensors, const UnitFormat& format)
{
    EditColumn sensor{Words::tr("Beer sensor"), sensors.value(0), sensors};
    sensor.refusal = [](const QStringList& row) {
        return row[useSensor].isEmpty() ? Words::tr("choose the sensor") : QString();
    };
    return {timeColumn(Words::tr("From"), useFrom, false, format), sensor, {Words::tr("Vessel")}};
}

std::vector<EditRow> useRows(const std::vector<BeerUse>& uses, const UnitFormat& format)
{
    std::vector<EditRow> rows;
    for (const BeerUse& use : uses)
        rows.push_back({{typedTime(use.from, format.zone), shown(use.sensor), shown(use.vessel)},
                        static_cast<int>(rows.size())});
    return rows;
}

Result<std::vector<BeerUse>> usesOf(const std::vector<EditRow>& rows,
                                    const std::vector<BeerUse>& origin, const Batch& batch,
                                    const UnitFormat& format)
{
    std::vector<BeerUse> uses;
    for (const EditRow& row : rows) {
        const std::string place =
            Phrase::tr("sensor and vessel %1").with(std::to_string(uses.size() + 1));
        const BeerUse* before = originOf(row, origin);
        const auto from =
            timeIn(row.cells[useFrom], before ? std::optional(before->from) : std::nullopt, format);
        HOLDBAND_TRY(from);
        HOLDBAND_TRY(inside(*from, batch, place));
        if (row.cells[useSensor].isEmpty())
            return dataProblem(Phrase::tr("the sensor is missing"), place);
        uses.push_back({*from, core(row.cells[useSensor]), core(row.cells[useVessel].trimmed())});
    }
    const auto earlier = [](const BeerUse& a, const BeerUse& b) { return a.from < b.from; };
    std::sort(uses.begin(), uses.end(), earlier);
    for (std::size_t i = 1; i < uses.size(); ++i) {
        if (uses[i].from == uses[i - 1].from)
            return dataProblem(Phrase::tr("two sensors begin at the same time"),
                               Phrase::tr("sensors and vessels"));
    }
    return uses;
}

} // namespace holdband::ui
