// Every act of the program on a disk that fails or loses its power: nothing confirmed is lost,
// nothing is half done, and what is refused is said.
//
// The quick set lets each call of each act fail once and loses the power at some of them;
// HOLDBAND_FAULTS=long tries every kind of fault at every call, and several survivors of a power
// loss at each.
#include "tests/faults/long_set.h"
#include "tests/faults/trial.h"

#include <algorithm>
#include <cerrno>
#include <cstdio>
#include <gtest/gtest.h>
#include <iterator>
#include <vector>

namespace holdband::faults {
namespace {

constexpr int mostShown = 6;

/// A failure for each trial that went wrong; the first ones in full.
class Verdicts {
public:
    ~Verdicts()
    {
        if (m_wrong > mostShown)
            ADD_FAILURE() << "and " << m_wrong - mostShown << " more";
    }
    void take(const std::string& wrong)
    {
        if (wrong.empty())
            return;
        if (++m_wrong <= mostShown)
            ADD_FAILURE() << wrong;
    }

private:
    int m_wrong = 0;
};

class Faults : public ::testing::TestWithParam<std::size_t> {
protected:
    const Act& act() const { return allActs().at(GetParam()); }
};

/// In turn at the calls of the quick set.
constexpr Fault kinds[] = {
    {0, EIO, false, false},   {0, ENOSPC, true, true},   {0, EIO, true, false},
    {0, ENOSPC, false, true}, {0, ENOSPC, true, false},  {0, EIO, false, true},
    {0, EIO, true, true},     {0, ENOSPC, false, false},
};

TEST_P(Faults, OfOneCallLoseNothing)
{
    Trial trial(act());
    Verdicts verdicts;
    const long step = wantsLongSet() ? 1 : act().quickStep;
    for (long call = static_cast<long>(trial.calls().size()); call > 0; call -= step) {
        std::vector<Fault> fitting;
        std::copy_if(std::begin(kinds), std::end(kinds), std::back_inserter(fitting),
                     [&](const Fault& kind) {
                         return fits(kind, trial.calls().at(static_cast<std::size_t>(call - 1)));
                     });
        if (!wantsLongSet())
            fitting = {fitting.at(static_cast<std::size_t>(call) % fitting.size())};
        for (Fault& fault : fitting) {
            fault.at = call;
            verdicts.take(trial.fault(fault));
        }
    }
}

TEST_P(Faults, OfThePowerLoseNothing)
{
    Trial trial(act());
    Verdicts verdicts;
    const auto calls = static_cast<long>(trial.calls().size());
    const long losses = wantsLongSet() ? calls : std::min(calls, 6L);
    const std::uint64_t survivors = wantsLongSet() ? 2 : 1;
    for (long i = 1; i <= losses; ++i) {
        const long call = i * calls / losses;
        for (std::uint64_t each = 0; each < survivors; ++each)
            verdicts.take(trial.powerLoss(call, static_cast<std::uint64_t>(call) * 31 + each));
    }
    const std::uint64_t afterwards = wantsLongSet() ? 40 : 2;
    for (std::uint64_t seed = 1; seed <= afterwards; ++seed)
        verdicts.take(trial.powerLoss(calls + 1, seed));
}

/// A sync that fails leaves the bytes in doubt, whatever the next one says.
TEST_P(Faults, OfASyncAndThenOfThePowerLoseNothing)
{
    Trial trial(act());
    Verdicts verdicts;
    std::vector<long> syncs;
    for (std::size_t i = 0; i < trial.calls().size(); ++i) {
        if (trial.calls()[i] == Call::sync)
            syncs.push_back(static_cast<long>(i) + 1);
    }
    if (!wantsLongSet() && act().quickStep > 1 && !syncs.empty())
        syncs = {syncs.back()};
    const std::uint64_t survivors = wantsLongSet() ? 10 : 1;
    for (const long call : syncs) {
        for (std::uint64_t each = 0; each < survivors; ++each)
            verdicts.take(trial.failedSync(call, static_cast<std::uint64_t>(call) * 17 + each));
    }
}

std::string nameOfAct(const ::testing::TestParamInfo<std::size_t>& act)
{
    std::string name = allActs().at(act.param).name;
    std::erase(name, '\'');
    std::replace(name.begin(), name.end(), ' ', '_');
    return name;
}

INSTANTIATE_TEST_SUITE_P(Acts, Faults, ::testing::Range(std::size_t{0}, allActs().size()),
                         nameOfAct);

/// Prints the counts at the end.
class Counts : public ::testing::Environment {
public:
    void TearDown() override
    {
        const Totals& all = totals();
        if (all.acts > 0)
            std::printf("%ld faults injected, %ld power losses, %zu acts\n", all.faults, all.losses,
                        allActs().size());
    }
};

const auto* const counts = ::testing::AddGlobalTestEnvironment(new Counts);

} // namespace
} // namespace holdband::faults
