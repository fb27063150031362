#include "app/meant_names.h"

#include "core/store/records/batches.h"
#include "core/store/records/equipment.h"
#include "core/text/name_suggestions.h"

#include <algorithm>

namespace holdband::app {

namespace {

template <typename Record>
std::vector<std::string> namesOf(const std::vector<Record>& records)
{
    std::vector<std::string> names;
    for (const Record& record : records)
        names.push_back(record.name);
    return names;
}

template <typename Record>
Result<std::string> meantOf(const Result<std::vector<Record>>& records, const std::string& typed)
{
    HOLDBAND_TRY(records);
    return meantName(typed, namesOf(*records)).value_or(typed);
}

/// Of two kinds: a name that is exactly one of them is that one.
template <typename First, typename Second>
Result<std::string> meantOfBoth(const Result<std::vector<First>>& first,
                                const Result<std::vector<Second>>& second, const std::string& typed)
{
    HOLDBAND_TRY(first);
    HOLDBAND_TRY(second);
    const std::vector<std::string> firstNames = namesOf(*first);
    const std::vector<std::string> secondNames = namesOf(*second);
    for (const auto* names : {&firstNames, &secondNames}) {
        if (std::find(names->begin(), names->end(), typed) != names->end())
            return typed;
    }
    if (const auto name = meantName(typed, firstNames))
        return *name;
    return meantName(typed, secondNames).value_or(typed);
}

} // namespace

Result<std::string> meantBatch(const store::LogbookFile& logbook, const std::string& typed)
{
    return meantOf(store::readBatches(logbook), typed);
}

Result<std::string> meantSetup(const store::LogbookFile& logbook, const std::string& typed)
{
    return meantOf(store::readSetups(logbook), typed);
}

Result<std::string> meantMeter(const store::LogbookFile& logbook, const std::string& typed)
{
    return meantOf(store::readMeters(logbook), typed);
}

Result<std::string> meantSensor(const store::LogbookFile& logbook, const std::string& typed)
{
    return meantOf(store::readSensors(logbook), typed);
}

Result<std::string> meantPlan(const store::LogbookFile& logbook, const std::string& typed)
{
    return meantOf(store::readPlans(logbook), typed);
}

Result<std::string> meantBatchOrSetup(const store::LogbookFile& logbook, const std::string& typed)
{
    return meantOfBoth(store::readBatches(logbook), store::readSetups(logbook), typed);
}

Result<std::string> meantSensorOrMeter(const store::LogbookFile& logbook, const std::string& typed)
{
    return meantOfBoth(store::readSensors(logbook), store::readMeters(logbook), typed);
}

Result<std::vector<std::string>>
allMeant(const store::LogbookFile& logbook, const std::vector<std::string>& typed,
         Result<std::string> (*meant)(const store::LogbookFile&, const std::string&))
{
    std::vector<std::string> names;
    for (const std::string& each : typed) {
        auto name = meant(logbook, each);
        HOLDBAND_TRY(name);
        names.push_back(std::move(*name));
    }
    return names;
}

} // namespace holdband::app
