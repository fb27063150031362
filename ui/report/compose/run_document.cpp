#include "ui/report/compose/run_document.h"

#include "core/results/run/run_glance.h"
#include "core/text/quantities.h"
#include "ui/charts/run_chart.h"
#include "ui/charts/run_picture.h"
#include "ui/report/compose/evidence_tables.h"
#include "ui/report/compose/run_energy.h"
#include "ui/report/compose/run_stages.h"
#include "ui/run/run_tables.h"
#include "ui/words/words.h"

namespace holdband::report {

namespace {

using results::RunReview;

QString subtitleOf(const RunReview& review)
{
    const Batch& batch = review.batch();
    const Cells cells(review.settings, review.zone);
    QStringList parts{ui::shown(review.setup.name),
                      ui::Words::tr("pitched %1").arg(cells.instant(batch.pitched).text),
                      batch.ended ? ui::Words::tr("ended %1").arg(cells.instant(*batch.ended).text)
                                  : ui::Words::tr("still open")};
    if (batch.volume)
        parts << ui::shown(volumeText(*batch.volume, review.settings.units, ui::decimalSign()));
    if (batch.originalGravity)
        parts << ui::Words::tr("original gravity %1")
                     .arg(ui::shown(gravityText(*batch.originalGravity, ui::decimalSign())));
    if (batch.finalGravity)
        parts << ui::Words::tr("final %1", "gravity")
                     .arg(ui::shown(gravityText(*batch.finalGravity, ui::decimalSign())));
    return parts.join(QStringLiteral(" · "));
}

/// The contents of the panels as text, for people who can't see them.
QString chartInWords(const RunReview& review)
{
    const Cells cells(review.settings, review.zone);
    QString words =
        ui::Words::tr("From %1 to %2. %3. ")
            .arg(cells.instant(review.input.span.start).text,
                 cells.instant(review.input.span.end).text, ui::shown(review.words.headline));
    const auto& judged = review.figures.judged;
    for (std::size_t i = 0; i < judged.stages.size(); ++i) {
        const auto& seen = judged.statistics[i];
        if (seen.minimum && seen.maximum)
            words +=
                ui::Words::tr("%1: beer from %2 to %3. ")
                    .arg(ui::shown(judged.stages[i].label), cells.temperature(*seen.minimum).text,
                         cells.temperature(*seen.maximum).text);
    }
    if (review.figures.energy.whole.any())
        words += ui::Words::tr("Energy rises to %1 kWh. ")
                     .arg(cells.kwh(review.figures.energy.whole).text);
    return words + ui::Words::tr("The figures are in the tables below.");
}

/// The meaning of the signs that occur in the chart.
QString captionOf(const ui::RunChart& chart)
{
    QStringList parts;
    if (!chart.bands.empty())
        parts << ui::Words::tr("Green: the band.");
    if (!chart.settling.empty())
        parts << ui::Words::tr("Hatched: settling, not judged.");
    if (!chart.leftOut.empty())
        parts << ui::Words::tr("Upright lines: left out by hand.");
    if (!chart.gaps.empty() || !chart.unmetered.empty())
        parts << ui::Words::tr("Grey: no data, or not metered.");
    if (chart.fan)
        parts << ui::Words::tr("Pale fan: when the beer may come into its band.");
    if (!chart.excursions.empty())
        parts << ui::Words::tr("Rings: the worst of each excursion.");
    if (!chart.notes.empty())
        parts << ui::Words::tr("Numbered squares: remarks of the journal.");
    return parts.join(u' ');
}

void addChart(Document& document, const RunReview& review)
{
    ui::RunChart chart = ui::chartOf(review);
    const QString caption = captionOf(chart);
    auto picture = std::make_shared<ui::RunPicture>(std::move(chart));
    if (picture->empty()) {
        document.add(Paragraph{ui::Words::tr("Nothing of this batch is logged or metered yet, so "
                                             "there is no chart.")});
        return;
    }
    document.add(Figure{picture, ui::Words::tr("Temperature, deviation and energy"),
                        chartInWords(review), caption});
}

void addSentences(Document& document, const char* id, const QString& title,
                  const QStringList& sentences)
{
    if (sentences.isEmpty())
        return;
    document.add(Heading{title});
    document.add(Bullets{id, sentences});
}

QStringList capitalised(const std::vector<std::string>& sentences)
{
    QStringList list;
    for (const std::string& sentence : sentences)
        list << ui::capitalised(ui::shown(sentence));
    return list;
}

std::vector<LargeFigure> largeFiguresOf(const RunReview& review)
{
    const results::RunGlance glance = results::glanceOf(review);
    std::vector<LargeFigure> figures;
    const auto add = [&](const results::GlanceFigure& figure) {
        figures.push_back({ui::shown(figure.value), ui::shown(figure.caption), figure.warns});
    };
    if (!glance.lead)
        return figures;
    add(*glance.lead);
    for (const results::GlanceFigure& figure : glance.others)
        add(figure);
    return figures;
}

} // namespace

Document runDocument(const RunReview& review, const results::Provenance& provenance,
                     const Origin& origin)
{
    Document document;
    document.kind = ui::Words::tr("Report of a run");
    document.title = ui::shown(review.batch().name);
    document.subtitle = subtitleOf(review);
    document.headline = ui::shown(review.words.headline) + u'.';
    document.largeFigures = largeFiguresOf(review);
    document.footer = footerOf(origin, review.zone);
    document.us = review.settings.units == UnitSystem::us;
    document.add(Paragraph{document.headline, Tone::lead, "verdict", ui::Words::tr("verdict")});
    if (review.arrival)
        document.add(Paragraph{ui::shown(review.arrival->datedSentence), Tone::plain, "arrival",
                               ui::Words::tr("arrival", "forecast of a crash")});
    if (!review.words.detail.empty())
        document.add(Paragraph{ui::shown(review.words.detail), Tone::muted, "certainty",
                               ui::Words::tr("certainty")});
    addChart(document, review);
    addStages(document, review);
    addExcursions(document, review);
    addEnergy(document, review);
    addBeer(document, review);
    addSentences(document, "journal", ui::Words::tr("Journal"), ui::journalLines(review));
    addSentences(document, "findings", ui::Words::tr("Check these"), capitalised(review.findings));
    addBasis(document, provenance, origin, Cells(review.settings, review.zone));
    addSentences(document, "cautions", ui::Words::tr("Safety"), capitalised(review.cautions));
    return document;
}

} // namespace holdband::report
