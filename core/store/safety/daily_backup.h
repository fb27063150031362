// The copy that is made before the first change of a local day.
#pragma once

#include "core/quantity/instant.h"
#include "core/store/safety/backups.h"

#include <functional>
#include <string>

namespace holdband::store {

class LogbookFile;

struct BackupOptions {
    /// Where the copies of all logbooks go, asked for when one is made; empty: beside each.
    std::function<std::string()> place;
    /// What became of a day's copy; called in the thread that owns the file.
    std::function<void(const Result<BackupCopy>&)> told;
};

class DailyBackup {
public:
    explicit DailyBackup(BackupOptions manner) : m_manner(std::move(manner)) {}

    /// Before a change: makes the day's copy where there is none and the logbook holds more than
    /// its own beginning. Tried once a day; a failure is told and doesn't hinder the change.
    void beforeChange(const LogbookFile& file);

private:
    BackupOptions m_manner;
    Span m_done = {}; ///< the local day that was looked after
};

} // namespace holdband::store
