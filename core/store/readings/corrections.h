// Corrections of register and hand readings, which work alike on separate tables: a correction is a
// record, and the last one gives the value in force. Not for use outside core/store.
#pragma once

#include "core/store/logbook_file.h"

#include <algorithm>
#include <string>
#include <vector>

namespace holdband::store {

/// The tables of one kind of reading.
struct CorrectedReadings {
    const char* readings;    ///< "meter_readings"
    const char* corrections; ///< "meter_corrections"
    const char* value;       ///< the column of a correction's value
};

struct Correction {
    std::int64_t reading = 0;
    double value = 0.0; ///< in the unit of the reading
    int decimals = 0;
    Instant at;
    std::string why;
};

/// Puts another value in force.
Done addCorrection(const Change& change, const CorrectedReadings& tables,
                   const Correction& correction);

Done setReadingNote(const Change& change, const CorrectedReadings& tables, std::int64_t reading,
                    const std::string& note);

/// In the order in which they were made. `condition`: SQL on the readings, which are called r, with
/// one placeholder, for `owner`.
Result<std::vector<Correction>> readCorrections(const Database& database,
                                                const CorrectedReadings& tables,
                                                const std::string& condition, std::int64_t owner);

/// Calls `apply(stored, correction)` for each correction in order. Corrections of other readings
/// are skipped.
template <typename Stored, typename Apply>
void applyCorrections(std::vector<Stored>& readings, const std::vector<Correction>& corrections,
                      Apply apply)
{
    for (const Correction& correction : corrections) {
        const auto found =
            std::find_if(readings.begin(), readings.end(), [&](const Stored& stored) {
                return stored.id.value == correction.reading;
            });
        if (found != readings.end())
            apply(*found, correction);
    }
}

} // namespace holdband::store
