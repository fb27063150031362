// Identifies a sensor's series over a span without reading it: two equal fingerprints in one
// logbook mean the same readings. It is made from each import's record of its readings (their
// number, times and checksum; soundness.h verifies them), from the readings at the span's edges,
// and from everything typed by hand.
#pragma once

#include "core/model/readings.h"
#include "core/store/logbook_file.h"
#include "core/store/readings/reading_blocks.h"

#include <array>
#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <vector>

namespace holdband::store {

struct SeriesFingerprint {
    /// An import's record for the sensor, if its readings may be inside the span.
    struct Column {
        std::int64_t import = 0;
        std::string unit;
        std::int64_t readings = 0;
        std::int64_t checksum = 0;
        std::optional<std::int64_t> first; ///< milliseconds since 1970
        std::optional<std::int64_t> last;

        bool operator==(const Column&) const = default;
    };
    /// A stored reading, and the unit of its import.
    struct Row {
        PlacedReading reading;
        std::string unit;

        bool operator==(const Row&) const = default;
    };
    struct Typed {
        Instant at;
        double value = 0.0;
        ReadingUnit unit = ReadingUnit::celsius;

        bool operator==(const Typed&) const = default;
    };

    std::int64_t sensor = 0; ///< its id
    std::vector<Column> columns;
    std::vector<Row> neighbours;    ///< the logged readings next before and after the span
    std::vector<Typed> corrections; ///< all of the sensor's, in order of creation
    std::vector<Typed> hand;        ///< inside the span, and one neighbour on each side

    bool operator==(const SeriesFingerprint&) const = default;
};

/// Takes fingerprints of many spans; the data of a sensor is read once. Use inside one reading
/// transaction, then drop.
class SeriesFingerprints {
public:
    explicit SeriesFingerprints(const LogbookFile& logbook) : m_logbook(&logbook) {}

    /// For the series from readSeries(logbook, sensor, span), and so for any part of the span.
    /// Problem (data): unknown sensor.
    Result<SeriesFingerprint> of(const std::string& sensor, Span span);

    /// Whether an earlier fingerprint of the span means the same readings as the current one: if
    /// both are equal, or if imports only got rows after the span since, as a watched file's does.
    /// Reads only those rows, once.
    Result<bool> same(const SeriesFingerprint& before, const SeriesFingerprint& now, Span span);

private:
    /// The rows that an import has for a sensor after an instant.
    struct Tail {
        std::int64_t readings = 0;
        std::uint64_t checksum = 0;
    };
    static void addTail(const BlockReadings& block, std::int64_t import, std::int64_t after,
                        Tail& tail);
    Result<Tail> tailOf(std::int64_t sensor, std::int64_t import, std::int64_t after);
    Result<bool> onlyGrew(const SeriesFingerprint::Column& before,
                          const SeriesFingerprint::Column& now, std::int64_t sensor, Span span);

    struct SensorRecords {
        std::int64_t id = 0;
        std::vector<SeriesFingerprint::Column> columns;
        std::vector<SeriesFingerprint::Typed> corrections;
        std::vector<SeriesFingerprint::Typed> hand;
    };
    Result<const SensorRecords*> recordsOf(const std::string& sensor);
    Done readRecords(const std::string& sensor, SensorRecords& into) const;

    const LogbookFile* m_logbook;
    std::map<std::string, SensorRecords> m_sensors;
    std::map<std::array<std::int64_t, 3>, Tail> m_tails; ///< by sensor, import, instant
};

} // namespace holdband::store
