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

/// Prints what the last word can become, a line each, for the completion of a shell; the line
/// ":files" stands for the names of files. The words are those after the program's name. Not in the
/// list of commands, because nobody types it.
int complete(const std::vector<std::string>& words);

} // namespace holdband::app
