// What a process that is killed, or whose logbook others read meanwhile, does: one act after
// another. The same acts give the same logbook.
#pragma once

#include "core/store/logbook_file.h"

#include <string>

namespace holdband::faults {

/// A logbook with some equipment and an open batch "Pale" without readings.
Done prepareForKills(const std::string& folder);

/// The act of that number, from 0: an import, a round, an undo, a backup, in turn.
Done killAct(const store::LogbookFile& logbook, const std::string& folder, int number);
/// Opens the logbook for it.
Done killAct(const std::string& folder, int number);

/// The copy that the act makes, if it is a backup.
std::string copyOf(const std::string& folder, int number);
bool isBackup(int number);

} // namespace holdband::faults
