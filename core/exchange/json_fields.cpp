#include "core/exchange/json_fields.h"

#include "core/text/name_suggestions.h"
#include "core/text/numbers.h"
#include "core/text/phrase.h"
#include "core/text/times.h"

#include <cmath>

namespace holdband::exchange {

namespace {

constexpr double anyNumber = 1e12;
constexpr double longestMinutes = 60.0 * 24.0 * 3660.0;

std::string kindOf(const Json& value)
{
    if (value.is_string())
        return Phrase::tr("text", "kind of JSON value");
    if (value.is_number())
        return Phrase::tr("a number", "kind of JSON value");
    if (value.is_array())
        return Phrase::tr("a list", "kind of JSON value");
    if (value.is_object())
        return Phrase::tr("an object", "kind of JSON value");
    return value.is_null() ? Phrase::tr("null", "kind of JSON value")
                           : Phrase::tr("true or false", "kind of JSON value");
}

/// Turns "batches[0].schedule[12]" into "batches[].schedule[]".
std::string withoutNumbers(const std::string& place)
{
    std::string kind;
    bool inside = false;
    for (const char c : place) {
        inside = inside && c != ']';
        if (!inside)
            kind += c;
        inside = inside || c == '[';
    }
    return kind;
}

} // namespace

void Reading::fail(const std::string& place, const std::string& what, const std::string& remedy)
{
    if (problem)
        return;
    problem = Problem{ProblemKind::data, what, place.empty() ? fileName : fileName + ", " + place,
                      remedy};
}

Fields::Fields(const Json& object, std::string place, Reading& reading)
    : m_object(&object), m_place(std::move(place)), m_reading(&reading)
{
    if (!object.is_object())
        m_reading->fail(m_place, Phrase::tr("expected an object, found %1").with(kindOf(object)));
}

std::string Fields::placeOf(const std::string& key) const
{
    return m_place.empty() ? key : m_place + "." + key;
}

void Fields::fail(const std::string& key, const std::string& what, const std::string& remedy)
{
    m_reading->fail(placeOf(key), what, remedy);
}

bool Fields::has(const char* key) const
{
    return m_object->is_object() && m_object->contains(key);
}

const Json* Fields::find(const std::string& key)
{
    m_known.insert(key);
    if (!m_object->is_object())
        return nullptr;
    const auto found = m_object->find(key);
    return found == m_object->end() ? nullptr : &*found;
}

const Json* Fields::raw(const char* key)
{
    return find(key);
}

std::optional<std::string> Fields::text(const char* key)
{
    const Json* value = find(key);
    if (!value)
        return std::nullopt;
    if (!value->is_string()) {
        fail(key, Phrase::tr("expected text, found %1").with(kindOf(*value)));
        return std::nullopt;
    }
    return value->get<std::string>();
}

std::string Fields::requiredText(const char* key)
{
    if (!find(key))
        fail(key, Phrase::tr("the key is missing"));
    return text(key).value_or("");
}

std::optional<double> Fields::finite(const std::string& key, double least, double most)
{
    const Json* value = find(key);
    if (!value)
        return std::nullopt;
    if (!value->is_number()) {
        fail(key, Phrase::tr("expected a number, found %1").with(kindOf(*value)));
        return std::nullopt;
    }
    const double number = value->get<double>();
    if (!(std::isfinite(number) && number >= least && number <= most)) {
        fail(key, Phrase::tr("%1 is not between %2 and %3")
                      .with(shortestText(number), shortestText(least), shortestText(most)));
        return std::nullopt;
    }
    return number;
}

std::optional<double> Fields::number(const char* key, double least, double most)
{
    return finite(key, least, most);
}

double Fields::requiredNumber(const char* key, double least, double most)
{
    if (!find(key))
        fail(key, Phrase::tr("the key is missing"));
    return number(key, least, most).value_or(least);
}

std::optional<int> Fields::integer(const char* key, int least, int most)
{
    const auto value = finite(key, least, most);
    if (value && *value != std::floor(*value)) {
        fail(key, Phrase::tr("%1 is not a whole number").with(shortestText(*value)));
        return std::nullopt;
    }
    return value ? std::optional(static_cast<int>(*value)) : std::nullopt;
}

std::optional<Instant> Fields::time(const char* key)
{
    const auto written = text(key);
    if (!written)
        return std::nullopt;
    auto instant = parseTime(*written, m_reading->zone);
    if (!instant) {
        fail(key, instant.error().what, instant.error().remedy);
        return std::nullopt;
    }
    return *instant;
}

Instant Fields::requiredTime(const char* key)
{
    if (!find(key))
        fail(key, Phrase::tr("the key is missing"));
    return time(key).value_or(Instant{});
}

std::optional<bool> Fields::flag(const char* key)
{
    const Json* value = find(key);
    if (!value)
        return std::nullopt;
    if (!value->is_boolean()) {
        fail(key, Phrase::tr("expected true or false, found %1").with(kindOf(*value)));
        return std::nullopt;
    }
    return value->get<bool>();
}

std::vector<Instant> Fields::times(const char* key)
{
    std::vector<Instant> all;
    const Json* list = find(key);
    if (!list)
        return all;
    if (!list->is_array()) {
        fail(key, Phrase::tr("expected a list of times"));
        return all;
    }
    for (const Json& item : *list) {
        const auto at = item.is_string()
                            ? parseTime(item.get<std::string>(), m_reading->zone)
                            : Result<Instant>(dataProblem(Phrase::tr("expected a time")));
        if (!at) {
            fail(key, at.error().what, at.error().remedy);
            return all;
        }
        all.push_back(*at);
    }
    return all;
}

std::optional<Hours> Fields::hours(const char* key)
{
    const auto value = finite(key, -anyNumber, anyNumber);
    return value ? std::optional(Hours{*value}) : std::nullopt;
}

std::optional<Milliseconds> Fields::minutes(const char* key)
{
    const auto value = finite(key, -longestMinutes, longestMinutes);
    return value ? std::optional(toMilliseconds(Hours{*value / 60.0})) : std::nullopt;
}

std::optional<Temperature> Fields::temperature(const std::string& key)
{
    const auto celsius = finite(key + "_c", -anyNumber, anyNumber);
    const auto fahrenheit = finite(key + "_f", -anyNumber, anyNumber);
    if (celsius && fahrenheit)
        fail(key + "_f", Phrase::tr("the temperature is given twice, in °C and in °F"),
             Phrase::tr("give it once"));
    if (celsius)
        return Temperature::celsius(*celsius);
    return fahrenheit ? std::optional(Temperature::fahrenheit(*fahrenheit)) : std::nullopt;
}

Temperature Fields::requiredTemperature(const std::string& key)
{
    const auto found = temperature(key);
    if (!found)
        fail(key + "_c", Phrase::tr("the key is missing"),
             Phrase::tr("give %1 or %2").with(key + "_c", key + "_f"));
    return found.value_or(Temperature{});
}

std::optional<TemperatureDifference> Fields::difference(const std::string& key, double leastKelvins)
{
    const auto kelvins = finite(key + "_c", -anyNumber, anyNumber);
    const auto fahrenheit = finite(key + "_f", -anyNumber, anyNumber);
    if (kelvins && fahrenheit)
        fail(key + "_f", Phrase::tr("the difference is given twice, in °C and in °F"),
             Phrase::tr("give it once"));
    std::optional<TemperatureDifference> found;
    if (kelvins)
        found = TemperatureDifference::kelvins(*kelvins);
    else if (fahrenheit)
        found = TemperatureDifference::fahrenheitDegrees(*fahrenheit);
    if (found && found->kelvins() < leastKelvins)
        fail(key + (kelvins ? "_c" : "_f"),
             Phrase::tr("the difference must not be below %1").with(shortestText(leastKelvins)));
    return found;
}

std::optional<int> Fields::decimalsOf(const char* key) const
{
    if (!has(key) || !(*m_object)[key].is_number())
        return std::nullopt;
    const auto scanned = scanDecimal(shortestText((*m_object)[key].get<double>()));
    return scanned ? std::optional(scanned->decimals) : std::nullopt;
}

std::vector<Fields> Fields::objects(const char* key)
{
    std::vector<Fields> items;
    const Json* value = find(key);
    if (!value)
        return items;
    if (!value->is_array()) {
        fail(key, Phrase::tr("expected a list, found %1").with(kindOf(*value)));
        return items;
    }
    for (std::size_t i = 0; i < value->size(); ++i)
        items.emplace_back((*value)[i], placeOf(key) + "[" + std::to_string(i) + "]", *m_reading);
    return items;
}

std::optional<Fields> Fields::object(const char* key)
{
    const Json* value = find(key);
    if (!value)
        return std::nullopt;
    return Fields(*value, placeOf(key), *m_reading);
}

void Fields::refuseUnknown()
{
    if (!m_object->is_object())
        return;
    m_reading->knownKeys[withoutNumbers(m_place)].insert(m_known.begin(), m_known.end());
    for (const auto& [key, value] : m_object->items()) {
        if (m_known.contains(key))
            continue;
        fail(key, Phrase::tr("the key \"%1\" is unknown").with(key),
             suggestion(key, {m_known.begin(), m_known.end()}));
        return;
    }
}

} // namespace holdband::exchange
