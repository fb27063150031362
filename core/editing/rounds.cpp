#include "core/editing/rounds.h"

#include "core/editing/register_check.h"
#include "core/store/readings/reading_units.h"
#include "core/store/records/equipment.h"
#include "core/text/name_suggestions.h"
#include "core/text/phrase.h"
#include "core/text/places.h"
#include "core/text/times.h"

#include <algorithm>
#include <map>
#include <set>

namespace holdband::intake {

namespace {

/// Clocks of two devices may differ a little.
constexpr Milliseconds clockSlack = std::chrono::minutes{2};

Problem unknownMeter(const std::vector<Meter>& meters, const std::string& name)
{
    std::vector<std::string> names;
    for (const Meter& meter : meters)
        names.push_back(meter.name);
    return {ProblemKind::data,
            Phrase::tr("there is no meter \"%1\"").with(name),
            {},
            suggestion(name, names)};
}

struct MeterContext {
    std::vector<Meter> meters;
    Zone zone;
    char decimalSign = '.';                  ///< for the sentences
    std::map<std::string, Power> ratedPower; ///< of the setups that have one
};

Result<std::map<std::string, Power>> readRatedPower(const store::LogbookFile& logbook)
{
    auto setups = store::readSetups(logbook);
    HOLDBAND_TRY(setups);
    std::map<std::string, Power> rated;
    for (const Setup& setup : *setups) {
        if (setup.ratedPower)
            rated.emplace(setup.name, *setup.ratedPower);
    }
    return rated;
}

RegisterCheck checkOf(const MeterContext& context, const Meter& meter,
                      std::vector<MeterReading> stored)
{
    RegisterCheck check(meter, std::move(stored), context.zone, context.decimalSign);
    check.setRatedPower(context.ratedPower);
    return check;
}

Result<MeterContext> readContext(const store::LogbookFile& logbook, char decimalSign = '.')
{
    auto meters = store::readMeters(logbook);
    HOLDBAND_TRY(meters);
    auto settings = store::readSettings(logbook);
    HOLDBAND_TRY(settings);
    auto zone = Zone::named(settings->zone);
    HOLDBAND_TRY(zone);
    auto rated = readRatedPower(logbook);
    HOLDBAND_TRY(rated);
    return MeterContext{std::move(*meters), *zone, decimalSign, std::move(*rated)};
}

Result<RegisterCheck> openRegister(const store::LogbookFile& logbook, const MeterContext& context,
                                   const std::string& name)
{
    const auto meter = std::find_if(context.meters.begin(), context.meters.end(),
                                    [&](const Meter& each) { return each.name == name; });
    if (meter == context.meters.end())
        return failure(unknownMeter(context.meters, name));
    auto stored = store::readMeterReadings(logbook, name);
    HOLDBAND_TRY(stored);
    std::vector<MeterReading> readings;
    for (store::StoredReading& reading : *stored)
        readings.push_back(std::move(reading.inForce));
    return checkOf(context, *meter, std::move(readings));
}

std::string inFuture(Instant at, const Zone& zone)
{
    return Phrase::tr("%1 is in the future").with(localText(at, zone));
}

ReadingCheck checkTyped(const RegisterCheck& meter, const TypedReading& typed, Instant now,
                        const Zone& zone)
{
    if (typed.reading.at > now + clockSlack) {
        Problem problem{ProblemKind::data, inFuture(typed.reading.at, zone),
                        meterPlace(typed.meter), Phrase::tr("check the time")};
        return {DoubtfulReading{ReadingDoubt::inFuture, std::move(problem)}, false, false};
    }
    ReadingCheck check = meter.check(typed.reading);
    if (check.doubt && check.doubt->doubt == ReadingDoubt::aboveAfter) {
        const auto later =
            std::find_if(meter.stored().begin(), meter.stored().end(),
                         [&](const MeterReading& each) { return each.at > typed.reading.at; });
        if (later != meter.stored().end() && later->at > now + clockSlack)
            check.doubt->problem.remedy =
                Phrase::tr("that time is in the future: the computer's clock was wrong when it was "
                           "saved, or is wrong now; set the clock, or correct that reading's time");
    }
    return check;
}

constexpr double coldestBeer = -30.0; ///< °C; a value beyond has a wrong digit or unit
constexpr double hottestWort = 110.0; ///< °C
constexpr double leastGravity = 0.95;
constexpr double mostGravity = 1.25;

std::string ownerPlace(const store::HandOwner& owner)
{
    return Phrase::tr("\"%1\"").with(owner.name);
}

Done checkHand(const TypedHandReading& typed, Instant now, const Zone& zone)
{
    const std::string place = ownerPlace(typed.owner);
    if (typed.reading.at > now + clockSlack)
        return dataProblem(inFuture(typed.reading.at, zone), place, Phrase::tr("check the time"));
    const double base = store::baseValue(typed.reading.value, typed.reading.unit);
    const bool gravity = typed.reading.unit == ReadingUnit::specificGravity ||
                         typed.reading.unit == ReadingUnit::degreePlato;
    if (gravity && !(base >= leastGravity && base <= mostGravity))
        return dataProblem(Phrase::tr("a gravity must be between 0.950 and 1.250"), place,
                           Phrase::tr("type it as 1.050"));
    if (!gravity && !(base >= coldestBeer && base <= hottestWort))
        return dataProblem(Phrase::tr("beer is never that cold or hot"), place,
                           Phrase::tr("check the number"));
    return {};
}

store::HistoryEntry entryOf(const TypedRound& round)
{
    return {store::HistoryVerb::roundTyped,
            {std::to_string(round.meters.size() + round.hand.size())}};
}

/// Returns how many are new.
Result<int> saveRegisters(const store::LogbookFile& logbook, const store::Change& change,
                          const MeterContext& context, const std::vector<TypedReading>& round)
{
    std::map<std::string, RegisterCheck> meters;
    int added = 0;
    for (const TypedReading& typed : round) {
        if (!meters.contains(typed.meter)) {
            auto meter = openRegister(logbook, context, typed.meter);
            HOLDBAND_TRY(meter);
            meters.emplace(typed.meter, std::move(*meter));
        }
        RegisterCheck& meter = meters.at(typed.meter);
        const ReadingCheck check = checkTyped(meter, typed, logbook.now(), context.zone);
        if (check.doubt)
            return failure(check.doubt->problem);
        if (check.alreadyThere)
            continue;
        MeterReading reading = typed.reading;
        reading.event = check.event;
        HOLDBAND_TRY(store::addMeterReading(change, typed.meter, reading));
        meter.accept(reading, check);
        ++added;
    }
    for (auto& [name, meter] : meters)
        HOLDBAND_TRY(saveMovedEvents(change, meter));
    return added;
}

} // namespace

Result<RegisterCheck> registerOf(const store::LogbookFile& logbook, const std::string& meter,
                                 char decimalSign)
{
    auto context = readContext(logbook, decimalSign);
    HOLDBAND_TRY(context);
    return openRegister(logbook, *context, meter);
}

Result<ReadingCheck> checkReading(const store::LogbookFile& logbook, const TypedReading& typed,
                                  char decimalSign)
{
    auto context = readContext(logbook, decimalSign);
    HOLDBAND_TRY(context);
    auto meter = openRegister(logbook, *context, typed.meter);
    if (!meter)
        return ReadingCheck{DoubtfulReading{ReadingDoubt::unknownMeter, meter.error()}, false,
                            false};
    return checkTyped(*meter, typed, logbook.now(), context->zone);
}

Done checkHandReading(const store::LogbookFile& logbook, const TypedHandReading& typed)
{
    auto context = readContext(logbook);
    HOLDBAND_TRY(context);
    return checkHand(typed, logbook.now(), context->zone);
}

Result<int> saveRound(const store::LogbookFile& logbook, const std::vector<TypedReading>& round)
{
    return saveRound(logbook, TypedRound{round, {}});
}

Result<int> saveRound(const store::LogbookFile& logbook, const TypedRound& round, char decimalSign)
{
    auto context = readContext(logbook, decimalSign);
    HOLDBAND_TRY(context);
    auto change = store::Change::begin(logbook, entryOf(round));
    HOLDBAND_TRY(change);
    auto added = saveRegisters(logbook, *change, *context, round.meters);
    HOLDBAND_TRY(added);
    for (const TypedHandReading& typed : round.hand) {
        HOLDBAND_TRY(checkHand(typed, logbook.now(), context->zone));
        HOLDBAND_TRY(store::addHandReading(*change, typed.owner, typed.reading));
        ++*added;
    }
    if (*added > 0)
        HOLDBAND_TRY(change->commit());
    return *added;
}

namespace {

Result<store::StoredReading> storedReadingOf(const store::LogbookFile& logbook,
                                             const std::string& meter, store::MeterReadingId id)
{
    auto stored = store::readMeterReadings(logbook, meter);
    HOLDBAND_TRY(stored);
    for (store::StoredReading& reading : *stored) {
        if (reading.id == id)
            return std::move(reading);
    }
    return dataProblem(Phrase::tr("the reading is no longer there"), meterPlace(meter));
}

bool isGravity(const store::HandOwner& owner)
{
    return owner.kind == store::HandOwner::Kind::batch;
}

/// A stored reading with another value, and the register that it belongs to.
struct CorrectedRegister {
    RegisterCheck check;
    MeterReading reading;
};

Result<CorrectedRegister> correctedRegister(const store::LogbookFile& logbook,
                                            const std::string& meter, store::MeterReadingId id,
                                            double kwh, int decimals, char decimalSign)
{
    auto stored = storedReadingOf(logbook, meter, id);
    HOLDBAND_TRY(stored);
    auto check = registerOf(logbook, meter, decimalSign);
    HOLDBAND_TRY(check);
    CorrectedRegister corrected{std::move(*check), std::move(stored->inForce)};
    corrected.reading.registerReading = Energy::kilowattHours(kwh);
    corrected.reading.decimals = decimals;
    return corrected;
}

} // namespace

Result<ReadingCheck> checkCorrection(const store::LogbookFile& logbook, const std::string& meter,
                                     store::MeterReadingId reading, double kwh, int decimals,
                                     char decimalSign)
{
    auto corrected = correctedRegister(logbook, meter, reading, kwh, decimals, decimalSign);
    HOLDBAND_TRY(corrected);
    return corrected->check.checkCorrection(corrected->reading);
}

Done correctRegister(const store::LogbookFile& logbook, const std::string& meter,
                     store::MeterReadingId reading, double kwh, int decimals,
                     const std::string& why, char decimalSign)
{
    auto corrected = correctedRegister(logbook, meter, reading, kwh, decimals, decimalSign);
    HOLDBAND_TRY(corrected);
    RegisterCheck& check = corrected->check;
    const ReadingCheck result = check.checkCorrection(corrected->reading);
    if (result.doubt)
        return failure(result.doubt->problem);
    auto change =
        store::Change::begin(logbook, {store::HistoryVerb::readingCorrected, {meter}, why});
    HOLDBAND_TRY(change);
    HOLDBAND_TRY(store::correctMeterReading(*change, reading, kwh, decimals, change->at(), why));
    check.correct(corrected->reading, result);
    HOLDBAND_TRY(saveMovedEvents(*change, check));
    return change->commit();
}

Done correctHand(const store::LogbookFile& logbook, const store::HandOwner& owner,
                 store::HandReadingId reading, double value, int decimals, ReadingUnit unit,
                 const std::string& why)
{
    auto stored = store::readHandReadings(logbook, owner);
    HOLDBAND_TRY(stored);
    const auto found = std::find_if(stored->begin(), stored->end(),
                                    [&](const auto& each) { return each.id == reading; });
    if (found == stored->end())
        return dataProblem(Phrase::tr("the reading is no longer there"), ownerPlace(owner));
    TypedHandReading corrected{owner, found->inForce};
    const ReadingUnit first = found->inForce.unit;
    corrected.reading.value =
        unit == first ? value : store::rawValue(store::baseValue(value, unit), first);
    HOLDBAND_TRY(checkHandReading(logbook, corrected));
    auto change =
        store::Change::begin(logbook, {isGravity(owner) ? store::HistoryVerb::gravityCorrected
                                                        : store::HistoryVerb::readingCorrected,
                                       {owner.name},
                                       why});
    HOLDBAND_TRY(change);
    HOLDBAND_TRY(store::correctHandReading(*change, reading, corrected.reading.value, decimals,
                                           change->at(), why));
    return change->commit();
}

Done setRegisterNote(const store::LogbookFile& logbook, const std::string& meter,
                     store::MeterReadingId reading, const std::string& note)
{
    HOLDBAND_TRY(storedReadingOf(logbook, meter, reading));
    auto change = store::Change::begin(logbook, {store::HistoryVerb::readingNoteChanged, {meter}});
    HOLDBAND_TRY(change);
    HOLDBAND_TRY(store::setMeterReadingNote(*change, reading, note));
    return change->commit();
}

Done setHandNote(const store::LogbookFile& logbook, const store::HandOwner& owner,
                 store::HandReadingId reading, const std::string& note)
{
    auto change =
        store::Change::begin(logbook, {isGravity(owner) ? store::HistoryVerb::gravityNoteChanged
                                                        : store::HistoryVerb::readingNoteChanged,
                                       {owner.name}});
    HOLDBAND_TRY(change);
    HOLDBAND_TRY(store::setHandReadingNote(*change, reading, note));
    return change->commit();
}

Done deleteRegister(const store::LogbookFile& logbook, const std::string& meter,
                    store::MeterReadingId reading, const std::string& why)
{
    return deleteRegisters(logbook, meter, {reading}, why);
}

Done deleteRegisters(const store::LogbookFile& logbook, const std::string& meter,
                     const std::vector<store::MeterReadingId>& readings, const std::string& why)
{
    std::set<Instant> instants;
    for (const store::MeterReadingId reading : readings) {
        auto stored = storedReadingOf(logbook, meter, reading);
        HOLDBAND_TRY(stored);
        instants.insert(stored->inForce.at);
    }
    auto check = registerOf(logbook, meter);
    HOLDBAND_TRY(check);
    auto change = store::Change::begin(
        logbook,
        {store::HistoryVerb::readingDeleted, {meter, std::to_string(readings.size())}, why});
    HOLDBAND_TRY(change);
    for (const store::MeterReadingId reading : readings)
        HOLDBAND_TRY(store::deleteMeterReading(*change, reading));
    check->remove(instants);
    HOLDBAND_TRY(saveMovedEvents(*change, *check));
    return change->commit();
}

Done restoreRegisters(const store::LogbookFile& logbook, const std::string& meter,
                      const std::vector<store::ListedRegister>& readings, char decimalSign)
{
    auto check = registerOf(logbook, meter, decimalSign);
    HOLDBAND_TRY(check);
    auto change = store::Change::begin(
        logbook, {store::HistoryVerb::readingRestored, {meter, std::to_string(readings.size())}});
    HOLDBAND_TRY(change);
    std::vector<MeterReading> restored;
    for (const store::ListedRegister& reading : readings) {
        restored.push_back(reading.inForce);
        HOLDBAND_TRY(store::restoreMeterReading(*change, reading.id));
    }
    std::sort(restored.begin(), restored.end(),
              [](const MeterReading& a, const MeterReading& b) { return a.at < b.at; });
    if (const auto doubt = check->restore(restored))
        return failure(doubt->problem);
    HOLDBAND_TRY(saveMovedEvents(*change, *check));
    return change->commit();
}

Done deleteHand(const store::LogbookFile& logbook, const store::HandOwner& owner,
                store::HandReadingId reading, const std::string& why)
{
    const store::HistoryEntry entry =
        isGravity(owner)
            ? store::HistoryEntry{store::HistoryVerb::gravityDeleted, {owner.name}, why}
            : store::HistoryEntry{store::HistoryVerb::readingDeleted, {owner.name, "1"}, why};
    auto change = store::Change::begin(logbook, entry);
    HOLDBAND_TRY(change);
    HOLDBAND_TRY(store::deleteHandReading(*change, reading));
    return change->commit();
}

} // namespace holdband::intake
