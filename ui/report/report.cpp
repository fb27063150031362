#include "ui/report/report.h"

#include "core/assign_result.h"
#include "core/store/records/batches.h"
#include "core/store/records/equipment.h"
#include "core/text/name_suggestions.h"
#include "core/text/phrase.h"
#include "ui/report/compose/forecast_document.h"
#include "ui/report/compose/pair_document.h"
#include "ui/report/compose/run_document.h"
#include "ui/report/compose/season_document.h"
#include "ui/report/render/csv_renderer.h"
#include "ui/report/render/html_renderer.h"
#include "ui/report/render/pdf_renderer.h"
#include "ui/words/words.h"

#include <QFontMetrics>
#include <QString>
#include <algorithm>
#include <array>

namespace holdband::report {

namespace {

enum class Subject { run, season };

/// A name of both a batch and a setup means the batch.
Result<Subject> subjectOf(const store::LogbookFile& logbook, const std::string& name)
{
    auto batches = store::readBatches(logbook);
    HOLDBAND_TRY(batches);
    auto setups = store::readSetups(logbook);
    HOLDBAND_TRY(setups);
    std::vector<std::string> names;
    for (const Batch& batch : *batches)
        names.push_back(batch.name);
    if (std::find(names.begin(), names.end(), name) != names.end())
        return Subject::run;
    for (const Setup& setup : *setups) {
        if (setup.name == name)
            return Subject::season;
        names.push_back(setup.name);
    }
    return dataProblem(Phrase::tr("there is no batch and no setup \"%1\"").with(name), {},
                       suggestion(name, names));
}

Result<Document> composeRun(const store::LogbookFile& logbook, const std::string& batch)
{
    auto review = results::reviewRun(logbook, batch, ui::decimalSign());
    HOLDBAND_TRY(review);
    auto provenance = results::provenanceOf(logbook, *review);
    HOLDBAND_TRY(provenance);
    return runDocument(*review, *provenance, originOf(logbook));
}

Result<Document> composeSeason(const store::LogbookFile& logbook, const std::string& setup)
{
    auto season = results::reviewSeason(logbook, setup, ui::decimalSign());
    HOLDBAND_TRY(season);
    return seasonDocument(*season, originOf(logbook));
}

/// Reads the logbook twice, so nothing may be saved in between.
Result<Document> composePair(const store::LogbookFile& logbook, const std::string& a,
                             const std::string& b, const Counting& counting)
{
    auto steady = store::Transaction::beginReading(logbook.database());
    HOLDBAND_TRY(steady);
    results::SideBySideRequest request;
    request.a = a;
    request.b = b;
    request.fromStage = counting.fromStage;
    request.only = counting.only;
    request.decimalSign = ui::decimalSign();
    auto pair = results::reviewSideBySide(logbook, request);
    HOLDBAND_TRY(pair);
    PairProvenance provenances;
    HOLDBAND_TRY(assignResult(results::provenancesOf(logbook, pair->batchesA), provenances.a));
    HOLDBAND_TRY(assignResult(results::provenancesOf(logbook, pair->batchesB), provenances.b));
    return pairDocument(*pair, provenances, originOf(logbook));
}

QByteArray bytesOf(const Document& document, Form form, const ReportOptions& format,
                   const Progress& progress)
{
    switch (form) {
    case Form::html:
        return asHtml(document, format.scheme);
    case Form::csv:
        return asCsv(document);
    case Form::png:
        return asPng(document, format.size, format.scheme);
    case Form::svg:
        return asSvg(document, format.size, format.scheme);
    case Form::pdf:
        break;
    }
    const QPageSize usual(document.us ? QPageSize::Letter : QPageSize::A4);
    return asPdf(document, format.paper.value_or(usual), progress.stopped);
}

/// Font families may be listed although there is no font; then every letter would be a box.
bool fontThere()
{
    return QFontMetrics(QFont()).inFont(u'A');
}

tl::unexpected<Problem> stopped()
{
    return dataProblem(Phrase::tr("the report was stopped; nothing was written"));
}

} // namespace

std::optional<Form> formNamed(const std::string& file)
{
    struct Ending {
        const char* text;
        Form form;
    };
    constexpr std::array endings{Ending{".pdf", Form::pdf}, Ending{".html", Form::html},
                                 Ending{".csv", Form::csv}, Ending{".png", Form::png},
                                 Ending{".svg", Form::svg}};
    const QString name = QString::fromStdString(file);
    for (const Ending& ending : endings) {
        const QString text = QString::fromLatin1(ending.text);
        if (name.size() > text.size() && name.endsWith(text, Qt::CaseInsensitive))
            return ending.form;
    }
    return std::nullopt;
}

Result<Document> composeForecast(const store::LogbookFile& logbook,
                                 const results::NextBatchRequest& request)
{
    auto review = results::reviewNextBatch(logbook, request);
    HOLDBAND_TRY(review);
    return forecastDocument(*review, originOf(logbook));
}

Result<Document> compose(const store::LogbookFile& logbook, const std::vector<std::string>& names,
                         const Counting& counting)
{
    if (names.size() == 2)
        return composePair(logbook, names[0], names[1], counting);
    auto subject = subjectOf(logbook, names.at(0));
    HOLDBAND_TRY(subject);
    return *subject == Subject::run ? composeRun(logbook, names[0])
                                    : composeSeason(logbook, names[0]);
}

Result<QByteArray> rendered(const Document& document, Form form, const ReportOptions& format,
                            const Progress& progress)
{
    if (form != Form::csv && !fontThere())
        return fileProblem(Phrase::tr("there is no font to write with"), {},
                           Phrase::tr("install one, such as the package fonts-dejavu-core"));
    QByteArray bytes = bytesOf(document, form, format, progress);
    if (progress.stopped())
        return stopped();
    if (bytes.isEmpty())
        return dataProblem(Phrase::tr("the report could not be drawn"), {},
                           Phrase::tr("choose a smaller size"));
    return bytes;
}

Done make(const store::LogbookFile& logbook, const ReportRequest& request, const Progress& progress)
{
    HOLDBAND_TRY(exchange::mayWrite(request.path, request.existing));
    progress.at(ui::Words::tr("reading", "a step of making a report"));
    auto document = request.nextBatch ? composeForecast(logbook, *request.nextBatch)
                                      : compose(logbook, request.names, request.counting);
    HOLDBAND_TRY(document);
    if (progress.stopped())
        return stopped();
    progress.at(ui::Words::tr("drawing", "a step of making a report"));
    auto bytes = rendered(*document, request.form, request.format, progress);
    HOLDBAND_TRY(bytes);
    progress.at(ui::Words::tr("writing", "a step of making a report"));
    return exchange::writeFile(request.path,
                               {bytes->constData(), static_cast<std::size_t>(bytes->size())},
                               request.existing);
}

} // namespace holdband::report
