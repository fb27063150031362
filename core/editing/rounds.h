// Checks a reading typed in a round against its neighbours in time before it is stored.
#pragma once

#include "core/model/readings.h"
#include "core/store/logbook_file.h"
#include "core/store/readings/hand_readings.h"
#include "core/store/readings/meter_readings.h"

#include <optional>
#include <string>
#include <vector>

namespace holdband::intake {

/// A reading as the user typed it.
struct TypedReading {
    std::string meter;
    MeterReading reading;
};

/// Why a reading is refused.
enum class ReadingDoubt {
    unknownMeter,
    negative,
    inFuture,
    outOfService,  ///< before the meter's `from` or after its `to`
    belowBefore,   ///< less than the reading before: mistyped, rolled over, reset or another meter
    aboveAfter,    ///< more than the reading after it in time
    sameInstant,   ///< another value is already stored
    tooManyDigits, ///< at or above the highest value of the register
    rolloverWithoutTop,
};

struct DoubtfulReading {
    ReadingDoubt doubt;
    Problem problem; ///< the sentence, with how to fix it
};

/// The result of checking one reading against the stored ones. `takenAsRollover`: the register
/// passed its set highest value so clearly (from its last tenth to its first) that the reading
/// counts as a rollover, or the rollover known so far was before it.
struct ReadingCheck {
    std::optional<DoubtfulReading> doubt;
    bool alreadyThere = false;
    bool takenAsRollover = false;
    /// A sentence if a setup's rated power does not allow the reading: the user is asked once, and
    /// then it is saved.
    std::string unusual = {};
    std::optional<MeterEvent> event = {};     ///< to store with it
    std::optional<MeterEvent> nextEvent = {}; ///< to store with the next reading then
};
/// Here and below, `decimalSign` is used in the sentences.
Result<ReadingCheck> checkReading(const store::LogbookFile& logbook, const TypedReading& typed,
                                  char decimalSign = '.');

/// A temperature or a gravity as the user typed it.
struct TypedHandReading {
    store::HandOwner owner;
    HandReading reading;
};

/// Problem (data): in the future, or an impossible value: below −30 °C or above 110 °C, a gravity
/// outside 0.95 … 1.25.
Done checkHandReading(const store::LogbookFile& logbook, const TypedHandReading& typed);

/// The readings of one round.
struct TypedRound {
    std::vector<TypedReading> meters;
    std::vector<TypedHandReading> hand;
};

/// Saves all of the readings in one change, or none. Readings already stored are skipped. Returns
/// the number of new ones.
Result<int> saveRound(const store::LogbookFile& logbook, const TypedRound& round,
                      char decimalSign = '.');
Result<int> saveRound(const store::LogbookFile& logbook, const std::vector<TypedReading>& round);

/// The result that checkReading would give for another value of a stored register reading.
Result<ReadingCheck> checkCorrection(const store::LogbookFile& logbook, const std::string& meter,
                                     store::MeterReadingId reading, double kwh, int decimals,
                                     char decimalSign = '.');

/// Replaces the value of a stored register reading; the old value remains on record. The new value
/// is checked against its neighbours like a new reading. Problem (data): why it is refused.
Done correctRegister(const store::LogbookFile& logbook, const std::string& meter,
                     store::MeterReadingId reading, double kwh, int decimals,
                     const std::string& why, char decimalSign = '.');
/// Replaces the note of a reading; the history has the old one.
Done setRegisterNote(const store::LogbookFile& logbook, const std::string& meter,
                     store::MeterReadingId reading, const std::string& note);
Done setHandNote(const store::LogbookFile& logbook, const store::HandOwner& owner,
                 store::HandReadingId reading, const std::string& note);

/// `value` in `unit`; it is stored in the unit of the first value.
Done correctHand(const store::LogbookFile& logbook, const store::HandOwner& owner,
                 store::HandReadingId reading, double value, int decimals, ReadingUnit unit,
                 const std::string& why);

/// Deletes a reading from the record.
Done deleteRegister(const store::LogbookFile& logbook, const std::string& meter,
                    store::MeterReadingId reading, const std::string& why);
/// Deletes or restores several in one change; each restored one is checked like a new reading.
/// Problem (data): one of them is refused, or no longer there.
Done deleteRegisters(const store::LogbookFile& logbook, const std::string& meter,
                     const std::vector<store::MeterReadingId>& readings, const std::string& why);
Done restoreRegisters(const store::LogbookFile& logbook, const std::string& meter,
                      const std::vector<store::ListedRegister>& readings, char decimalSign = '.');
Done deleteHand(const store::LogbookFile& logbook, const store::HandOwner& owner,
                store::HandReadingId reading, const std::string& why);

} // namespace holdband::intake
