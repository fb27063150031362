#include "core/intake/watch/watch.h"

#include <nlohmann/json.hpp>

namespace holdband::intake {

using Json = nlohmann::json;

namespace {

Json jsonOf(const FileSeen& seen)
{
    Json json{{"bytes", seen.bytes},
              {"lines", seen.lines},
              {"digest", seen.digest},
              {"map", columnMapText(seen.map)},
              {"delimiter", std::string(1, seen.layout.delimiter)},
              {"header_line", seen.layout.headerLine},
              {"units_line", seen.layout.unitsLine},
              {"time_column", seen.layout.timeColumn},
              {"import", seen.import},
              {"day", seen.day}};
    if (seen.layout.clockColumn)
        json["clock_column"] = *seen.layout.clockColumn;
    return json;
}

std::int64_t number(const Json& json, const char* key)
{
    const auto found = json.find(key);
    return found != json.end() && found->is_number_integer() ? found->get<std::int64_t>() : 0;
}

std::string text(const Json& json, const char* key)
{
    const auto found = json.find(key);
    return found != json.end() && found->is_string() ? found->get<std::string>() : std::string();
}

FileSeen seenFrom(const Json& json)
{
    FileSeen seen;
    seen.bytes = number(json, "bytes");
    seen.lines = number(json, "lines");
    seen.digest = text(json, "digest");
    seen.map = columnMapFrom(text(json, "map")).value_or(ColumnMap{});
    const std::string delimiter = text(json, "delimiter");
    seen.layout.delimiter = delimiter.empty() ? ',' : delimiter.front();
    seen.layout.headerLine = number(json, "header_line");
    seen.layout.unitsLine = number(json, "units_line");
    seen.layout.timeColumn = static_cast<std::size_t>(number(json, "time_column"));
    if (json.contains("clock_column"))
        seen.layout.clockColumn = static_cast<std::size_t>(number(json, "clock_column"));
    seen.import = number(json, "import");
    seen.day = text(json, "day");
    return seen;
}

} // namespace

std::string watchStateText(const WatchState& state)
{
    Json json = Json::object();
    for (const auto& [file, seen] : state)
        json[file] = jsonOf(seen);
    return json.dump(-1, ' ', false, Json::error_handler_t::replace);
}

WatchState watchStateFrom(const std::string& stored)
{
    WatchState state;
    const Json json = Json::parse(stored, nullptr, false);
    if (!json.is_object())
        return state;
    for (const auto& [file, seen] : json.items()) {
        if (seen.is_object())
            state.emplace_back(file, seenFrom(seen));
    }
    return state;
}

} // namespace holdband::intake
