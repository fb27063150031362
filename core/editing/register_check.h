// One meter's register readings, and what a further one may be beside them.
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
    /// `standing` in order of time, corrections applied. `decimalSign`: of the doubts' sentences.
    RegisterCheck(Meter meter, std::vector<MeterReading> standing, Zone zone,
                  char decimalSign = '.');

    /// What the setups that the meter counts for may draw at most, by name.
    void setRatedPower(std::map<std::string, Power> ratedPower);

    /// Judges a reading by its value, the meter's service and its neighbours in time.
    ReadingCheck check(const MeterReading& reading) const;

    /// Takes a reading that was checked, so that later ones are judged beside it too.
    void accept(const MeterReading& reading);

    /// The register plainly passed its declared top between the two: from its last tenth to its
    /// first.
    bool rolledOver(const MeterReading& reading, const MeterReading& before) const;

    const std::vector<MeterReading>& standing() const { return m_standing; }

private:
    std::optional<DoubtfulReading> ownDoubt(const MeterReading& reading) const;
    std::optional<DoubtfulReading> doubtBefore(const MeterReading& reading,
                                               const MeterReading& before) const;
    std::string aboveRatedPower(const MeterReading& from, const MeterReading& to) const;
    std::string unusual(const MeterReading& reading, std::size_t next, bool rollover) const;
    DoubtfulReading doubtful(ReadingDoubt doubt, std::string what, std::string remedy) const;
    std::string text(const MeterReading& reading) const;

    Meter m_meter;
    std::vector<MeterReading> m_standing;
    Zone m_zone;
    char m_decimalSign;
    std::map<std::string, Power> m_ratedPower;
};

/// The event to keep with a reading: its own, or the rollover that the check found.
std::optional<MeterEvent> eventOf(const MeterReading& reading, const ReadingCheck& check);

/// The meter with its readings as they stand. Problem (data): unknown meter; near ones are listed.
Result<RegisterCheck> registerOf(const store::LogbookFile& logbook, const std::string& meter,
                                 char decimalSign = '.');

} // namespace holdband::intake
