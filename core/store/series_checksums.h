// Whether the readings of a series fit the checksums that their imports brought. Added up while the
// series is read, which costs next to nothing. Not for use outside core/store.
#pragma once

#include "core/quantity/instant.h"
#include "core/store/sqlite.h"

#include <cstdint>
#include <map>
#include <string>
#include <vector>

namespace holdband::store {

class SeriesChecksums {
public:
    /// Of the imports of one sensor that count.
    static Result<SeriesChecksums> of(const Database& database, std::int64_t sensor);

    /// One import is all that the sensor has: rows need not say which one they are of.
    bool onlyOne() const { return m_columns.size() == 1; }
    std::int64_t firstImport() const { return m_columns.empty() ? 0 : m_columns.begin()->first; }

    void add(std::int64_t import, std::int64_t ms, double value);

    /// To be asked when all rows were added. An import that the series holds only a part of is read
    /// to its end where that is little beside the series; else false: not checked.
    /// Problem (file): the readings no longer fit.
    Result<bool> check(const Database& database) const;

private:
    struct Sum {
        std::int64_t readings = 0;
        std::uint64_t checksum = 0;
    };
    struct Column {
        std::string sensor;
        std::string file;
        Sum stored;
        Sum seen;
    };
    Result<Sum> wholeSum(const Database& database, std::int64_t import) const;
    Problem damaged(const Database& database, const Column& column) const;

    std::int64_t m_sensor = 0;
    std::int64_t m_added = 0;
    std::map<std::int64_t, Column> m_columns;
    std::int64_t m_lastImport = -1;
    Column* m_last = nullptr; ///< imports come in long runs
    bool m_stray = false;     ///< a reading of no import that counts
};

} // namespace holdband::store
