// Makes reports: reads, composes, renders, writes. The only entry point for the command line and
// the window; works on any thread, needs a QGuiApplication and a font, but no display.
#pragma once

#include "core/exchange/file_writer.h"
#include "core/problem.h"
#include "core/results/forecast/next_batch.h"
#include "core/store/logbook_file.h"
#include "ui/report/compose/document.h"
#include "ui/report/render/picture_renderer.h"

#include <QByteArray>
#include <QPageSize>
#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace holdband::report {

enum class Form { pdf, html, csv, png, svg };

/// The form from the extension of a file's name, in either case; absent for any other.
std::optional<Form> formNamed(const std::string& file);

struct ReportOptions {
    /// Of a PDF; else Letter for US units, A4 for metric ones.
    std::optional<QPageSize> paper;
    QSize size = landscape;                ///< of a picture, pixels
    ui::Scheme scheme = ui::Scheme::light; ///< of pictures and HTML; paper is light
};

/// The progress of a report, and a way to stop it. Called on the thread that makes it.
struct Progress {
    std::function<void(const QString& step)> at = [](const QString&) {};
    std::function<bool()> stopped = [] { return false; };
};

/// For two side by side: what is included, as in SideBySideRequest.
struct Counting {
    std::optional<std::string> fromStage; ///< of batches; absent: from pitching
    std::vector<std::string> only;        ///< of setups; empty: all ended batches
};

/// One name: a batch, else a setup's season. Two: side by side. Problem (data): an unknown name
/// (with suggestions), or a problem of reviewSideBySide.
Result<Document> compose(const store::LogbookFile& logbook, const std::vector<std::string>& names,
                         const Counting& counting = {});

/// What the next batch would use. Problem: as reviewNextBatch().
Result<Document> composeForecast(const store::LogbookFile& logbook,
                                 const results::NextBatchRequest& request);

/// Problem (file): no font is installed. Problem (data): stopped, or too large.
Result<QByteArray> rendered(const Document& document, Form form, const ReportOptions& format,
                            const Progress& progress = {});

struct ReportRequest {
    std::vector<std::string> names;
    Counting counting = {};
    /// A forecast instead of the names.
    std::optional<results::NextBatchRequest> nextBatch = {};
    Form form = Form::pdf;
    ReportOptions format;
    std::string path;
    exchange::Existing existing = exchange::Existing::keep;
};

/// All steps. On a Problem nothing was written, and an existing file at the path is unchanged.
Done make(const store::LogbookFile& logbook, const ReportRequest& request,
          const Progress& progress = {});

} // namespace holdband::report
