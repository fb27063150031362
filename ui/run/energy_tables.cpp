#include "ui/run/energy_tables.h"

#include "core/results/run/daily_energy.h"
#include "core/results/run/energy_texts.h"
#include "core/results/run/explain.h"
#include "core/text/quantities.h"
#include "core/text/times.h"
#include "ui/words/words.h"

#include <cmath>

namespace holdband::ui {

namespace {

using results::Figure;

/// A table of three columns: name, amount, and a remark.
class FigureTable {
public:
    explicit FigureTable(const results::RunReview& review) : m_review(review)
    {
        m_table.header = {{}, {}, {}};
        m_table.numeric = {false, true, true};
    }

    void setBeside(const QString& title) { m_table.header[2] = title; }

    void add(const QString& what, const QString& figure, Figure how, const QString& beside = {})
    {
        const QString why = shown(results::explain(m_review, how, decimalSign()));
        m_table.rows.push_back({{what, why, false}, {figure, why, true}, {beside, why, false}});
    }

    void addPlain(const QString& what, const QString& figure, const QString& beside)
    {
        m_table.rows.push_back({{what, {}, false}, {figure, {}, false}, {beside, {}, false}});
    }

    TableText take() { return std::move(m_table); }

private:
    const results::RunReview& m_review;
    TableText m_table;
};

QString kwh(double amount, int decimals = 2)
{
    return numberText(amount, decimals) + QStringLiteral(" kWh");
}

Figure explanationOf(results::EnergyPartKind part)
{
    switch (part) {
    case results::EnergyPartKind::beforeCrash:
        return Figure::beforeCrash;
    case results::EnergyPartKind::crash:
        return Figure::crash;
    case results::EnergyPartKind::whole:
        break;
    }
    return Figure::wholeEnergy;
}

void addCost(FigureTable& table, const results::RunReview& review)
{
    const auto& cost = review.figures.energy.cost;
    if (!cost)
        return;
    const auto money = [&](double amount) {
        return shown(moneyText(amount, review.settings.currency, decimalSign()));
    };
    const auto& tariff = review.settings.tariff;
    const bool plain =
        tariff.windows.empty() && tariff.pricePerKwh && review.settings.tariffChanges.empty();
    const bool bounded = std::isfinite(cost->low) && std::isfinite(cost->high);
    table.add(plain ? Words::tr("at %1 a kWh").arg(money(*tariff.pricePerKwh))
                    : Words::tr("by the prices of its time"),
              money(cost->amount), Figure::cost,
              bounded ? QStringLiteral("%1 – %2").arg(money(cost->low), money(cost->high))
                      : QString());
}

void addRates(FigureTable& table, const results::RunReview& review)
{
    const analysis::RunEnergy& energy = review.figures.energy;
    if (review.dailyEnergy) {
        const auto ofDay = [&](std::size_t day) {
            return numberText(energy.days[day].energy.kwh, 2);
        };
        table.add(Words::tr("average day"), kwh(review.dailyEnergy->meanKwh), Figure::perDay,
                  QStringLiteral("%1 … %2").arg(ofDay(review.dailyEnergy->least),
                                                ofDay(review.dailyEnergy->most)));
    }
    if (energy.meanWatts())
        table.add(Words::tr("mean power"),
                  shown(results::energyTexts(energy.whole, decimalSign()).watts) +
                      QStringLiteral(" W"),
                  Figure::meanPower);
    addCost(table, review);
    if (!energy.kwhPerDegreeDay)
        return;
    const TemperatureUnit unit = review.settings.temperatureUnit();
    const bool us = unit == TemperatureUnit::fahrenheit;
    table.add(us ? Words::tr("per °F·day of lift") : Words::tr("per °C·day of lift"),
              kwh(perDegree(*energy.kwhPerDegreeDay, unit), 3), Figure::perDegreeDay);
}

QString percent(double share)
{
    return numberText(share, 1) + QStringLiteral(" %");
}

} // namespace

TableText energyTable(const results::RunReview& review)
{
    const analysis::RunEnergy& energy = review.figures.energy;
    FigureTable table(review);
    table.setBeside(Words::tr("range"));
    for (const results::EnergyPart& part : results::energyParts(review)) {
        const results::EnergyTexts texts = results::energyTexts(part.energy, decimalSign());
        if (part.energy.any())
            table.add(shown(part.label), shown(texts.kwh) + QStringLiteral(" kWh"),
                      explanationOf(part.kind), shown(texts.bounds));
    }
    if (energy.whole.any())
        addRates(table, review);
    return table.take();
}

TableText heatTable(const results::RunReview& review)
{
    FigureTable table(review);
    const auto& heat = review.figures.crashHeat;
    if (!heat)
        return table.take();
    table.add(Words::tr("heat out of the beer"), kwh(heat->moved.kilowattHours()),
              Figure::heatMoved, Words::tr("estimate"));
    if (const auto performance = heat->effectivePerformance())
        table.add(Words::tr("for each kWh used"), kwh(*performance), Figure::effectivePerformance,
                  Words::tr("of heat"));
    return table.take();
}

TableText gravityTable(const results::RunReview& review)
{
    FigureTable table(review);
    for (const analysis::GravityPoint& point : review.figures.gravities)
        table.addPlain(shown(timeInRun(review, point.reading.at)),
                       shown(gravityText(point.gravity, decimalSign())),
                       point.apparentAttenuation ? percent(*point.apparentAttenuation) : QString());
    const auto& done = review.figures.fermentation;
    if (!done)
        return table.take();
    table.add(Words::tr("attenuation, apparent"), percent(done->apparentAttenuation),
              Figure::apparentAttenuation);
    table.add(Words::tr("attenuation, real"), percent(done->realAttenuation),
              Figure::realAttenuation, QStringLiteral("Balling"));
    table.add(Words::tr("alcohol by volume"), percent(done->alcoholSimple), Figure::alcoholSimple,
              Words::tr("%1 × ΔSG").arg(numberText(131.25, 2)));
    table.add(Words::tr("alcohol by volume"), percent(done->alcoholBalling), Figure::alcoholBalling,
              QStringLiteral("Balling"));
    return table.take();
}

} // namespace holdband::ui
