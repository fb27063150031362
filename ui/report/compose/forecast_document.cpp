#include "ui/report/compose/forecast_document.h"

#include "ui/charts/forecast_crash.h"
#include "ui/charts/forecast_energy.h"
#include "ui/charts/forecast_past.h"
#include "ui/report/compose/cells.h"
#include "ui/words/words.h"

namespace holdband::report {

namespace {

using results::NextBatch;
using results::SetupForecast;
using results::SetupForecastText;

/// A figure of the forecast with its range in two further cells.
void addFigure(std::vector<Cell>& row, const Cells& cells, std::optional<double> value,
               std::optional<double> low, std::optional<double> high, int decimals)
{
    for (const auto& number : {value, low, high})
        row.push_back(number ? cells.number(*number, decimals) : cells.absent());
}

void addEnergy(std::vector<Cell>& row, const Cells& cells, const analysis::EnergyForecast* energy)
{
    if (energy)
        addFigure(row, cells, energy->kwh, energy->low(), energy->high(), 2);
    else
        addFigure(row, cells, {}, {}, {}, 2);
}

Table summaryTable(const NextBatch& review, const Cells& cells)
{
    Table table;
    table.id = "forecast";
    table.title = ui::Words::tr("What it means");
    table.columns = {words("setup", ui::Words::tr("Setup")),
                     figures("kwh", QStringLiteral("kWh"), "kWh"),
                     figures("kwh_low", ui::Words::tr("low"), "kWh"),
                     figures("kwh_high", ui::Words::tr("high"), "kWh"),
                     figures("cost", ui::Words::tr("cost")),
                     figures("crash", ui::Words::tr("cold after, h"), "h"),
                     figures("crash_low", ui::Words::tr("low"), "h"),
                     figures("crash_high", ui::Words::tr("high"), "h"),
                     words("holds", ui::Words::tr("can it hold?"))};
    for (std::size_t i = 0; i < review.setups.size(); ++i) {
        const SetupForecast& setup = review.setups[i];
        std::vector<Cell> row{cells.text(setup.setup.name)};
        addEnergy(row, cells, setup.usable() ? &*setup.energy.total : nullptr);
        row.push_back(cells.money(setup.usable() && setup.cost ? std::optional(setup.cost->amount)
                                                               : std::nullopt));
        if (setup.crash)
            addFigure(row, cells, setup.crash->hours, setup.crash->low, setup.crash->high, 1);
        else
            addFigure(row, cells, {}, {}, {}, 1);
        row.push_back(cells.text(review.text.setups[i].hold));
        table.rows.push_back(std::move(row));
    }
    return table;
}

Table stagesTable(const NextBatch& review, const Cells& cells)
{
    Table table;
    table.id = "forecast_stages";
    table.title = ui::Words::tr("Energy by stage");
    table.columns = {words("stage", ui::Words::tr("Stage")), words("setup", ui::Words::tr("Setup")),
                     figures("kwh", QStringLiteral("kWh"), "kWh"),
                     figures("kwh_low", ui::Words::tr("low"), "kWh"),
                     figures("kwh_high", ui::Words::tr("high"), "kWh")};
    for (const SetupForecast& setup : review.setups) {
        for (const analysis::StageForecast& stage : setup.stages) {
            std::vector<Cell> row{cells.text(stage.label), cells.text(setup.setup.name)};
            addEnergy(row, cells, &stage.energy);
            table.rows.push_back(std::move(row));
        }
    }
    return table;
}

Table pastTable(const NextBatch& review, const Cells& cells)
{
    Table table;
    table.id = "backtest";
    table.title = ui::Words::tr("How well would it have known?");
    table.columns = {words("batch", ui::Words::tr("Batch")),
                     words("setup", ui::Words::tr("Setup")),
                     figures("forecast", ui::Words::tr("forecast, kWh"), "kWh"),
                     figures("low", ui::Words::tr("low"), "kWh"),
                     figures("high", ui::Words::tr("high"), "kWh"),
                     figures("came", ui::Words::tr("came, kWh"), "kWh")};
    for (const SetupForecast& setup : review.setups) {
        for (const analysis::BacktestedBatch& batch : setup.backtest.batches) {
            std::vector<Cell> row{cells.text(batch.batch), cells.text(setup.setup.name)};
            const auto& total = batch.forecast.total;
            addEnergy(row, cells, total && batch.judged() ? &*total : nullptr);
            row.push_back(cells.number(batch.cameKwh, 2));
            table.rows.push_back(std::move(row));
        }
    }
    return table;
}

void addTable(Document& document, Table table)
{
    if (table.rows.empty())
        return;
    document.add(Heading{table.title});
    document.add(std::move(table));
}

template <typename PictureOf>
void addPicture(Document& document, const NextBatch& review, const QString& title,
                const QString& caption)
{
    auto picture = std::make_shared<PictureOf>(review);
    if (!picture->empty())
        document.add(Figure{picture, title, document.headline, caption});
}

/// Missing, assumed, and how past batches would have been known, by setup.
void addNotes(Document& document, const NextBatch& review)
{
    QStringList notes;
    for (std::size_t i = 0; i < review.setups.size(); ++i) {
        const SetupForecastText& text = review.text.setups[i];
        const QString name = ui::shown(review.setups[i].setup.name);
        if (!text.missing.empty())
            notes << ui::shown(text.missing);
        notes << ui::Words::tr("%1: %2").arg(name, ui::shown(text.backtest));
        for (const std::string& assumed : text.assumed)
            notes << ui::Words::tr("%1, assumed: %2.").arg(name, ui::shown(assumed));
    }
    document.add(Heading{ui::Words::tr("What it rests on")});
    document.add(Bullets{"notes", notes});
}

} // namespace

Document forecastDocument(const NextBatch& review, const Origin& origin)
{
    const Cells cells(review.settings, review.zone);
    Document document;
    document.kind = ui::Words::tr("Forecast of the next batch");
    document.title = ui::shown(review.text.plan);
    document.subtitle = ui::Words::tr("Room: %1").arg(ui::shown(review.text.room));
    document.headline = ui::shown(review.text.headline);
    document.footer = footerOf(origin, review.zone);
    document.us = review.settings.units == UnitSystem::us;
    document.add(Paragraph{document.headline, Tone::lead, "forecast", ui::Words::tr("forecast")});
    document.add(Paragraph{ui::shown(review.text.also)});
    document.add(Paragraph{ui::shown(review.text.basis), Tone::muted});
    addPicture<ui::ForecastEnergyPicture>(
        document, review, ui::Words::tr("Energy by stage"),
        ui::Words::tr("The line below a bar: in nine of ten such batches it lies there."));
    addTable(document, summaryTable(review, cells));
    addTable(document, stagesTable(review, cells));
    addPicture<ui::ForecastCrashPicture>(document, review, ui::Words::tr("Cold when?"), {});
    addPicture<ui::ForecastPastPicture>(document, review,
                                        ui::Words::tr("How well would it have known?"), {});
    addTable(document, pastTable(review, cells));
    addNotes(document, review);
    return document;
}

} // namespace holdband::report
