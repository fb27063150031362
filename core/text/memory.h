// Too little memory as a Problem, so that no exception leaves the work that needed it.
#pragma once

#include "core/problem.h"
#include "core/text/phrase.h"

#include <new>

namespace holdband {

inline Problem notEnoughMemory()
{
    return {ProblemKind::file,
            Phrase::tr("there is not enough memory"),
            {},
            Phrase::tr("close other programs, then try again")};
}

/// Runs `work`, which returns a Result. What it holds is released before the Problem is made; what
/// it had begun to change in a logbook is rolled back.
template <typename Work>
auto withinMemory(Work work) -> decltype(work())
{
    try {
        return work();
    } catch (const std::bad_alloc&) {
        return failure(notEnoughMemory());
    }
}

} // namespace holdband
