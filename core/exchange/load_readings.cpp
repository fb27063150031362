#include "core/exchange/load_readings.h"

#include "core/assign_result.h"
#include "core/exchange/load_place.h"
#include "core/store/readings/hand_readings.h"
#include "core/store/readings/meter_readings.h"
#include "core/store/records/equipment.h"
#include "core/text/phrase.h"

#include <algorithm>

namespace holdband::exchange {

ReadingsLoader::ReadingsLoader(const store::LogbookFile& logbook, const store::Change& change,
                               const Description& description, std::string name,
                               std::vector<store::HistoryEntryId> pastEntries)
    : m_logbook(logbook), m_change(change), m_description(description), m_name(std::move(name)),
      m_pastEntries(std::move(pastEntries))
{
}

std::string ReadingsLoader::at(const char* list, std::size_t index) const
{
    return m_name + ", " + indexed(list, index);
}

Done ReadingsLoader::check() const
{
    for (std::size_t i = 0; i < m_description.meterReadings.size(); ++i) {
        const DescribedReading& reading = m_description.meterReadings[i];
        const std::string place = at("meter_readings", i);
        if (reading.source && reading.source->file >= m_description.files.size())
            return dataProblem(
                Phrase::tr("there is no %1").with(indexed("files", reading.source->file)),
                place + ".from_file");
        if (reading.leftOutBy && *reading.leftOutBy >= m_description.history.size())
            return dataProblem(
                Phrase::tr("there is no %1").with(indexed("history", *reading.leftOutBy)),
                place + ".left_out_by");
    }
    return {};
}

bool ReadingsLoader::referTo(std::size_t file) const
{
    const auto& all = m_description.meterReadings;
    return std::any_of(all.begin(), all.end(), [&](const DescribedReading& reading) {
        return reading.source && reading.source->file == file;
    });
}

void ReadingsLoader::brought(std::size_t file, store::ImportId import)
{
    m_imports.emplace(file, import);
}

Done ReadingsLoader::addWithdrawn(std::size_t file)
{
    return addUnchecked([&](const DescribedReading& reading) {
        return !reading.leftOut && reading.source && reading.source->file == file;
    });
}

Result<std::size_t> ReadingsLoader::addRegisters()
{
    // Deleted readings are added first, so that they don't occupy the instant of a reading that
    // counts.
    HOLDBAND_TRY(addUnchecked([](const DescribedReading& reading) { return reading.leftOut; }));
    const std::vector<std::size_t> order = inOrderOfTime();
    for (const std::size_t i : order) {
        Done added = addChecked(m_description.meterReadings[i]);
        if (added)
            continue;
        Problem problem = added.error();
        if (problem.kind == ProblemKind::data)
            problem.place =
                at("meter_readings", i) + (problem.place.empty() ? "" : ", " + problem.place);
        return failure(std::move(problem));
    }
    for (auto& [meter, check] : m_registers)
        HOLDBAND_TRY(intake::saveMovedEvents(m_change, check));
    return order.size();
}

/// The readings that count, which may be in any order, sorted by time for the checks.
std::vector<std::size_t> ReadingsLoader::inOrderOfTime() const
{
    std::vector<std::size_t> order;
    for (std::size_t i = 0; i < m_description.meterReadings.size(); ++i) {
        const DescribedReading& reading = m_description.meterReadings[i];
        if (!reading.leftOut && !isWithdrawn(reading))
            order.push_back(i);
    }
    std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
        return m_description.meterReadings[a].inForce.at <
               m_description.meterReadings[b].inForce.at;
    });
    return order;
}

Done ReadingsLoader::addHandReadings()
{
    for (const bool leftOut : {true, false}) {
        for (std::size_t i = 0; i < m_description.handReadings.size(); ++i) {
            const DescribedHandReading& reading = m_description.handReadings[i];
            if (reading.leftOut == leftOut)
                HOLDBAND_TRY(placed(addHandReading(reading), at("hand_readings", i)));
        }
    }
    return {};
}

Result<intake::RegisterCheck*> ReadingsLoader::registerOf(const std::string& meter)
{
    auto found = m_registers.find(meter);
    if (found == m_registers.end()) {
        auto opened = intake::registerOf(m_logbook, meter);
        HOLDBAND_TRY(opened);
        found = m_registers.emplace(meter, std::move(*opened)).first;
    }
    return &found->second;
}

Done ReadingsLoader::addChecked(const DescribedReading& described)
{
    auto meter = registerOf(described.meter);
    HOLDBAND_TRY(meter);
    const intake::ReadingCheck check = (*meter)->check(described.inForce);
    if (check.doubt)
        return failure(check.doubt->problem);
    if (check.alreadyThere)
        return dataProblem(Phrase::tr("the meter \"%1\" has a reading at that instant already")
                               .with(described.meter));
    MeterReading inForce = described.inForce;
    inForce.event = check.event;
    (*meter)->accept(inForce, check);
    return addWithHistory(described, inForce);
}

Done ReadingsLoader::addUnchecked(const std::function<bool(const DescribedReading&)>& which)
{
    for (std::size_t i = 0; i < m_description.meterReadings.size(); ++i) {
        const DescribedReading& reading = m_description.meterReadings[i];
        if (which(reading))
            HOLDBAND_TRY(placed(addWithHistory(reading, reading.inForce), at("meter_readings", i)));
    }
    return {};
}

/// The description's, if the logbook that it is loaded into has another one.
Result<std::optional<Milliseconds>> ReadingsLoader::ownTimeDoubt()
{
    if (!m_usualDoubt) {
        auto settings = store::readSettings(m_logbook);
        HOLDBAND_TRY(settings);
        m_usualDoubt = settings->timeDoubt;
    }
    const Milliseconds described = m_description.settings.timeDoubt;
    return described == *m_usualDoubt ? std::nullopt : std::optional(described);
}

/// The first typed value is added as the reading, each later value as a correction of it.
Done ReadingsLoader::addWithHistory(const DescribedReading& described, const MeterReading& inForce)
{
    MeterReading first = inForce;
    if (!described.before.empty()) {
        first.registerReading = Energy::kilowattHours(described.before.front().kwh);
        first.decimals = described.before.front().decimals;
    }
    if (!first.timeDoubt && !described.source)
        HOLDBAND_TRY(assignResult(ownTimeDoubt(), first.timeDoubt));
    auto id = store::addMeterReading(m_change, described.meter, first, sourceOf(described));
    HOLDBAND_TRY(id);
    for (std::size_t i = 0; i < described.before.size(); ++i) {
        const store::Replaced& old = described.before[i];
        const bool last = i + 1 == described.before.size();
        const double kwh =
            last ? inForce.registerReading.kilowattHours() : described.before[i + 1].kwh;
        const int decimals = last ? inForce.decimals : described.before[i + 1].decimals;
        HOLDBAND_TRY(store::correctMeterReading(m_change, *id, kwh, decimals, old.until, old.why));
    }
    return described.leftOut ? store::deleteMeterReading(m_change, *id, leftOutBy(described))
                             : Done{};
}

/// As with registers: the first typed value is added, each later value as a correction of it.
Done ReadingsLoader::addHandReading(const DescribedHandReading& described)
{
    HandReading first = described.inForce;
    if (!described.before.empty()) {
        first.value = described.before.front().value;
        first.decimals = described.before.front().decimals;
    }
    auto id = store::addHandReading(m_change, described.owner, first);
    HOLDBAND_TRY(id);
    for (std::size_t i = 0; i < described.before.size(); ++i) {
        const store::ReplacedHandReading& old = described.before[i];
        const bool last = i + 1 == described.before.size();
        const double value = last ? described.inForce.value : described.before[i + 1].value;
        const int decimals = last ? described.inForce.decimals : described.before[i + 1].decimals;
        HOLDBAND_TRY(store::correctHandReading(m_change, *id, value, decimals, old.until, old.why));
    }
    return described.leftOut ? store::deleteHandReading(m_change, *id) : Done{};
}

std::optional<store::ReadingSource>
ReadingsLoader::sourceOf(const DescribedReading& described) const
{
    if (!described.source)
        return std::nullopt;
    const auto import = m_imports.find(described.source->file);
    if (import == m_imports.end())
        return std::nullopt;
    return store::ReadingSource{import->second, described.source->line};
}

/// The loaded history entry; absent: this load itself.
std::optional<store::HistoryEntryId>
ReadingsLoader::leftOutBy(const DescribedReading& described) const
{
    return described.leftOutBy && !m_pastEntries.empty()
               ? std::optional(m_pastEntries[*described.leftOutBy])
               : std::nullopt;
}

/// Whether it was withdrawn together with its import.
bool ReadingsLoader::isWithdrawn(const DescribedReading& described) const
{
    return described.source && m_description.files[described.source->file].withdrawn.has_value();
}

} // namespace holdband::exchange
