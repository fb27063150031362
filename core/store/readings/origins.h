// Where the readings of an import first came from, when it read a copy made by `export`.
#pragma once

#include "core/store/logbook_file.h"

#include <map>
#include <string>
#include <utility>
#include <vector>

namespace holdband::store {

struct Origin {
    std::map<std::string, std::string> headers; ///< by sensor
    /// By sensor: from each instant on, successive lines of the first file.
    std::map<std::string, std::vector<std::pair<Instant, std::int64_t>>> lines;
};

/// Replaces the headers and lines that the import recorded. Problem (data): an unknown sensor.
Done setOrigin(const Change& change, ImportId import, const Origin& origin);

} // namespace holdband::store
