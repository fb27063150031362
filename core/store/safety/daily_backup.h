// The copy that is made before the first change of a local day.
#pragma once

#include "core/quantity/instant.h"
#include "core/store/safety/backups.h"

#include <functional>
#include <string>

namespace holdband::store {

class LogbookFile;

struct BackupOptions {
    /// Returns the folder for the copies of all logbooks, each time one is made; empty: beside each
    /// logbook.
    std::function<std::string()> place;
    /// Receives the result of a day's copy; called in the thread that owns the file.
    std::function<void(const Result<BackupCopy>&)> onResult;
};

class DailyBackup {
public:
    explicit DailyBackup(BackupOptions options) : m_options(std::move(options)) {}

    /// Call before a change: makes the day's copy if there is none and the logbook has more than
    /// its first entry. Tried once a day; a failure is reported and doesn't block the change.
    void beforeChange(const LogbookFile& file);

private:
    void tell(const Result<BackupCopy>& made) const;

    BackupOptions m_options;
    Span m_done = {}; ///< the local day already handled
};

} // namespace holdband::store
