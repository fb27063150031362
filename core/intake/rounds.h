// What a register reading may be: checked against its neighbours in time before it is kept.
#pragma once

#include "core/logbook/readings.h"
#include "core/store/logbook_file.h"

#include <optional>
#include <string>
#include <vector>

namespace holdband::intake {

/// A reading as somebody typed it.
struct TypedReading {
    std::string meter;
    MeterReading reading;
};

/// Why a reading can't be taken as it is.
enum class ReadingDoubt {
    unknownMeter,
    negative,
    inFuture,
    outOfService,  ///< before the meter's `from` or after its `to`
    belowBefore,   ///< less than the reading before: mistake, rollover, reset or another meter
    aboveAfter,    ///< more than the reading after it in time
    sameInstant,   ///< another value stands there
    tooManyDigits, ///< at or above the register's top
    rolloverWithoutTop,
};

struct DoubtfulReading {
    ReadingDoubt doubt;
    Problem problem; ///< the sentence, with the way out
};

/// Checks one reading against those that stand. `declaredRollover`: the register passed its
/// declared top so plainly (from its last tenth to its first) that it is taken as a rollover.
struct ReadingCheck {
    std::optional<DoubtfulReading> doubt;
    bool alreadyThere = false;
    bool takenAsRollover = false;
};
Result<ReadingCheck> checkReading(const store::LogbookFile& logbook, const TypedReading& typed);

/// Keeps all of the readings in one save, or none. Readings already there are passed over.
/// Returns how many are new.
Result<int> saveRound(const store::LogbookFile& logbook, const std::vector<TypedReading>& round);

} // namespace holdband::intake
