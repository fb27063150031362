// Loads a description into a logbook: all of it, or nothing.
#pragma once

#include "core/intake/log/import.h"
#include "core/store/logbook_file.h"
#include "core/store/safety/daily_backup.h"

#include <optional>
#include <string>
#include <vector>

namespace holdband::exchange {

/// Bytes.
inline constexpr std::size_t largestDescription = std::size_t{256} << 20;

struct LoadReport {
    std::size_t setups = 0;
    std::size_t sensors = 0;
    std::size_t meters = 0;
    std::size_t batches = 0;
    std::size_t meterReadings = 0;
    std::vector<intake::ImportReport> files;
};

/// Loads the description and the files that it names, and saves everything in one change. Creates
/// the logbook if there is none; an existing one is copied first if `backups` asks for it. Problem
/// (data): any error in the description or a file, with its place; a name that the logbook already
/// has. Problem (file): something can't be read or written.
Result<LoadReport> loadDescription(const std::string& logbookPath,
                                   const std::string& descriptionPath,
                                   store::Clock clock = store::systemNow,
                                   std::optional<store::BackupOptions> backups = {});

} // namespace holdband::exchange
