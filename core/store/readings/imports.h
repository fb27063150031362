// Imports as units: listed, withdrawn with everything they added, and restored.
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
    std::int64_t readings = 0;     ///< number of readings of sensors and meters that it added
    std::vector<std::string> into; ///< names of those sensors and meters
    std::optional<Span> span;      ///< from its first reading to its last
    std::optional<Instant> withdrawnAt;
};

/// Newest first.
Result<std::vector<ImportLine>> listImports(const LogbookFile& logbook);

/// Withdraws an import: moves everything that it added out of the record, to be stored apart. Does
/// nothing if it is already withdrawn. Rollovers and resets of a meter's other readings stay as
/// they are, here and where it is restored: core/editing/import_withdrawal.h moves them.
Done withdraw(const Change& change, ImportId import);
/// As withdraw, with the given time.
Done withdrawAt(const Change& change, ImportId import, Instant when);
/// Problem (data): another import has since added readings for the same times; then nothing was
/// written.
Done restoreImport(const Change& change, ImportId import);

/// The id for the next import: never one of an import whose withdrawn readings are still stored.
Result<ImportId> nextImport(const Database& database);

/// The imports that a changeset touches, collected before it is applied.
class TouchedImports {
public:
    static Result<TouchedImports> in(const Database& database, const Changeset& changes);
    /// Moves the readings to match the imports' records: to the withdrawn ones if the record is
    /// gone or withdrawn, else back in their places.
    Done settle(const Database& database) const;

private:
    std::vector<std::pair<std::int64_t, std::vector<std::int64_t>>> m_sensors; ///< by import
};

} // namespace holdband::store
