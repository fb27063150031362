// Reads the fields of one JSON object with their types and units, and remembers the first error
// with its place; unknown keys are refused by name. Not for use outside core/exchange.
#pragma once

#include "core/problem.h"
#include "core/quantity/instant.h"
#include "core/quantity/temperature.h"
#include "core/text/zone.h"

#include <map>
#include <nlohmann/json.hpp>
#include <optional>
#include <set>
#include <string>
#include <vector>

namespace holdband::exchange {

using Json = nlohmann::ordered_json;

/// Shared by all objects of one document.
struct Reading {
    std::string fileName;
    Zone zone;
    std::optional<Problem> problem; ///< the first one
    /// The keys that the reader knows of each object in the document, by its place with the numbers
    /// removed: "batches[].schedule[]".
    std::map<std::string, std::set<std::string>> knownKeys = {};

    bool failed() const { return problem.has_value(); }
    void fail(const std::string& place, const std::string& what, const std::string& remedy = {});
};

class Fields {
public:
    Fields(const Json& object, std::string place, Reading& reading);

    bool has(const char* key) const;
    std::string requiredText(const char* key);
    std::optional<std::string> text(const char* key);
    double requiredNumber(const char* key, double least, double most);
    std::optional<double> number(const char* key, double least, double most);
    std::optional<int> integer(const char* key, int least, int most);
    Instant requiredTime(const char* key);
    std::optional<Instant> time(const char* key);
    std::optional<bool> flag(const char* key);
    /// The items of an array of times. Empty where the key is missing.
    std::vector<Instant> times(const char* key);
    std::optional<Hours> hours(const char* key);
    std::optional<Milliseconds> minutes(const char* key);
    /// From key + "_c" or key + "_f": an absolute temperature.
    std::optional<Temperature> temperature(const std::string& key);
    Temperature requiredTemperature(const std::string& key);
    /// From key + "_c" or key + "_f": a difference of at least `least` K.
    std::optional<TemperatureDifference> difference(const std::string& key, double leastKelvins);
    /// The number of decimals as written.
    std::optional<int> decimalsOf(const char* key) const;

    /// The items of an array of objects, each with its place. Empty where the key is missing.
    std::vector<Fields> objects(const char* key);
    std::optional<Fields> object(const char* key);
    /// The value of a key, which then counts as known; null where it is missing.
    const Json* raw(const char* key);

    const std::string& place() const { return m_place; }
    std::string placeOf(const std::string& key) const;
    void fail(const std::string& key, const std::string& what, const std::string& remedy = {});
    Reading& reading() const { return *m_reading; }

    /// Refuses keys that were never read.
    void refuseUnknown();

private:
    const Json* find(const std::string& key);
    std::optional<double> finite(const std::string& key, double least, double most);

    const Json* m_object;
    std::string m_place;
    Reading* m_reading;
    std::set<std::string> m_known;
};

} // namespace holdband::exchange
