// A log's problem, as somebody who writes a description can solve it.
#pragma once

#include "core/problem.h"

#include <string>

namespace holdband::exchange {

/// A log's problem proposes options of the command line; in a description the keys of its file
/// entry do the same, and what has no key is imported apart. `place` is that entry's:
/// "logbook.json, files[0]". Other problems come back as they are.
Problem solvedInDescription(Problem problem, const std::string& place);

} // namespace holdband::exchange
