#include "core/store/readings/value_corrections.h"

#include "core/model/names.h"
#include "core/store/sqlite/rows.h"

namespace holdband::store {

namespace {

constexpr std::string_view selectCorrections =
    "SELECT s.name, c.at, c.value, c.unit, c.corrected_at, c.why FROM value_corrections c "
    "JOIN sensors s ON s.id = c.sensor ";

ValueCorrection correctionFrom(const Statement& row)
{
    return {row.text(0),    row.instant(1),
            row.real(2),    choiceNamed<ReadingUnit>(row.text(3)).value_or(ReadingUnit::celsius),
            row.instant(4), row.text(5)};
}

} // namespace

Result<std::vector<ValueCorrection>> readValueCorrections(const LogbookFile& logbook)
{
    return query(logbook.database(), std::string(selectCorrections) + "ORDER BY c.id",
                 correctionFrom);
}

Result<std::vector<ValueCorrection>> readValueCorrections(const LogbookFile& logbook, SensorId id)
{
    return query(logbook.database(),
                 std::string(selectCorrections) + "WHERE c.sensor = ? ORDER BY c.id",
                 correctionFrom, id.value);
}

Done addValueCorrection(const Change& change, const ValueCorrection& correction)
{
    auto sensor = idOf(change.database(), "sensors", "sensor", correction.sensor);
    HOLDBAND_TRY(sensor);
    return execute(
        change.database(),
        "INSERT INTO value_corrections (sensor, at, value, unit, corrected_at, why, act) "
        "VALUES (?, ?, ?, ?, ?, ?, ?)",
        *sensor, toMs(correction.at), correction.value, nameOf(correction.unit),
        toMs(correction.corrected), FreeText{correction.why}, change.entry().value);
}

} // namespace holdband::store
