// Turns the history into text when it is shown: no text is stored or parsed back.
#pragma once

#include "core/store/history/history_entry.h"

#include <string>

namespace holdband::store {

/// "corrected a reading of Loop meter", "undid: pitched Pale 3", in the language of the reader. The
/// sentence of an entry of `other` is shown as it is.
std::string historyText(const HistoryEntry& entry);

} // namespace holdband::store
