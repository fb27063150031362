// The command `import`.
#pragma once

#include "app/console.h"
#include "core/intake/log/import.h"

namespace holdband::app {

Command importCommand();

/// To standard error.
void reportWarnings(const intake::ImportReport& imported);

} // namespace holdband::app
