// Values as every JSON answer writes them.
#pragma once

#include "core/text/visible.h"

#include <cmath>
#include <nlohmann/json.hpp>
#include <optional>

namespace holdband::app {

using Json = nlohmann::ordered_json;

/// null where there is no number or an infinite one.
inline Json jsonNumber(const std::optional<double>& value)
{
    return value && std::isfinite(*value) ? Json(*value) : Json(nullptr);
}

/// Indented by two; bytes that are no UTF-8 are replaced, and what a terminal would obey is
/// escaped.
inline std::string jsonText(const Json& json)
{
    return visibleJson(json.dump(2, ' ', false, Json::error_handler_t::replace));
}

} // namespace holdband::app
