// What the process that is killed does, one act after another. The same acts give the same logbook.
#pragma once

#include "core/problem.h"

#include <string>

namespace holdband::faults {

/// An empty logbook with some equipment.
Done prepareForKills(const std::string& folder);

/// The act of that number, from 0: an import, a round, an undo, a backup, in turn.
Done killAct(const std::string& folder, int number);

/// The copy that the act makes, if it is a backup.
std::string copyOf(const std::string& folder, int number);
bool isBackup(int number);

} // namespace holdband::faults
