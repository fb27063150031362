// Reports from beginning to end: read, composed, rendered, written. The one entry for the command
// line and the window; works on any thread, needs a QGuiApplication and a font, and no display.
#pragma once

#include "core/exchange/file_writer.h"
#include "core/problem.h"
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

/// By the ending of a file's name, in either case; absent for any other.
std::optional<Form> formNamed(const std::string& file);

struct UnitFormat {
    std::optional<QPageSize> paper;        ///< of a PDF; else Letter for US units, A4 for others
    QSize size = landscape;                ///< of a picture, pixels
    ui::Scheme scheme = ui::Scheme::light; ///< of pictures and HTML; paper is light
};

/// What goes on while a report is made, and the wish to stop it. Called on the thread that makes
/// it.
struct Progress {
    std::function<void(const QString& step)> at = [](const QString&) {};
    std::function<bool()> stopped = [] { return false; };
};

/// Of two side by side: what counts, as in SideBySideRequest.
struct Counting {
    std::optional<std::string> fromStage; ///< of batches; absent: from pitching
    std::vector<std::string> only;        ///< of setups; empty: all ended batches
};

/// One name: a batch, else a setup's season. Two: side by side.
/// Problem (data): an unknown name (near ones listed), or what reviewSideBySide says.
Result<Document> compose(const store::LogbookFile& logbook, const std::vector<std::string>& names,
                         const Counting& counting = {});

/// Problem (file): there is no font to write with. Problem (data): stopped, or too large.
Result<QByteArray> rendered(const Document& document, Form form, const UnitFormat& manner,
                            const Progress& progress = {});

struct Wish {
    std::vector<std::string> names;
    Counting counting = {};
    Form form = Form::pdf;
    UnitFormat manner;
    std::string path;
    exchange::Existing existing = exchange::Existing::keep;
};

/// All of it. On a Problem nothing was written, and what stood at the path is as it was.
Done make(const store::LogbookFile& logbook, const Wish& wish, const Progress& progress = {});

} // namespace holdband::report
