// Checks a further reading against one meter's register readings.
#pragma once

#include "core/editing/rounds.h"
#include "core/model/equipment.h"
#include "core/text/zone.h"

#include <map>
#include <string>
#include <vector>

namespace holdband::intake {

class RegisterCheck {
public:
    /// `stored`: the stored readings in order of time, with corrections. `decimalSign`: used in
    /// the sentences.
    RegisterCheck(Meter meter, std::vector<MeterReading> stored, Zone zone, char decimalSign = '.');

    /// The maximum power of the setups that the meter counts for, by name.
    void setRatedPower(std::map<std::string, Power> ratedPower);

    /// Judges a reading by its value, the meter's service and its neighbours in time.
    ReadingCheck check(const MeterReading& reading) const;

    /// Adds a checked reading, so that later ones are compared with it too.
    void accept(const MeterReading& reading);

    /// Whether the register clearly passed its set highest value between the two: from its last
    /// tenth to its first.
    bool rolledOver(const MeterReading& reading, const MeterReading& before) const;

    const std::vector<MeterReading>& stored() const { return m_stored; }

private:
    std::optional<DoubtfulReading> ownDoubt(const MeterReading& reading) const;
    std::optional<DoubtfulReading> doubtBefore(const MeterReading& reading,
                                               const MeterReading& before) const;
    std::string aboveRatedPower(const MeterReading& from, const MeterReading& to) const;
    std::string unusual(const MeterReading& reading, std::size_t next, bool rollover) const;
    DoubtfulReading doubtful(ReadingDoubt doubt, std::string what, std::string remedy) const;
    std::string text(const MeterReading& reading) const;

    Meter m_meter;
    std::vector<MeterReading> m_stored;
    Zone m_zone;
    char m_decimalSign;
    std::map<std::string, Power> m_ratedPower;
};

/// The event to store with a reading: its own, or the rollover that the check found.
std::optional<MeterEvent> eventOf(const MeterReading& reading, const ReadingCheck& check);

/// The check for a meter with its stored readings. Problem (data): unknown meter; the message has
/// suggestions.
Result<RegisterCheck> registerOf(const store::LogbookFile& logbook, const std::string& meter,
                                 char decimalSign = '.');

} // namespace holdband::intake
