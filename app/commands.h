// All commands of the command line.
#pragma once

#include "app/console.h"

#include <vector>

namespace holdband::app {

/// In the order in which the help lists them.
std::vector<Command> allCommands();

std::vector<Command> readingCommands();     ///< batches, verdict, energy, compare
std::vector<Command> forecastCommands();    ///< forecast
std::vector<Command> writingCommands();     ///< new, load, import, meter
std::vector<Command> maintenanceCommands(); ///< export, check, backup
std::vector<Command> reportCommands();      ///< report
std::vector<Command> schemaCommands();      ///< schema

} // namespace holdband::app
