#include "core/intake/log/column_map.h"

#include "core/intake/csv/time_numbers.h"
#include "core/intake/time/date_order.h"
#include "core/model/names.h"
#include "core/text/name_suggestions.h"
#include "core/text/phrase.h"

#include <algorithm>
#include <array>
#include <nlohmann/json.hpp>

namespace holdband::intake {

namespace {

using Json = nlohmann::json;

constexpr std::array<std::string_view, 7> meaningNames{"ignored", "time",  "clock", "reading",
                                                       "name",    "value", "unit"};

template <typename Choice>
Json unitJson(const Choice& choice)
{
    return choice.unit ? Json(std::string(nameOf(*choice.unit))) : Json();
}

std::optional<std::string> textAt(const Json& object, const char* key)
{
    const auto found = object.find(key);
    if (found == object.end() || !found->is_string())
        return std::nullopt;
    return found->get<std::string>();
}

std::optional<ReadingUnit> unitAt(const Json& object)
{
    const auto name = textAt(object, "unit");
    return name ? choiceNamed<ReadingUnit>(*name) : std::nullopt;
}

ColumnChoice columnFrom(const Json& object)
{
    ColumnChoice choice;
    const auto name = textAt(object, "is").value_or("ignored");
    const auto* found = std::find(meaningNames.begin(), meaningNames.end(), name);
    if (found != meaningNames.end())
        choice.meaning = static_cast<Meaning>(found - meaningNames.begin());
    choice.of = textAt(object, "of").value_or("");
    choice.unit = unitAt(object);
    return choice;
}

std::optional<DateOrder> orderNamed(const std::optional<std::string>& name)
{
    for (const DateOrder order : allDateOrders) {
        if (name == optionText(order))
            return order;
    }
    return std::nullopt;
}

std::optional<TimeUnit> timeUnitOf(const std::optional<std::string>& name)
{
    return name ? timeUnitOption(*name) : std::nullopt;
}

LayoutRequest layoutFrom(const Json& json)
{
    LayoutRequest layout;
    const auto delimiter = textAt(json, "delimiter");
    if (delimiter && delimiter->size() == 1)
        layout.delimiter = delimiter->front();
    const auto line = json.find("header_line");
    if (line != json.end() && line->is_number_integer() && line->get<std::int64_t>() >= 0)
        layout.headerLine = line->get<std::int64_t>();
    return layout;
}

const Json& listAt(const Json& object, const char* key)
{
    static const Json none = Json::array();
    const auto found = object.find(key);
    return found != object.end() && found->is_array() ? *found : none;
}

} // namespace

std::optional<std::size_t> ColumnMap::columnOf(Meaning meaning) const
{
    const auto found =
        std::find_if(columns.begin(), columns.end(),
                     [meaning](const ColumnChoice& choice) { return choice.meaning == meaning; });
    return found == columns.end()
               ? std::nullopt
               : std::optional(static_cast<std::size_t>(found - columns.begin()));
}

std::string columnMapText(const ColumnMap& map)
{
    Json json{{"columns", Json::array()}, {"names", Json::array()}};
    for (const ColumnChoice& choice : map.columns)
        json["columns"].push_back(
            {{"is", std::string(meaningNames[static_cast<std::size_t>(choice.meaning)])},
             {"of", choice.of},
             {"unit", unitJson(choice)}});
    for (const NameChoice& choice : map.names)
        json["names"].push_back(
            {{"name", choice.name}, {"of", choice.of}, {"unit", unitJson(choice)}});
    if (map.zone)
        json["zone"] = *map.zone;
    if (map.dateOrder)
        json["date_order"] = std::string(optionText(*map.dateOrder));
    if (map.dateOrderFound)
        json["date_order_found"] = std::string(optionText(*map.dateOrderFound));
    if (map.timePattern)
        json["pattern"] = *map.timePattern;
    if (map.decimalSign)
        json["decimal"] = std::string(1, *map.decimalSign);
    if (map.timeUnit)
        json["time_unit"] = std::string(optionText(*map.timeUnit));
    if (map.layout.delimiter)
        json["delimiter"] = std::string(1, *map.layout.delimiter);
    if (map.layout.headerLine)
        json["header_line"] = *map.layout.headerLine;
    return json.dump(-1, ' ', false, Json::error_handler_t::replace);
}

Result<ColumnMap> columnMapFrom(const std::string& text)
{
    const Json json = Json::parse(text, nullptr, false);
    if (!json.is_object())
        return dataProblem(Phrase::tr("a remembered choice of columns can't be read"));
    ColumnMap map;
    for (const Json& each : listAt(json, "columns"))
        map.columns.push_back(each.is_object() ? columnFrom(each) : ColumnChoice{});
    for (const Json& each : listAt(json, "names")) {
        if (each.is_object())
            map.names.push_back(
                {textAt(each, "name").value_or(""), textAt(each, "of").value_or(""), unitAt(each)});
    }
    map.zone = textAt(json, "zone");
    map.timePattern = textAt(json, "pattern");
    map.dateOrder = orderNamed(textAt(json, "date_order"));
    map.dateOrderFound = orderNamed(textAt(json, "date_order_found"));
    const auto sign = textAt(json, "decimal");
    if (sign == "." || sign == ",")
        map.decimalSign = sign->front();
    map.timeUnit = timeUnitOf(textAt(json, "time_unit"));
    map.layout = layoutFrom(json);
    return map;
}

std::string shapeOf(char delimiter, bool hasHeader, const std::vector<std::string>& header)
{
    std::string shape = delimiter == '\t' ? "tab" : std::string(1, delimiter);
    shape += hasHeader ? "" : " without header";
    shape += " " + std::to_string(header.size());
    for (const std::string& name : header)
        shape += "\n" + (hasHeader ? folded(name) : std::string());
    return shape;
}

} // namespace holdband::intake
