// What SQLite's result codes mean to people. Not for use outside core/store.
#pragma once

#include "core/text/phrase.h"

#include <string>

namespace holdband::store {

/// The longest text or blob that is read or written, in bytes. The longest that a logbook really
/// holds is the record of a large change, far below this.
inline constexpr int mostBytesOfValue = 256 << 20;

/// A sentence for an extended result code. `message`: SQLite's own, for what has no sentence here.
std::string sqliteErrorText(int code, const std::string& message);

/// What to do about it; empty where there is no advice.
std::string sqliteErrorRemedy(int code);

/// The file that was opened is no longer the one with its name.
Phrase lostItsName();

} // namespace holdband::store
