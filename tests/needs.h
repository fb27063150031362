// What a test needs on the machine. If it is missing the test is skipped, but on a build server
// (CI=true) it fails, because everything is installed there.
#pragma once

#include <cstdlib>
#include <gtest/gtest.h>
#include <string_view>

namespace holdband::test {

inline bool onBuildServer()
{
    const char* set = std::getenv("CI");
    return set && std::string_view(set) == "true";
}

} // namespace holdband::test

/// Ends the test if `have` is false; `what` names what is missing.
#define HOLDBAND_NEEDS(have, what)                                                                 \
    do {                                                                                           \
        if (!(have) && ::holdband::test::onBuildServer())                                          \
            FAIL() << (what) << " is missing";                                                     \
        if (!(have))                                                                               \
            GTEST_SKIP() << (what) << " is missing";                                               \
    } while (false)
