// A logbook as a description: the JSON document that `load` reads and `export` writes. Everything
// refers by name. resources/json-schema/description.json describes every key.
#pragma once

#include "core/intake/log/log.h"
#include "core/model/batch.h"
#include "core/model/cause.h"
#include "core/model/equipment.h"
#include "core/model/readings.h"
#include "core/model/weighing.h"
#include "core/problem.h"
#include "core/store/history/history.h"
#include "core/store/readings/hand_readings.h"
#include "core/store/readings/meter_readings.h"
#include "core/store/readings/readings.h"
#include "core/store/readings/value_corrections.h"
#include "core/store/records/exclusions.h"
#include "core/store/records/log_maps.h"

#include <array>
#include <map>
#include <optional>
#include <set>
#include <string>
#include <vector>

namespace holdband::exchange {

/// Where a log file's readings first came from, when the file is a copy made by `export`.
struct FileOrigin {
    std::string file;
    std::string sha256;
    std::int64_t rowsRead = 0;
    std::map<std::string, std::string> headers; ///< by sensor
    /// By sensor: from each instant on, readings came from successive lines of that file.
    std::map<std::string, std::vector<std::pair<Instant, std::int64_t>>> lines;

    bool operator==(const FileOrigin&) const = default;
};

inline constexpr std::array<std::pair<DateOrder, const char*>, 3> dateOrderNames{
    {{DateOrder::yearMonthDay, "ymd"},
     {DateOrder::monthDayYear, "mdy"},
     {DateOrder::dayMonthYear, "dmy"}}};

/// A log file to import. An import that brought only registers has no file: its readings are among
/// those of the meters, and the entry has only an origin.
struct FileEntry {
    std::string file; ///< relative to the description; empty if it brought only registers
    std::optional<std::string> time;
    std::optional<std::string> zone;
    std::optional<TemperatureUnit> unit;
    std::optional<DateOrder> dateOrder;
    std::map<std::string, std::string> columns; ///< sensor or meter → header
    std::optional<FileOrigin> origin;
    std::optional<Instant> withdrawn; ///< when the import was withdrawn; such files come first
};

/// Where a register reading was imported from.
struct DescribedSource {
    std::size_t file = 0; ///< index of the file entry
    std::int64_t line = 0;
};

struct DescribedReading {
    std::string meter;
    MeterReading inForce;
    std::vector<store::Replaced> before; ///< oldest first
    std::optional<DescribedSource> source;
    /// The reading was deleted on its own, not with its import.
    bool leftOut = false;
    std::optional<std::size_t> leftOutBy; ///< index of the history entry that deleted it
};

struct DescribedHandReading {
    store::HandOwner owner;
    HandReading inForce;
    std::vector<store::ReplacedHandReading> before; ///< oldest first
    bool leftOut = false;                           ///< the reading was deleted

    bool operator==(const DescribedHandReading&) const = default;
};

struct DescribedCause {
    std::string batch;
    ExcursionCause cause;

    bool operator==(const DescribedCause&) const = default;
};

/// A watched file or folder. How far it was read is stored only in the logbook that read it.
struct DescribedWatch {
    std::string path;
    std::string spec; ///< may be empty

    bool operator==(const DescribedWatch&) const = default;
};

struct Description {
    LogbookSettings settings;
    std::vector<Setup> setups;
    std::vector<Sensor> sensors;
    std::vector<Meter> meters;
    std::vector<Batch> batches;
    std::vector<DescribedCause> causes; ///< written with their batch
    std::vector<FileEntry> files;
    std::vector<DescribedReading> meterReadings;
    std::vector<store::Exclusion> exclusions;
    std::vector<JournalNote> journal;
    std::vector<NamedPlan> plans;
    std::vector<DescribedHandReading> handReadings;
    std::vector<store::ValueCorrection> corrections;
    Weighing weighing;
    std::vector<store::LogMap> logMaps;
    std::vector<DescribedWatch> watches;
    std::vector<store::PastHistoryEntry> history; ///< oldest first
    bool namesCurrency = false;                   ///< the document sets it
    bool namesPrice = false;
};

/// Values used where a description sets none: for a new logbook these defaults, else the logbook's
/// own.
struct DescriptionDefaults {
    std::string zone = "UTC";
    UnitSystem units = UnitSystem::metric;
};

/// Problem (data) with the key's place ("batches[0].schedule[1].target_f"), or with line and column
/// if it is not JSON: an unknown, doubled or missing key, a wrong type, a value out of range.
Result<Description> parseDescription(const std::string& text, const std::string& fileName,
                                     const DescriptionDefaults& defaults = {});

/// The keys that the reader knows of an object, by the object's place with the numbers removed:
/// "batches[].schedule[]", "" for the document itself.
using KnownKeys = std::map<std::string, std::set<std::string>>;

/// The keys that parseDescription knows of each object in the text, whether the object uses them or
/// not: the JSON Schema is tested against them. Problem (data) as for parseDescription.
Result<KnownKeys> keysReadFrom(const std::string& text);

/// The document, indented, in a fixed order of keys; temperatures in °C and differences in K, so
/// that reading it back gives the same numbers bit for bit.
std::string writeDescription(const Description& description);

} // namespace holdband::exchange
