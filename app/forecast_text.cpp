#include "app/forecast_text.h"

#include "app/colors.h"
#include "app/table.h"

namespace holdband::app {

namespace {

using results::NextBatch;
using results::SetupForecastText;

void addLine(std::string& text, const std::string& line)
{
    if (!line.empty())
        text += line + "\n";
}

std::string shown(const std::string& figure)
{
    return figure.empty() ? "–" : figure;
}

/// A row for each setup.
std::string figuresTable(const NextBatch& review)
{
    Table table({"setup", "energy, kWh", "cost", "cold after, h", "can it hold?", "held so far"});
    for (std::size_t i = 0; i < review.setups.size(); ++i) {
        const SetupForecastText& text = review.text.setups[i];
        table.add({review.setups[i].setup.name, shown(text.energy), shown(text.cost),
                   shown(text.coldAfter), text.hold, shown(text.seen)});
    }
    return "\n" + table.text();
}

std::string setupText(const NextBatch& review, std::size_t index)
{
    const SetupForecastText& text = review.text.setups[index];
    std::string all = "\n" + review.setups[index].setup.name + "\n";
    for (const std::string& stage : text.stages)
        all += "  " + stage + "\n";
    if (!text.missing.empty())
        all += "  " + text.missing + "\n";
    if (!text.easeOfUse.empty())
        all += "  ease of use: " + text.easeOfUse + "\n";
    if (!text.cleaning.empty())
        all += "  cleaning: " + text.cleaning + "\n";
    for (const std::string& assumed : text.assumed)
        all += "  assumed: " + assumed + "\n";
    return all + "  past batches, each forecast from the others: " + text.backtest + "\n";
}

} // namespace

std::string forecastText(const NextBatch& review)
{
    std::string text;
    addLine(text, emphasized(review.text.headline));
    addLine(text, review.text.also);
    addLine(text, review.text.basis);
    text += "\nPlan: " + review.text.plan + "\nRoom: " + review.text.room + "\n";
    if (!review.text.need.empty())
        text += "Needs at most " + review.text.need + " of lift over 12 hours.\n";
    text += figuresTable(review);
    for (std::size_t i = 0; i < review.setups.size(); ++i)
        text += setupText(review, i);
    return text;
}

} // namespace holdband::app
