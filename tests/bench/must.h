// Ends a benchmark with the reason if something that it needs fails.
#pragma once

#include "core/problem.h"

#include <cstdio>
#include <cstdlib>
#include <utility>

namespace holdband::bench {

template <typename Value>
Value must(Result<Value> result)
{
    if (result)
        return std::move(*result);
    std::fprintf(stderr, "%s\n", result.error().sentence().c_str());
    std::exit(1);
}

inline void must(const Done& done)
{
    if (done)
        return;
    std::fprintf(stderr, "%s\n", done.error().sentence().c_str());
    std::exit(1);
}

} // namespace holdband::bench
