// Bulk readings: written one sensor at a time in order of time, read back as series.
#pragma once

#include "core/model/readings.h"
#include "core/quantity/series.h"
#include "core/store/logbook_file.h"

#include <cstdint>
#include <vector>

namespace holdband::store {

/// A file's readings for one sensor: strictly increasing in time, raw values in one unit.
struct SensorRows {
    std::string sensor;
    std::string header;
    ReadingUnit unit = ReadingUnit::celsius;
    const std::vector<Instant>* at = nullptr;
    const std::vector<double>* raw = nullptr;
    const std::vector<std::uint32_t>* line = nullptr;
};

struct ImportedFile {
    std::string file; ///< without folders
    std::string sha256;
    std::int64_t rowsRead = 0;
};

/// A stored reading whose value differs from the file's.
struct StoredConflict {
    std::size_t row; ///< index into the SensorRows
    double stored;   ///< in the file's unit
};

struct AddedRows {
    std::int64_t added = 0;
    std::int64_t alreadyThere = 0;
    std::vector<StoredConflict> conflicts;
    std::vector<std::uint32_t> firstAdded; ///< indices into the SensorRows, at most mostListed
    std::vector<std::uint32_t> firstThere;
};
inline constexpr std::size_t mostListed = 1'000;

/// Adds the import's record. Its readings follow with addReadings.
Result<ImportId> addImport(const Change& change, const ImportedFile& file);

/// Whether the import exists and is not withdrawn.
bool isInForce(const Change& change, ImportId import);

/// Extends an import with more rows of the same file, for a watched one; `file.rowsRead` counts the
/// further rows. Problem (data): it is gone or withdrawn.
Result<ImportId> extendImport(const Change& change, ImportId import, const ImportedFile& file);

/// Adds the rows that are not stored yet. A row with a stored instant and the same value is a
/// duplicate, with another value a conflict: the stored value remains. Problem (data): unknown
/// sensor.
Result<AddedRows> addReadings(const Change& change, ImportId import, const SensorRows& rows);

/// The result that addReadings would give; writes nothing.
Result<AddedRows> compareReadings(const LogbookFile& logbook, const SensorRows& rows);

/// Removes the import's own record if it added nothing.
Done dropEmptyImport(const Change& change, ImportId import);

/// The sensor's readings inside the span (ends included) and one neighbour on each side, in the
/// base unit of its quantity: °C, W or specific gravity. Without offsets and exclusions. Problem
/// (file): a reading is not finite, or the readings no longer match their checksum.
Result<Series> readSeries(const LogbookFile& logbook, const std::string& sensor, Span span);

/// The times of the sensor's first logged reading and of its last reading.
Result<std::optional<Instant>> firstLoggedAt(const LogbookFile& logbook, const std::string& sensor);
Result<std::optional<Instant>> lastReadingAt(const LogbookFile& logbook, const std::string& sensor);

/// The readings that one import added for one sensor, as they were in the file.
struct RawColumn {
    std::string sensor;
    std::string header;
    ReadingUnit unit = ReadingUnit::celsius;
    std::vector<Instant> at;
    std::vector<double> raw;                             ///< in the import's unit
    std::vector<std::pair<Instant, std::int64_t>> lines; ///< where runs of successive lines begin
};
struct RawImport {
    ImportId id;
    ImportedFile file;
    std::optional<Instant> withdrawnAt;
    std::vector<RawColumn> columns;
};

/// All imports, without the readings; the columns are those of sensors. First the withdrawn ones,
/// whose readings may have been imported again since, then the others; oldest first.
Result<std::vector<RawImport>> readImports(const LogbookFile& logbook);
/// Fills in the readings and lines of an import.
Done readRawColumns(const LogbookFile& logbook, RawImport& import);

} // namespace holdband::store
