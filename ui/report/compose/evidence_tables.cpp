#include "ui/report/compose/evidence_tables.h"

#include "core/text/quantities.h"
#include "core/text/times.h"
#include "ui/report/compose/evidence_text.h"
#include "ui/words/words.h"

#include <algorithm>

namespace holdband::report {

namespace {

/// Whether several sensors read the beer, one after another.
bool beerWasShared(const results::Basis& basis)
{
    const auto rooms = std::count_if(basis.sensors.begin(), basis.sensors.end(), readsRoom);
    return basis.sensors.size() - static_cast<std::size_t>(rooms) > 1;
}

void addSensors(Table& table, const results::Basis& basis, const Cells& cells)
{
    const bool several = beerWasShared(basis);
    for (const results::SensorBasis& sensor : basis.sensors) {
        const bool room = readsRoom(sensor);
        addFact(table, room ? ui::Words::tr("Room sensor") : ui::Words::tr("Beer sensor"),
                sensorWords(sensor, cells, several && !room));
    }
    if (several)
        addFact(table, ui::Words::tr("Readings of the beer"),
                cells.count(basis.sensors.front().readings));
    for (const Meter& meter : basis.meters)
        addFact(table, ui::Words::tr("Meter"), meterWords(meter));
}

void addLimits(Table& table, const results::Basis& basis, const Cells& cells)
{
    addFact(table, ui::Words::tr("Tolerance"), toleranceWords(basis, cells));
    addFact(table, ui::Words::tr("Gap limit"), gapLimitWords(basis));
    addFact(table, ui::Words::tr("Ignore shorter than"), graceWords(basis));
    addFact(table, ui::Words::tr("Coverage needed"),
            ui::shown(shareText(basis.coverageNeeded, 0, ui::decimalSign())));
}

/// "Room, accurate to ± 0.9 °F, 7174 readings", the beer's sensors before the room's.
QString sensorsWords(const results::Basis& basis, const Cells& cells)
{
    const bool several = beerWasShared(basis);
    QStringList list;
    for (const results::SensorBasis& sensor : basis.sensors)
        list << sensorWords(sensor, cells, several && !readsRoom(sensor));
    if (several)
        list << ui::Words::counted("%n readings of the beer", "%n reading of the beer",
                                   basis.sensors.front().readings);
    return list.join(QStringLiteral("; "));
}

QString metersWords(const results::Basis& basis)
{
    QStringList list;
    for (const Meter& meter : basis.meters)
        list << meterWords(meter);
    return list.isEmpty() ? ui::dash : list.join(QStringLiteral("; "));
}

/// "band ± 3 °F; gap limit 15 min (3 × the median interval); ignored excursions: none; …"
QString limitsWords(const results::Basis& basis, const Cells& cells)
{
    const QString band = basis.tolerance
                             ? ui::Words::tr("band %1").arg(toleranceWords(basis, cells))
                             : ui::Words::tr("each stage its own band");
    return ui::Words::tr("%1; gap limit %2; ignored excursions: %3; coverage needed %4")
        .arg(band, gapLimitWords(basis), graceWords(basis),
             ui::shown(shareText(basis.coverageNeeded, 0, ui::decimalSign())));
}

QString dayOf(Instant at, const Cells& cells)
{
    return ui::shown(dateText(cells.zone().localDate(at)));
}

Table basesTable(const std::vector<SideBasis>& batches, const Cells& cells)
{
    Table table;
    table.title = ui::Words::tr("What each batch rests on");
    table.mostRows = 2'000; // a season's tables have as many
    table.columns = {words(ui::Words::tr("Batch")),          wideWords(ui::Words::tr("span")),
                     figures(ui::Words::tr("covered"), "1"), wideWords(ui::Words::tr("sensors")),
                     wideWords(ui::Words::tr("meters")),     wideWords(ui::Words::tr("limits"))};
    for (const SideBasis& each : batches) {
        const QString name = ui::shown(each.basis.batch);
        table.rows.push_back(
            {{each.side.isEmpty() ? name : each.side + QStringLiteral(" · ") + name},
             {ui::Words::tr("%1 to %2")
                  .arg(dayOf(each.basis.span.start, cells), dayOf(each.basis.span.end, cells))},
             cells.share(each.basis.coverage),
             {sensorsWords(each.basis, cells)},
             {metersWords(each.basis)},
             {limitsWords(each.basis, cells)}});
    }
    return table;
}

} // namespace

void addBasis(Document& document, const results::Basis& basis, const Origin& origin,
              const Cells& cells)
{
    Table table = factsTable(ui::Words::tr("Computed from"));
    addOrigin(table, origin, cells);
    addFact(table, ui::Words::tr("Span"),
            ui::Words::tr("%1 to %2")
                .arg(cells.instant(basis.span.start).text, cells.instant(basis.span.end).text));
    addFact(table, ui::Words::tr("Coverage"), coverageWords(basis, cells));
    addSensors(table, basis, cells);
    addLimits(table, basis, cells);
    document.add(Heading{table.title});
    document.add(std::move(table));
    document.add(Paragraph{methodInShort(), Tone::muted});
}

void addBases(Document& document, const std::vector<SideBasis>& batches, const Origin& origin,
              const Cells& cells, const QString& method)
{
    Table table = factsTable(ui::Words::tr("Computed from"));
    addOrigin(table, origin, cells);
    document.add(Heading{table.title});
    document.add(std::move(table));
    if (!batches.empty())
        document.add(basesTable(batches, cells));
    document.add(Paragraph{method, Tone::muted});
}

} // namespace holdband::report
