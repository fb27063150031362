#include "ui/forecast/forecast_tables.h"

#include "ui/words/words.h"

namespace holdband::ui {

namespace {

using results::NextBatch;
using results::SetupForecastText;

using FigureOf = std::string SetupForecastText::*;

std::vector<TableCell> figureRow(const NextBatch& review, const QString& title, FigureOf figure,
                                 FigureOf why)
{
    std::vector<TableCell> row{{title, {}, false}};
    for (const SetupForecastText& text : review.text.setups) {
        const QString value = shown(text.*figure);
        row.push_back({value.isEmpty() ? dash : withNoBreakSpaces(value),
                       why ? shown(text.*why) : QString(), false});
    }
    return row;
}

} // namespace

TableText forecastTable(const NextBatch& review)
{
    TableText table;
    table.header << QString();
    table.numeric.push_back(false);
    for (const results::SetupForecast& setup : review.setups) {
        table.header << shown(setup.setup.name);
        table.numeric.push_back(false);
    }
    table.rows = {
        figureRow(review, Words::tr("Energy, kWh"), &SetupForecastText::energy,
                  &SetupForecastText::explainEnergy),
        figureRow(review, Words::tr("Cost"), &SetupForecastText::cost,
                  &SetupForecastText::explainCost),
        figureRow(review, Words::tr("Cold after, h"), &SetupForecastText::coldAfter,
                  &SetupForecastText::explainCrash),
        figureRow(review, Words::tr("Can it hold?"), &SetupForecastText::hold,
                  &SetupForecastText::explainHold),
        figureRow(review, Words::tr("Held so far"), &SetupForecastText::seen,
                  &SetupForecastText::explainHold),
        figureRow(review, Words::tr("Ease of use"), &SetupForecastText::easeOfUse, nullptr),
        figureRow(review, Words::tr("Cleaning"), &SetupForecastText::cleaning, nullptr),
    };
    return table;
}

QStringList missingSentences(const NextBatch& review)
{
    QStringList missing;
    for (const SetupForecastText& text : review.text.setups) {
        if (!text.missing.empty())
            missing << shown(text.missing);
    }
    return missing;
}

QString pastSentences(const NextBatch& review)
{
    QStringList all;
    for (std::size_t i = 0; i < review.setups.size(); ++i)
        all << Words::tr("%1: %2").arg(shown(review.setups[i].setup.name),
                                       shown(review.text.setups[i].backtest));
    return all.join(QLatin1Char(' '));
}

QString explanations(const NextBatch& review, FigureOf explained)
{
    QStringList all;
    for (std::size_t i = 0; i < review.setups.size(); ++i)
        all << Words::tr("%1: %2").arg(shown(review.setups[i].setup.name),
                                       shown(review.text.setups[i].*explained));
    return all.join(QLatin1Char('\n'));
}

} // namespace holdband::ui
