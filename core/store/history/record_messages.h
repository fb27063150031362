// Messages about named records, by kind: languages have cases and genders, so each kind has
// separate, complete sentences. Not for use outside core/store.
#pragma once

#include <string_view>

namespace holdband::store {

/// English, for Phrase::tr. %1 is the name; of `alike`, %2 is the name already in use.
struct RecordMessages {
    std::string_view thing; ///< "setup"
    const char* missing;
    const char* taken;
    const char* alike;
    const char* needsName;
    const char* tooLong;
    const char* hasControls;
};

const RecordMessages& thingWords(std::string_view thing);

} // namespace holdband::store
