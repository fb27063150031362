// One log on the page: its source, its preview, the user's choices, its progress.
#pragma once

#include "core/intake/csv/guess.h"
#include "core/intake/csv/preview.h"
#include "core/intake/log/import.h"

#include <QString>
#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace holdband::ui {

enum class LogStage {
    waiting, ///< not previewed yet
    looking,
    asking, ///< a decision is open, or it can't be read: see `problem`
    ready,
    nothingNew,
    saving,
    saved,
};

struct LogState {
    intake::LogSource source;
    QString name;
    std::vector<std::string> sheets; ///< of a workbook; empty for other files
    LogStage stage = LogStage::waiting;
    std::optional<intake::LogPreview> preview;
    intake::ColumnMap map;
    bool remembered = false; ///< the map is that of an earlier file of this shape
    std::optional<MeterEvent> registerDrop;
    std::shared_ptr<const intake::ImportReport> report; ///< of the last preview, or of the import
    std::optional<Problem> problem;
    bool changedSince = false;  ///< the file has changed since it was first previewed
    bool cancelledLate = false; ///< it was stored before Cancel took effect

    bool isBusy() const { return stage == LogStage::looking || stage == LogStage::saving; }
    intake::ImportOptions options(bool dryRun) const;
};

} // namespace holdband::ui
