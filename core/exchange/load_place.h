// The place in a description, for the problems of a load.
#pragma once

#include "core/problem.h"

#include <string>

namespace holdband::exchange {

/// Adds the place in the description to a problem of the store.
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
