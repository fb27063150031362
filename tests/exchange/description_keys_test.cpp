// The keys that the reader of a description takes are those that its JSON Schema describes, object
// by object.
#include "core/exchange/description.h"
#include "core/exchange/file_writer.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

namespace holdband::test {
namespace {

using nlohmann::json;

/// Has every object that a description can have.
const char* const everyObject = R"json({
  "holdband": 1, "zone": "UTC",
  "time_of_use": [ { "from": "16:00", "to": "21:00", "price_per_kwh": 0.3 } ],
  "tariff_changes": [ { "from": "2026-03-02 00:00",
    "time_of_use": [ { "from": "16:00", "to": "21:00", "price_per_kwh": 0.4 } ] } ],
  "rounds": [ { "label": "noon", "from": "11:00", "to": "13:00" } ],
  "setups": [ { "name": "Loop", "parts": [ { "item": "pump" } ] } ],
  "sensors": [ { "name": "Beer", "reads": "beer",
    "offsets": [ { "from": "2026-03-01 00:00", "add_c": 0.1 } ] } ],
  "meters": [ { "name": "Meter", "setup": "Loop", "moves": [ { "from": "2026-03-01 00:00" } ] } ],
  "batches": [ { "name": "Pale 1", "setup": "Loop", "pitched": "2026-03-01 00:00",
    "beer_sensor": "Beer", "tolerance_c": 1,
    "schedule": [ { "stage": "Hold", "target_c": 20 } ],
    "plan_changes": [ { "from": "2026-03-02 00:00",
      "schedule": [ { "stage": "Hold", "target_c": 21 } ] } ],
    "beer_uses": [ { "from": "2026-03-02 00:00", "sensor": "Beer" } ],
    "causes": [ { "from": "2026-03-02 00:00", "to": "2026-03-02 01:00", "side": "above",
      "cause": "lid open" } ] } ],
  "files": [ { "file": "a.csv", "columns": { "Beer": "Beer (C)" },
    "origin": { "file": "log.csv", "sha256": "00", "rows": 1 } } ],
  "meter_readings": [ { "meter": "Meter", "at": "2026-03-01 00:00", "kwh": 1,
    "from_file": 0, "line": 1,
    "was": [ { "kwh": 2, "until": "2026-03-01 01:00" } ] } ],
  "exclusions": [ { "sensor": "Beer", "from": "2026-03-01 00:00", "to": "2026-03-01 01:00" } ],
  "journal": [ { "at": "2026-03-01 00:00", "text": "Pitched." } ],
  "plans": [ { "name": "Ale", "schedule": [ { "stage": "Hold", "target_c": 20 } ] } ],
  "hand_readings": [ { "batch": "Pale 1", "at": "2026-03-01 00:00", "value": 1.05, "unit": "SG",
    "was": [ { "value": 1.06, "until": "2026-03-01 01:00" } ] } ],
  "corrections": [ { "sensor": "Beer", "at": "2026-03-01 00:00", "value": 20,
    "corrected": "2026-03-01 01:00" } ],
  "weighing": {},
  "column_maps": [ { "shape": "s", "map": "m", "used": "2026-03-01 00:00" } ],
  "watches": [ { "path": "/logs" } ],
  "history": [ { "at": "2026-03-01 00:00", "what": "Made the logbook" } ] })json";

class SchemaKeys {
public:
    explicit SchemaKeys(json schema) : m_schema(std::move(schema)) { collect(m_schema, ""); }

    const exchange::KnownKeys& all() const { return m_keys; }

private:
    const json& resolved(const json& schema) const
    {
        if (!schema.contains("$ref"))
            return schema;
        const std::string name = schema["$ref"];
        return resolved(m_schema.at(json::json_pointer(name.substr(1))));
    }

    void collect(const json& reference, const std::string& place)
    {
        const json& schema = resolved(reference);
        if (schema.contains("items"))
            return collect(schema["items"], place + "[]");
        if (!schema.contains("properties"))
            return;
        EXPECT_EQ(schema.value("additionalProperties", true), false) << place;
        for (const auto& [key, value] : schema["properties"].items()) {
            m_keys[place].insert(key);
            collect(value, place.empty() ? key : place + "." + key);
        }
    }

    json m_schema;
    exchange::KnownKeys m_keys;
};

TEST(DescriptionKeys, AreThoseOfTheSchemaInEveryObject)
{
    const auto text = exchange::readWholeFile(HOLDBAND_JSON_SCHEMAS "/description.json", 1 << 20);
    ASSERT_TRUE(text) << text.error().sentence();
    const SchemaKeys schema(json::parse(*text));
    const auto read = exchange::keysReadFrom(everyObject);
    ASSERT_TRUE(read) << read.error().sentence();
    EXPECT_GE(read->size(), 30u);
    for (const auto& [place, keys] : schema.all()) {
        ASSERT_TRUE(read->contains(place)) << place << ": described, but everyObject lacks one";
        EXPECT_THAT(read->at(place), ::testing::ContainerEq(keys)) << place;
    }
    EXPECT_EQ(read->size(), schema.all().size());
}

TEST(DescriptionKeys, OneThatIsNotInTheSchemaIsRefusedByName)
{
    const auto read = exchange::parseDescription(
        R"json({ "holdband": 1, "setups": [ { "name": "Loop", "colour": "red" } ] })json",
        "d.json");
    ASSERT_FALSE(read);
    EXPECT_EQ(read.error().place, "d.json, setups[0].colour");
}

} // namespace
} // namespace holdband::test
