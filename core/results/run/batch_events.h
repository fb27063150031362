// What an open batch's owner wants to be told at once: the beer arrived at a new target, it is out
// of its band, its log is silent. Events are found in the state of the batches; who shows them
// remembers which were told.
#pragma once

#include "core/analysis/run.h"
#include "core/store/logbook_file.h"
#include "core/text/zone.h"

#include <optional>
#include <string>
#include <vector>

namespace holdband::results {

enum class BatchEventKind { arrived, outOfBand, silent };

struct BatchEvent {
    BatchEventKind kind = BatchEventKind::arrived;
    std::string batch;
    /// With kind and batch the event's identity: when the stage began that the beer arrived in,
    /// when it left its band, or the last reading.
    Instant since;
    std::string sentence; ///< "The beer has been above its band for 2 h."

    bool isSame(const BatchEvent& other) const
    {
        return kind == other.kind && batch == other.batch && since == other.since;
    }
};

/// The beer came into the band of a stage that began with a new target.
struct BeerArrived {
    Instant turnedAt;
    Instant at;
    Temperature target;
};

/// The beer is outside its band at its last reading.
struct BeerOutside {
    analysis::Side side = analysis::Side::above;
    Instant since;
    Milliseconds length{0}; ///< time outside
};

/// An open batch as its last reading left it.
struct BatchState {
    std::string batch;
    std::string sensor; ///< that reads the beer now
    bool readByHand = false;
    Milliseconds gapLimit{0};
    std::optional<Instant> lastReading;
    std::optional<BeerArrived> arrived; ///< in the stage in progress
    std::optional<BeerOutside> outside; ///< for at least as long as the batch ignores
    TemperatureUnit unit = TemperatureUnit::celsius;
    char decimalSign = '.';
    Zone zone;
};

/// Of a batch that is open. Sensor, unit and zone are left to the caller.
BatchState batchStateOf(const analysis::RunInput& input, const analysis::RunFigures& figures);

/// Every open batch of the logbook.
Result<std::vector<BatchState>> openBatchStates(const store::LogbookFile& logbook,
                                                char decimalSign = '.');

/// All that can be told of the batch at that time. A log that is read by hand is never silent.
std::vector<BatchEvent> eventsOf(const BatchState& state, Instant now);

/// Finds jumps of the clock between two looks that a timer makes: after a suspend, or where the
/// clock was set. The watched files may have gone on meanwhile and were not read yet, so that a
/// log's silence says nothing until the next look.
class LookClock {
public:
    explicit LookClock(Milliseconds every) : m_every(every) {}

    /// Whether the time since the look before is about the timer's.
    bool ranEvenly(Instant now);

private:
    Milliseconds m_every;
    std::optional<Instant> m_last;
};

} // namespace holdband::results
