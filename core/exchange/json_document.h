// Parses JSON strictly: UTF-8, no duplicate keys; problems have line and column.
#pragma once

#include "core/exchange/json_fields.h"

namespace holdband::exchange {

Result<Json> parseJson(const std::string& text, const std::string& fileName);

} // namespace holdband::exchange
