#include "ui/report/compose/origin.h"

#include "core/text/times.h"
#include "ui/words/words.h"

#include <filesystem>

namespace holdband::report {

Origin originOf(const store::LogbookFile& logbook)
{
    Origin origin;
    origin.logbook = ui::shown(std::filesystem::path(logbook.path()).filename().string());
    origin.program = QStringLiteral("Holdband " HOLDBAND_VERSION);
    origin.made = logbook.now();
    return origin;
}

QString footerOf(const Origin& origin, const Zone& zone)
{
    return ui::Words::tr("%1 · %2 · made %3")
        .arg(origin.logbook, origin.program, ui::shown(localText(origin.made, zone)));
}

Table factsTable(const char* id, const QString& title)
{
    Table table;
    table.id = id;
    table.title = title;
    table.columns = {words("what", ui::Words::tr("what")),
                     wideWords("value", ui::Words::tr("value"))};
    table.headerShown = false;
    return table;
}

void addFact(Table& table, const char* id, const QString& what, Cell fact)
{
    Cell name{what};
    name.id = id;
    table.rows.push_back({std::move(name), std::move(fact)});
}

void addFact(Table& table, const char* id, const QString& what, const QString& fact)
{
    addFact(table, id, what, Cell{fact});
}

void addOrigin(Table& table, const Origin& origin, const Cells& cells)
{
    addFact(table, "logbook", ui::Words::tr("Logbook"), origin.logbook);
    addFact(table, "program", ui::Words::tr("Program"), origin.program);
    addFact(table, "made", ui::Words::tr("Made"), cells.instant(origin.made));
    addFact(table, "time_zone", ui::Words::tr("Time zone"),
            QString::fromStdString(cells.zone().name()));
}

QString methodInShort()
{
    return ui::Words::tr(
        "Readings are joined by straight lines where they are no further apart than the gap limit; "
        "time between readings further apart has no data. A stage is judged from where the beer "
        "enters its band and stays there (before that it settles) to its end: the beer is inside "
        "where it is no further from the target than the tolerance, edges included. An excursion "
        "ends once the beer has been back inside for a while; its time is the time outside. Sure "
        "means that the "
        "verdict is the same with the band made narrower and wider by the sensor’s accuracy. "
        "Energy is exact at a meter’s readings and drawn straight between them; minimum and "
        "maximum are what the readings before and after, their last digit and the rated power "
        "allow. Heat is an estimate from volume and temperatures, within a few percent.");
}

} // namespace holdband::report
