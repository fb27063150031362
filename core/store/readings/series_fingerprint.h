// What a sensor's series over a span is told apart by, without reading it: two equal prints of one
// logbook stand for the same readings. It rests on what every import keeps of its readings (their
// number, times and checksum; see soundness.h, which verifies that), on the readings at the span's
// edges, and on everything that was typed.
#pragma once

#include "core/model/readings.h"
#include "core/store/logbook_file.h"

#include <array>
#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <vector>

namespace holdband::store {

struct SeriesFingerprint {
    /// What one import brought for the sensor, where that may touch the span.
    struct Column {
        std::int64_t import = 0;
        std::string unit;
        std::int64_t readings = 0;
        std::int64_t checksum = 0;
        std::optional<std::int64_t> first; ///< milliseconds since 1970
        std::optional<std::int64_t> last;

        bool operator==(const Column&) const = default;
    };
    /// A stored row: its place and value, and the import that brought it with the unit.
    struct Row {
        std::int64_t place = 0;
        double value = 0.0;
        std::int64_t import = 0;
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
    std::vector<Typed> corrections; ///< all of the sensor's, in the order they were made
    std::vector<Typed> hand;        ///< inside the span, and one neighbour on each side

    bool operator==(const SeriesFingerprint&) const = default;
};

/// Takes prints of many spans; what belongs to a sensor is read once. To be used inside one
/// reading transaction and then dropped.
class SeriesFingerprints {
public:
    explicit SeriesFingerprints(const LogbookFile& logbook) : m_logbook(&logbook) {}

    /// Of what readSeries(logbook, sensor, span) gives, and so of that over any part of the span.
    /// Problem (data): unknown sensor.
    Result<SeriesFingerprint> of(const std::string& sensor, Span span);

    /// Whether an earlier print of the span stands for the same readings as the one of now: where
    /// both are equal, and where imports have only got rows after the span since, as that of a
    /// watched file does. Reads no more than those rows, once.
    Result<bool> same(const SeriesFingerprint& before, const SeriesFingerprint& now, Span span);

private:
    /// The rows that an import has for a sensor after an instant.
    struct Tail {
        std::int64_t readings = 0;
        std::uint64_t checksum = 0;
    };
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
