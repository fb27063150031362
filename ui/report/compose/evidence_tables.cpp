#include "ui/report/compose/evidence_tables.h"

#include "core/text/quantities.h"
#include "core/text/times.h"
#include "ui/report/compose/evidence_text.h"
#include "ui/words/words.h"

#include <algorithm>

namespace holdband::report {

namespace {

/// Whether several sensors read the beer, one after another.
bool beerWasShared(const results::Provenance& provenance)
{
    const auto rooms =
        std::count_if(provenance.sensors.begin(), provenance.sensors.end(), readsRoom);
    return provenance.sensors.size() - static_cast<std::size_t>(rooms) > 1;
}

void addSensors(Table& table, const results::Provenance& provenance, const Cells& cells)
{
    const bool several = beerWasShared(provenance);
    for (const results::SensorProvenance& sensor : provenance.sensors) {
        const bool room = readsRoom(sensor);
        addFact(table, room ? "room_sensor" : "beer_sensor",
                room ? ui::Words::tr("Room sensor") : ui::Words::tr("Beer sensor"),
                sensorText(sensor, cells, several && !room));
    }
    if (several)
        addFact(table, "readings", ui::Words::tr("Readings of the beer"),
                cells.count(provenance.sensors.front().readings));
    for (const Meter& meter : provenance.meters)
        addFact(table, "meter", ui::Words::tr("Meter"), meterText(meter));
}

void addLimits(Table& table, const results::Provenance& provenance, const Cells& cells)
{
    const auto addLength = [&](const char* id, const QString& what, Milliseconds length,
                               const QString& text) {
        addFact(table, id, what, worded(cells.length(static_cast<double>(length.count())), text));
    };
    const auto tolerance =
        provenance.tolerance ? std::optional(provenance.tolerance->kelvins()) : std::nullopt;
    addFact(table, "tolerance", ui::Words::tr("Tolerance"),
            worded(cells.difference(tolerance), toleranceText(provenance, cells)));
    addLength("gap_limit", ui::Words::tr("Gap limit"), provenance.gapLimit,
              gapLimitText(provenance));
    addLength("ignore_shorter_than", ui::Words::tr("Ignore shorter than"),
              provenance.ignoreShorterThan, ignoreShorterThanText(provenance));
    addLength("dwell", ui::Words::tr("Settled after"), provenance.bandTimes.dwell,
              dwellText(provenance));
    addLength("return", ui::Words::tr("Excursion ends after"), provenance.bandTimes.returnTime,
              returnText(provenance));
    addFact(table, "coverage_needed", ui::Words::tr("Coverage needed"),
            worded(cells.share(provenance.coverageNeeded),
                   ui::shown(shareText(provenance.coverageNeeded, 0, ui::decimalSign()))));
}

/// "Room, accurate to ± 0.9 °F, 7174 readings", the beer's sensors before the room's.
QString sensorsText(const results::Provenance& provenance, const Cells& cells)
{
    const bool several = beerWasShared(provenance);
    QStringList list;
    for (const results::SensorProvenance& sensor : provenance.sensors)
        list << sensorText(sensor, cells, several && !readsRoom(sensor));
    if (several)
        list << ui::Words::counted("%n readings of the beer", "%n reading of the beer",
                                   provenance.sensors.front().readings);
    return list.join(QStringLiteral("; "));
}

QString metersText(const results::Provenance& provenance)
{
    QStringList list;
    for (const Meter& meter : provenance.meters)
        list << meterText(meter);
    return list.isEmpty() ? ui::dash : list.join(QStringLiteral("; "));
}

/// "band ± 3 °F; gap limit 15 min (3 × the median interval); ignored excursions: none; …"
QString limitsText(const results::Provenance& provenance, const Cells& cells)
{
    const QString band = provenance.tolerance
                             ? ui::Words::tr("band %1").arg(toleranceText(provenance, cells))
                             : ui::Words::tr("each stage its own band");
    return ui::Words::tr("%1; gap limit %2; ignored excursions: %3; settled after %4; an excursion "
                         "ends after %5; coverage needed %6")
        .arg(band, gapLimitText(provenance), ignoreShorterThanText(provenance),
             dwellText(provenance), returnText(provenance),
             ui::shown(shareText(provenance.coverageNeeded, 0, ui::decimalSign())));
}

QString dayOf(Instant at, const Cells& cells)
{
    return ui::shown(dateText(cells.zone().localDate(at)));
}

Table basesTable(const std::vector<SideProvenance>& batches, const Cells& cells)
{
    Table table;
    table.id = "bases";
    table.title = ui::Words::tr("What each batch rests on");
    table.mostRows = 2'000; // a season's tables have as many
    table.columns = {words("batch", ui::Words::tr("Batch")),
                     wideWords("span", ui::Words::tr("span")),
                     figures("coverage", ui::Words::tr("covered"), "1"),
                     wideWords("sensors", ui::Words::tr("sensors")),
                     wideWords("meters", ui::Words::tr("meters")),
                     wideWords("limits", ui::Words::tr("limits"))};
    for (const SideProvenance& each : batches) {
        const QString name = ui::shown(each.provenance.batch);
        table.rows.push_back(
            {{each.side.isEmpty() ? name : each.side + QStringLiteral(" · ") + name},
             worded(cells.span(each.provenance.span),
                    ui::Words::tr("%1 to %2")
                        .arg(dayOf(each.provenance.span.start, cells),
                             dayOf(each.provenance.span.end, cells))),
             cells.share(each.provenance.coverage),
             {sensorsText(each.provenance, cells)},
             {metersText(each.provenance)},
             {limitsText(each.provenance, cells)}});
    }
    return table;
}

} // namespace

void addBasis(Document& document, const results::Provenance& provenance, const Origin& origin,
              const Cells& cells)
{
    Table table = factsTable("basis", ui::Words::tr("Computed from"));
    addOrigin(table, origin, cells);
    addFact(table, "span", ui::Words::tr("Span"), cells.span(provenance.span));
    addFact(table, "coverage", ui::Words::tr("Coverage"),
            worded(cells.share(provenance.coverage), coverageWords(provenance, cells)));
    addSensors(table, provenance, cells);
    addLimits(table, provenance, cells);
    document.add(Heading{table.title});
    document.add(std::move(table));
    document.add(Paragraph{methodInShort(), Tone::muted});
}

void addProvenance(Document& document, const std::vector<SideProvenance>& batches,
                   const Origin& origin, const Cells& cells, const QString& method)
{
    Table table = factsTable("basis", ui::Words::tr("Computed from"));
    addOrigin(table, origin, cells);
    document.add(Heading{table.title});
    document.add(std::move(table));
    if (!batches.empty())
        document.add(basesTable(batches, cells));
    document.add(Paragraph{method, Tone::muted});
}

} // namespace holdband::report
