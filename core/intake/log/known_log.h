// A file that was imported before, with every row: only what follows its known part is read.
#pragma once

#include "core/intake/log/import.h"
#include "core/store/readings/read_logs.h"

#include <optional>
#include <string>
#include <vector>

namespace holdband::intake {

/// A digest of everything in the request that decides how rows are read and where they go.
std::string askedOf(const LogRequest& request);

/// The parts of a file whose known part was not read again.
struct KnownLog {
    store::StoredLog stored;
    LogFile beginning; ///< its first rows, all of them known
    /// Some of the known rows and all new ones; absent where the file has no more than before.
    std::optional<LogFile> rest = {};
    std::string sha256; ///< of the whole file
    /// How many readings of `rest` (else of `beginning`) are known, by column.
    std::vector<std::int64_t> readAgain = {};
};

/// Absent: the file must be read whole, since it is new, or something in it is not as it was.
/// Problem (data): `hook` stopped it.
Result<std::optional<KnownLog>> findKnown(const store::LogbookFile& logbook,
                                          const LogRequest& request, const ReadHook& hook);

/// Turns a report about the rows that were read into one about the whole file: `beginning` is that
/// about KnownLog::beginning.
void addKnown(ImportReport& report, const ImportReport& beginning, const KnownLog& known);

/// Notes for the next time that all rows of the file are stored, if they are. A file with a row
/// that was left out or differs, with a meter's register, or that isn't plain lines, will be read
/// whole. `known`: null if this one was.
Done noteReadLog(const store::Change& change, const ImportReport& report, const LogRequest& request,
                 const KnownLog* known);

} // namespace holdband::intake
