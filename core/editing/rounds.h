// What a reading typed in a round may be: checked against its neighbours in time before it is kept.
#pragma once

#include "core/model/readings.h"
#include "core/store/logbook_file.h"
#include "core/store/readings/hand_readings.h"
#include "core/store/readings/meter_readings.h"

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
    /// A sentence where a setup's rated power does not allow it: to be asked once, and then saved.
    std::string unusual = {};
};
/// Here and below, `decimalSign`: of the sentences.
Result<ReadingCheck> checkReading(const store::LogbookFile& logbook, const TypedReading& typed,
                                  char decimalSign = '.');

/// A thermometer or a gravity as somebody typed it.
struct TypedHandReading {
    store::HandOwner owner;
    HandReading reading;
};

/// Problem (data): in the future, or a value that can't be: below −30 °C or above 110 °C, a gravity
/// outside 0.95 … 1.25.
Done checkHandReading(const store::LogbookFile& logbook, const TypedHandReading& typed);

/// What one walk past the meters brings.
struct TypedRound {
    std::vector<TypedReading> meters;
    std::vector<TypedHandReading> hand;
};

/// Keeps all of the readings in one save, or none. Readings already there are passed over.
/// Returns how many are new.
Result<int> saveRound(const store::LogbookFile& logbook, const TypedRound& round,
                      char decimalSign = '.');
Result<int> saveRound(const store::LogbookFile& logbook, const std::vector<TypedReading>& round);

/// What checkReading would say of another value for a register reading that is there.
Result<ReadingCheck> checkCorrection(const store::LogbookFile& logbook, const std::string& meter,
                                     store::MeterReadingId reading, double kwh, int decimals,
                                     char decimalSign = '.');

/// Another value for a register reading that stands; what was there is kept. It is judged beside
/// its neighbours like a new one. Problem (data): the doubt about it.
Done correctRegister(const store::LogbookFile& logbook, const std::string& meter,
                     store::MeterReadingId reading, double kwh, int decimals,
                     const std::string& why, char decimalSign = '.');
/// The note beside a reading, in the place of what it was; the history keeps that.
Done setRegisterNote(const store::LogbookFile& logbook, const std::string& meter,
                     store::MeterReadingId reading, const std::string& note);
Done setHandNote(const store::LogbookFile& logbook, const store::HandOwner& owner,
                 store::HandReadingId reading, const std::string& note);

/// `value` in `unit`; it is kept in the unit of the first typing.
Done correctHand(const store::LogbookFile& logbook, const store::HandOwner& owner,
                 store::HandReadingId reading, double value, int decimals, ReadingUnit unit,
                 const std::string& why);

/// Takes a reading out of the record.
Done takeAwayRegister(const store::LogbookFile& logbook, const std::string& meter,
                      store::MeterReadingId reading, const std::string& why);
/// Several in one change, and back again: each is judged beside the others like a new one.
/// Problem (data): the doubt about one of them, or it is no longer there.
Done takeAwayRegisters(const store::LogbookFile& logbook, const std::string& meter,
                       const std::vector<store::MeterReadingId>& readings, const std::string& why);
Done bringBackRegisters(const store::LogbookFile& logbook, const std::string& meter,
                        const std::vector<store::ListedRegister>& readings, char decimalSign = '.');
Done takeAwayHand(const store::LogbookFile& logbook, const store::HandOwner& owner,
                  store::HandReadingId reading, const std::string& why);

} // namespace holdband::intake
