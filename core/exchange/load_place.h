// Where in a description something stands, for the problems of a load.
#pragma once

#include "core/problem.h"

#include <string>

namespace holdband::exchange {

/// Says where in the description a problem of the store belongs.
template <typename Value>
Result<Value> placed(Result<Value> result, const std::string& place)
{
    if (!result && result.error().kind == ProblemKind::data && result.error().place.empty())
        result.error().place = place;
    return result;
}

/// "files[2]"
inline std::string indexed(const char* key, std::size_t index)
{
    return std::string(key) + "[" + std::to_string(index) + "]";
}

} // namespace holdband::exchange
