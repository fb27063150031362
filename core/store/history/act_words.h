// The acts of the history for people. A logbook keeps what was done in English, whatever language
// its brewer reads, so that a file reads the same everywhere; the words are put into the language
// when they are read.
#pragma once

#include <string>

namespace holdband::store {

/// "typed a round of 5 readings" in the language of the reader. What no act of this program is
/// called comes back as it stands.
std::string actForPeople(const std::string& stored);

} // namespace holdband::store
