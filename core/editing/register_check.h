// Checks a further reading against one meter's register readings.
#pragma once

#include "core/editing/register_events.h"
#include "core/editing/rounds.h"
#include "core/model/equipment.h"
#include "core/text/zone.h"

#include <map>
#include <set>
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

    /// Judges another value of the stored reading at that instant; its own event is that of the
    /// stored one.
    ReadingCheck checkCorrection(const MeterReading& corrected) const;

    /// Adds a checked reading, so that later ones are compared with it too, and moves the event of
    /// the next one if the check says so.
    void accept(const MeterReading& reading, const ReadingCheck& check);
    /// Replaces the stored reading at that instant.
    void correct(const MeterReading& corrected, const ReadingCheck& check);
    /// Removes the stored readings at these instants, and moves their events.
    void remove(const std::set<Instant>& instants);
    /// Adds readings that were stored before, in order of time, with the events that still make
    /// sense; each is checked like a new one. Absent: all were added; else this check is of no
    /// further use.
    std::optional<DoubtfulReading> restore(const std::vector<MeterReading>& readings);

    const Meter& meter() const { return m_meter; }
    const std::vector<MeterReading>& stored() const { return m_stored; }
    /// The readings whose event is no longer the stored one; they are forgotten.
    std::vector<MeterReading> takeMovedEvents();

private:
    ReadingCheck judge(const RegisterChange& change) const;
    RegisterChange around(const MeterReading& reading) const;
    void setEvent(MeterReading& reading, const std::optional<MeterEvent>& event);
    std::optional<DoubtfulReading> ownDoubt(const MeterReading& reading) const;
    std::optional<DoubtfulReading> sameInstant(const MeterReading& reading,
                                               const MeterReading& stored) const;
    std::optional<DoubtfulReading> unexplained(const RegisterChange& change,
                                               RegisterEvents::Unexplained which) const;
    std::string aboveRatedPower(const MeterReading& from, const MeterReading& to) const;
    std::string unusual(const RegisterChange& change, const RegisterEvents& events) const;
    DoubtfulReading doubtful(ReadingDoubt doubt, std::string what, std::string remedy) const;
    std::string text(const MeterReading& reading) const;

    Meter m_meter;
    std::vector<MeterReading> m_stored;
    std::set<Instant> m_moved; ///< readings whose event was changed here
    Zone m_zone;
    char m_decimalSign;
    std::map<std::string, Power> m_ratedPower;
};

/// Saves the events that moved. Call it once all readings of the change are stored.
Done saveMovedEvents(const store::Change& change, RegisterCheck& check);

/// The check for a meter with its stored readings. Problem (data): unknown meter; the message has
/// suggestions.
Result<RegisterCheck> registerOf(const store::LogbookFile& logbook, const std::string& meter,
                                 char decimalSign = '.');

} // namespace holdband::intake
