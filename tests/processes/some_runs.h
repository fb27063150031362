// A property of a fixture, tried as often as its time allows.
#pragma once

#include "tests/faults/long_set.h"

#include <gtest/gtest.h>
#include <rapidcheck.h>
#include <sstream>

namespace holdband::test {

/// Runs it `times` times, each in a new fixture; in the long set twenty times as often.
template <typename Fixture>
void tryOften(int times, void (Fixture::*property)())
{
    struct Run : Fixture {
        void TestBody() override {}
        void all(void (Fixture::*what)())
        {
            this->SetUp();
            (this->*what)();
            this->TearDown();
        }
    };
    rc::detail::TestParams params = rc::detail::configuration().testParams;
    params.maxSuccess = faults::wantsLongSet() ? 20 * times : times;
    const auto once = [property] {
        Run run;
        run.all(property);
    };
    const auto result = rc::detail::checkTestable(once, rc::detail::TestMetadata(), params);
    if (result.template is<rc::detail::SuccessResult>())
        return;
    std::ostringstream why;
    rc::detail::printResultMessage(result, why);
    FAIL() << why.str();
}

} // namespace holdband::test
