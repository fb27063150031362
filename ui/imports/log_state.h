// One log on the page: where it comes from, what was seen of it, what was chosen, how far it is.
#pragma once

#include "core/intake/csv/guess.h"
#include "core/intake/csv/preview.h"
#include "core/intake/log/import.h"

#include <QString>
#include <memory>
#include <optional>

namespace holdband::ui {

enum class LogStage {
    waiting, ///< not looked at yet
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
    LogStage stage = LogStage::waiting;
    std::optional<intake::LogPreview> preview;
    intake::ColumnMap map;
    bool remembered = false; ///< the map is that of an earlier file of this shape
    std::optional<MeterEvent> registerDrop;
    std::shared_ptr<const intake::ImportReport> report; ///< of the last look, or of the keeping
    std::optional<Problem> problem;
    bool changedSince = false;  ///< it is another file than when it was looked at first
    bool cancelledLate = false; ///< it was stored before Cancel took effect

    bool isBusy() const { return stage == LogStage::looking || stage == LogStage::saving; }
    intake::ImportOptions options(bool dryRun) const;
};

} // namespace holdband::ui
