// The keys that the reader of a description accepts are those in its JSON Schema, object by object.
#include "core/exchange/description.h"
#include "core/exchange/file_writer.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

namespace holdband::test {
namespace {

using nlohmann::json;

std::string wholeFile(const char* path)
{
    const auto text = exchange::readWholeFile(path, 1 << 20);
    EXPECT_TRUE(text) << text.error().sentence();
    return text.value_or("");
}

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
    const SchemaKeys schema(json::parse(wholeFile(HOLDBAND_JSON_SCHEMAS "/description.json")));
    const auto read = exchange::keysReadFrom(wholeFile(HOLDBAND_EVERY_KEY));
    ASSERT_TRUE(read) << read.error().sentence();
    for (const auto& [place, keys] : schema.all()) {
        ASSERT_TRUE(read->contains(place)) << place << ": described, but every_key.json lacks one";
        EXPECT_THAT(read->at(place), ::testing::ContainerEq(keys)) << place;
    }
    EXPECT_EQ(read->size(), schema.all().size());
    EXPECT_GE(read->size(), 30u);
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
