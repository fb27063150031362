// Values in the form that every JSON answer uses.
#pragma once

#include "core/text/visible.h"

#include <cmath>
#include <nlohmann/json.hpp>
#include <optional>
#include <string>

namespace holdband::app {

using Json = nlohmann::ordered_json;

/// The version of the answers' form: raised when a key is removed or changes its meaning.
inline constexpr int answerVersion = 1;

/// An answer that begins with its version.
inline Json versionedJson()
{
    Json json;
    json["holdband"] = answerVersion;
    return json;
}

/// The code of the currency; null if the logbook has none.
inline Json jsonCurrency(const std::string& currency)
{
    return currency.empty() ? Json(nullptr) : Json(currency);
}

/// null if there is no number or an infinite one.
inline Json jsonNumber(const std::optional<double>& value)
{
    return value && std::isfinite(*value) ? Json(*value) : Json(nullptr);
}

/// Indented by two; bytes that are not UTF-8 are replaced, and characters that a terminal would
/// obey are escaped.
inline std::string jsonText(const Json& json)
{
    return visibleJson(json.dump(2, ' ', false, Json::error_handler_t::replace));
}

} // namespace holdband::app
