#include "core/store/records/weighing.h"

#include "core/store/sqlite/rows.h"
#include "core/text/phrase.h"

#include <cmath>

namespace holdband::store {

namespace {

constexpr std::string_view liftKey = "reference_lift_k";
constexpr std::string_view hoursKey = "reference_h";
constexpr std::string_view batchesKey = "batches_per_year";
constexpr std::string_view priceKey = "other_price_per_kwh";
constexpr std::string_view quietKey = "quiet_after_h";

bool blank(const std::string& text)
{
    return text.find_first_not_of(" \t\r\n") == std::string::npos;
}

Done checkWeights(const Weighing& weighing)
{
    for (const auto& [criterion, weight] : weighing.weights) {
        if (blank(criterion))
            return dataProblem(Phrase::tr("a criterion has no name"));
        if (!(weight >= 0.0 && weight <= mostWeight))
            return dataProblem(Phrase::tr("a weight must be between 0 and 5"), criterion);
    }
    return {};
}

bool finite(std::optional<double> value)
{
    return !value || std::isfinite(*value);
}

Done checkCase(const Weighing& weighing)
{
    if (weighing.referenceLift && !(weighing.referenceLift->kelvins() >= 0.0))
        return dataProblem(Phrase::tr("the room of the reference hold is no colder than the beer"));
    if (weighing.referenceHours && !(weighing.referenceHours->count() > 0.0))
        return dataProblem(Phrase::tr("the reference hold lasts longer than nothing"));
    if (weighing.batchesPerYear && !(*weighing.batchesPerYear > 0.0))
        return dataProblem(Phrase::tr("the batches a year are more than none"));
    if (weighing.quietAfter && !(weighing.quietAfter->count() >= 0.0))
        return dataProblem(Phrase::tr("the wait after pitching is no shorter than nothing"));
    const auto hours = [](const std::optional<Hours>& length) {
        return length ? std::optional(length->count()) : std::nullopt;
    };
    if (!finite(weighing.otherPricePerKwh) || !finite(weighing.batchesPerYear) ||
        !finite(hours(weighing.referenceHours)) || !finite(hours(weighing.quietAfter)))
        return dataProblem(Phrase::tr("what is weighed by must be a number"));
    return {};
}

Done writeValue(const Database& database, std::string_view key, std::optional<double> value)
{
    if (!value)
        return execute(database, "DELETE FROM weighing WHERE key = ?", key);
    return execute(database, "INSERT OR REPLACE INTO weighing (key, value) VALUES (?, ?)", key,
                   *value);
}

Done writeWeights(const Database& database, const std::map<std::string, double>& weights)
{
    HOLDBAND_TRY(database.execute("DELETE FROM weights"));
    for (const auto& [criterion, weight] : weights)
        HOLDBAND_TRY(execute(database, "INSERT INTO weights VALUES (?, ?)",
                             std::string_view(criterion), weight));
    return {};
}

void take(Weighing& weighing, const std::string& key, double value)
{
    if (key == liftKey)
        weighing.referenceLift = TemperatureDifference::kelvins(value);
    else if (key == hoursKey)
        weighing.referenceHours = Hours{value};
    else if (key == batchesKey)
        weighing.batchesPerYear = value;
    else if (key == priceKey)
        weighing.otherPricePerKwh = value;
    else if (key == quietKey)
        weighing.quietAfter = Hours{value};
}

} // namespace

Result<Weighing> readWeighing(const LogbookFile& logbook)
{
    const Database& database = logbook.database();
    const auto pair = [](const Statement& row) { return std::pair(row.text(0), row.real(1)); };
    auto weights = query(database, "SELECT criterion, weight FROM weights", pair);
    HOLDBAND_TRY(weights);
    auto values = query(database, "SELECT key, value FROM weighing", pair);
    HOLDBAND_TRY(values);
    Weighing weighing;
    weighing.weights.insert(weights->begin(), weights->end());
    for (const auto& [key, value] : *values)
        take(weighing, key, value);
    return weighing;
}

Done writeWeighing(const Change& change, const Weighing& weighing)
{
    HOLDBAND_TRY(checkWeights(weighing));
    HOLDBAND_TRY(checkCase(weighing));
    const Database& database = change.database();
    HOLDBAND_TRY(writeWeights(database, weighing.weights));
    const auto hours = [](const std::optional<Hours>& length) {
        return length ? std::optional(length->count()) : std::nullopt;
    };
    HOLDBAND_TRY(writeValue(
        database, liftKey,
        weighing.referenceLift ? std::optional(weighing.referenceLift->kelvins()) : std::nullopt));
    HOLDBAND_TRY(writeValue(database, hoursKey, hours(weighing.referenceHours)));
    HOLDBAND_TRY(writeValue(database, batchesKey, weighing.batchesPerYear));
    HOLDBAND_TRY(writeValue(database, priceKey, weighing.otherPricePerKwh));
    return writeValue(database, quietKey, hours(weighing.quietAfter));
}

} // namespace holdband::store
