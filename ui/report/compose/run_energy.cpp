#include "ui/report/compose/run_energy.h"

#include "core/results/run/daily_energy.h"
#include "core/results/run/energy_texts.h"
#include "core/text/quantities.h"
#include "ui/report/compose/origin.h"
#include "ui/words/words.h"

#include <cmath>
#include <utility>

namespace holdband::report {

namespace {

using analysis::EnergyFigure;
using results::RunReview;

std::vector<Column> energyColumns(Column first)
{
    return {std::move(first),
            figures("kwh", QStringLiteral("kWh"), "kWh"),
            figures("kwh_low", ui::Words::tr("minimum"), "kWh"),
            figures("kwh_high", ui::Words::tr("maximum"), "kWh"),
            figures("metered", ui::Words::tr("metered"), "h"),
            figures("mean_power", ui::Words::tr("mean power, W"), "W")};
}

std::vector<Cell> energyRow(const QString& what, const EnergyFigure& energy, const Cells& cells)
{
    return {{what},
            cells.kwh(energy),
            cells.leastKwh(energy),
            cells.mostKwh(energy),
            cells.metered(energy),
            cells.number(analysis::meanWatts(energy), 1, "W")};
}

/// The figures of the whole run have none, as in the JSON answer.
QString rowId(results::EnergyPartKind kind)
{
    switch (kind) {
    case results::EnergyPartKind::beforeCrash:
        return QStringLiteral("before_crash");
    case results::EnergyPartKind::crash:
        return QStringLiteral("crash");
    case results::EnergyPartKind::whole:
        break;
    }
    return {};
}

Table spansTable(const RunReview& review, const Cells& cells)
{
    const analysis::RunEnergy& energy = review.figures.energy;
    Table table;
    table.id = "energy";
    table.title = ui::Words::tr("Energy");
    table.columns = energyColumns(words("span", ui::Words::tr("Part of the run")));
    for (const results::EnergyPart& part : results::energyParts(review)) {
        table.rows.push_back(energyRow(ui::capitalised(ui::shown(part.label)), part.energy, cells));
        table.rows.back().front().id = rowId(part.kind);
    }
    for (Cell& cell : table.rows.front())
        cell.strong = true;
    for (const analysis::SpanEnergy& stage : energy.stages) {
        const QString label = ui::shown(stage.label);
        table.rows.push_back(energyRow(ui::Words::tr("Stage %1").arg(label), stage.energy, cells));
        table.rows.back().front().raw = label;
        table.rows.back().front().id = "stage";
    }
    return table;
}

Table daysTable(const RunReview& review, const Cells& cells)
{
    Table table;
    table.id = "energy_by_day";
    table.title = ui::Words::tr("Energy by day");
    table.columns = energyColumns(words("day", ui::Words::tr("Day")));
    for (const analysis::SpanEnergy& day : review.figures.energy.days) {
        table.rows.push_back(
            energyRow(ui::shown(results::dayText(day, review.zone)), day.energy, cells));
        table.rows.back().front().raw = ui::shown(day.label);
    }
    return table;
}

Cell bounded(Cell figure, const Cell& low, const Cell& high)
{
    if (!low.raw.isEmpty() && !high.raw.isEmpty() && low.text != high.text)
        figure.text += QStringLiteral(" (%1 – %2)").arg(low.text, high.text);
    return figure;
}

void addCost(Table& table, const RunReview& review, const Cells& cells)
{
    const auto& cost = review.figures.energy.cost;
    if (!cost)
        return;
    addFact(table, "cost", ui::Words::tr("Cost of the energy"),
            bounded(cells.money(cost->amount), cells.money(cost->low), cells.money(cost->high)));
    const Tariff& tariff = review.settings.tariff;
    const bool plain =
        tariff.windows.empty() && tariff.pricePerKwh && review.settings.tariffChanges.empty();
    if (plain)
        addFact(table, "price_per_kwh", ui::Words::tr("Price of a kWh"),
                cells.money(*tariff.pricePerKwh));
    else
        addFact(table, "price_per_kwh", ui::Words::tr("Price of a kWh"),
                ui::Words::tr("by the prices of its time"));
}

void addWholeDays(Table& table, const RunReview& review, const Cells& cells)
{
    if (!review.dailyEnergy)
        return;
    const auto ofDay = [&](std::size_t day) {
        return cells.kwh(review.figures.energy.days[day].energy).text;
    };
    Cell mean = cells.number(review.dailyEnergy->meanKwh, 2, "kWh");
    mean.text =
        ui::Words::tr("%1 kWh (minimum %2, maximum %3)")
            .arg(mean.text, ofDay(review.dailyEnergy->least), ofDay(review.dailyEnergy->most));
    addFact(table, "kwh_per_day", ui::Words::tr("Average day"), mean);
}

void addLift(Table& table, const RunReview& review, const Cells& cells)
{
    const analysis::RunEnergy& energy = review.figures.energy;
    if (energy.lift && energy.lift->mean()) {
        Cell lift = cells.difference(*energy.lift->mean(), 1);
        lift.text += u' ' + cells.degrees();
        addFact(table, "mean_lift", ui::Words::tr("Room above beer, mean"), lift);
    }
    if (!energy.kwhPerDegreeDay)
        return;
    Cell rate = cells.perDegreeDay(energy.kwhPerDegreeDay);
    rate.text += u' ' + ui::Words::tr("kWh/(%1·day)").arg(cells.degrees());
    addFact(table, "kwh_per_cday", ui::Words::tr("Energy for each degree-day of lift"), rate);
}

Table ratesTable(const RunReview& review, const Cells& cells)
{
    Table table = factsTable("rates", ui::Words::tr("Rates and money"));
    addCost(table, review, cells);
    addWholeDays(table, review, cells);
    addLift(table, review, cells);
    return table;
}

/// `value` in percent; raw: a fraction
Cell percentCell(double value)
{
    return {ui::numberText(value, 1) + QStringLiteral(" %"), rawNumber(value / 100.0), "1"};
}

void addFermentation(Table& table, const analysis::Fermentation& done)
{
    const auto row = [&](const char* id, const QString& what, double value,
                         const QString& how = {}) {
        Cell fact = percentCell(value);
        fact.text += how;
        addFact(table, id, what, std::move(fact));
    };
    row("apparent_attenuation", ui::Words::tr("Attenuation, apparent"), done.apparentAttenuation);
    row("real_attenuation", ui::Words::tr("Attenuation, real"), done.realAttenuation,
        QStringLiteral(" (Balling)"));
    row("alcohol_simple", ui::Words::tr("Alcohol by volume, simple"), done.alcoholSimple,
        ui::Words::tr(" (%1 × ΔSG)").arg(ui::numberText(131.25, 2)));
    row("alcohol_balling", ui::Words::tr("Alcohol by volume, Balling"), done.alcoholBalling);
}

void addHeat(Document& document, const RunReview& review, const Cells& cells)
{
    const auto& heat = review.figures.crashHeat;
    if (!heat)
        return;
    Table table = factsTable("crash_heat", ui::Words::tr("Heat check of the crash"));
    addFact(table, "from", ui::Words::tr("Beer, from"), cells.temperature(heat->from.celsius()));
    addFact(table, "to", ui::Words::tr("Beer, to"), cells.temperature(heat->to.celsius()));
    Cell moved = cells.number(heat->moved.kilowattHours(), 2, "kWh");
    moved.text += QStringLiteral(" kWh");
    addFact(table, "heat", ui::Words::tr("Heat out of the beer"), moved);
    if (heat->energy.any()) {
        Cell used = cells.kwh(heat->energy);
        used.text += QStringLiteral(" kWh");
        addFact(table, "kwh", ui::Words::tr("Energy used meanwhile"), used);
    }
    if (const auto performance = heat->effectivePerformance()) {
        Cell each = cells.number(*performance, 2, "1");
        each.text = ui::Words::tr("%1 kWh of heat for each kWh used").arg(each.text);
        addFact(table, "effective_performance", ui::Words::tr("Effective performance"), each);
    }
    document.add(Heading{table.title});
    document.add(std::move(table));
    document.add(
        Paragraph{ui::Words::tr("An estimate from volume and temperatures, within a few percent."),
                  Tone::muted});
}

void addGravity(Document& document, const RunReview& review, const Cells& cells)
{
    const auto& gravities = review.figures.gravities;
    const auto& done = review.figures.fermentation;
    if (gravities.empty() && !done)
        return;
    document.add(Heading{ui::Words::tr("Gravity")});
    Table table;
    table.id = "gravity";
    table.title = ui::Words::tr("Gravity");
    table.columns = {words("at", ui::Words::tr("Read at")),
                     figures("gravity", ui::Words::tr("gravity"), "1"),
                     figures("apparent_attenuation", ui::Words::tr("attenuation, apparent"), "1")};
    for (const analysis::GravityPoint& point : gravities) {
        const auto attenuation = point.apparentAttenuation;
        table.rows.push_back({cells.instant(point.reading.at),
                              {ui::shown(gravityText(point.gravity, ui::decimalSign())),
                               rawNumber(point.gravity.specific())},
                              attenuation ? percentCell(*attenuation) : cells.absent()});
    }
    if (!table.rows.empty())
        document.add(std::move(table));
    if (!done)
        return;
    Table facts = factsTable("fermentation", ui::Words::tr("Fermentation"));
    addFermentation(facts, *done);
    document.add(std::move(facts));
}

} // namespace

void addEnergy(Document& document, const RunReview& review)
{
    const Cells cells(review.settings, review.zone);
    document.add(Heading{ui::Words::tr("Energy and money")});
    if (!review.figures.energy.whole.any()) {
        document.add(Paragraph{ui::Words::tr("No meter was read twice while this batch ran.")});
        return;
    }
    document.add(spansTable(review, cells));
    for (const std::string& remark : results::energyRemarks(review))
        document.add(Paragraph{ui::shown(remark), Tone::muted});
    if (Table rates = ratesTable(review, cells); !rates.rows.empty())
        document.add(std::move(rates));
    document.add(Heading{ui::Words::tr("Energy by day")});
    document.add(daysTable(review, cells));
}

void addBeer(Document& document, const RunReview& review)
{
    const Cells cells(review.settings, review.zone);
    addHeat(document, review, cells);
    addGravity(document, review, cells);
}

} // namespace holdband::report
