// Imports as wholes: listed, taken back with everything they brought, and put back.
#pragma once

#include "core/store/logbook_file.h"

#include <optional>
#include <string>
#include <vector>

namespace holdband::store {

struct ImportLine {
    ImportId id;
    std::string file;
    Instant at; ///< when it was imported
    std::int64_t rowsRead = 0;
    std::int64_t readings = 0;     ///< of sensors and meters, that it brought
    std::vector<std::string> into; ///< names of those sensors and meters
    std::optional<Span> span;      ///< from its first reading to its last
    std::optional<Instant> withdrawnAt;
};

/// The newest first.
Result<std::vector<ImportLine>> listImports(const LogbookFile& logbook);

/// Takes everything that the import brought out of the logbook; it stands aside. Does nothing to
/// one that is taken back already.
Done withdraw(const Change& change, ImportId import);
/// As was done at another time.
Done withdrawAt(const Change& change, ImportId import, Instant when);
/// Problem (data): another import has since brought readings for the same times.
Done restoreImport(const Change& change, ImportId import);

/// The id that the next import gets: never one of an import whose readings stand aside.
Result<ImportId> nextImport(const Database& database);

/// What a changeset says of imports, gathered before it is applied.
class TouchedImports {
public:
    static Result<TouchedImports> in(const Database& database, const Changeset& changes);
    /// Brings the readings in line with the imports' records: aside where the record is gone or
    /// taken back, else in their places.
    Done settle(const Database& database) const;

private:
    std::vector<std::pair<std::int64_t, std::vector<std::int64_t>>> m_sensors; ///< by import
};

} // namespace holdband::store
