// Withdraws and restores imports, with the rollovers and resets of the register readings beside
// them.
#pragma once

#include "core/store/logbook_file.h"
#include "core/store/readings/imports.h"

namespace holdband::intake {

/// As store::withdraw.
Done withdrawImport(const store::Change& change, store::ImportId import);

/// As store::restoreImport; each restored register reading is checked like a new one. Problem
/// (data): also if one of them is refused.
Done restoreImport(const store::Change& change, store::ImportId import, char decimalSign = '.');

} // namespace holdband::intake
