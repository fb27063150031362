// To which pair of a meter's readings a rollover or reset belongs. An event is stored with the
// later reading of its pair, so every change of a reading may move the event of the pairs beside
// it. This is the only place that decides it: for readings typed, imported, corrected, deleted and
// restored.
#pragma once

#include "core/model/equipment.h"
#include "core/model/readings.h"

#include <optional>

namespace holdband::intake {

/// One reading of a register changes. Its neighbours in time; null where there is none.
struct RegisterChange {
    const MeterReading* before = nullptr;
    const MeterReading* was = nullptr; ///< null: the reading is added
    const MeterReading* now = nullptr; ///< null: it is deleted. Its event counts if it is added
    const MeterReading* after = nullptr;
};

/// The events to store then.
struct RegisterEvents {
    /// A fall that no event explains.
    enum class Unexplained { none, now, after };

    std::optional<MeterEvent> now;
    std::optional<MeterEvent> after;
    Unexplained unexplained = Unexplained::none;
};

/// An event stays with its pair while the pair still falls. If the fall moves to the other pair of
/// the stretch between the neighbours, the event moves there. If the fall is gone, so is a
/// rollover; a reset was always declared, so it stays with its reading, but is deleted with it. A
/// fall from the last tenth below a set highest value to the first tenth becomes a rollover.
RegisterEvents eventsAfter(const Meter& meter, const RegisterChange& change);

/// Whether a stored event still makes sense for a reading that is restored: a rollover without a
/// fall only if it would come from the reading after it.
std::optional<MeterEvent> eventRestored(const RegisterChange& change);

/// Whether the register clearly passed its set highest value between the two: from its last tenth
/// to its first.
bool rolledOver(const Meter& meter, const MeterReading& before, const MeterReading& reading);

} // namespace holdband::intake
