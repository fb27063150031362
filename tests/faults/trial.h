// One act, again and again from the same files: with a call that fails, or a power loss.
#pragma once

#include "tests/faults/acts.h"
#include "tests/faults/fault_engine.h"
#include "tests/faults/world.h"

#include <QTemporaryDir>
#include <optional>
#include <string>
#include <vector>

namespace holdband::faults {

/// What all trials of the program did.
struct Totals {
    long faults = 0;
    long losses = 0;
    long acts = 0;
};
Totals& totals();

class Trial {
public:
    explicit Trial(const Act& act);

    /// Of the undisturbed act.
    const std::vector<Call>& calls() const { return m_calls; }

    /// Runs the act with the fault and checks everything that is left. Returns what is wrong, a
    /// line each; empty: nothing.
    std::string fault(const Fault& fault);
    /// The power goes at call `at`; after the act has ended, if it has fewer calls.
    std::string powerLoss(long at, std::uint64_t seed);
    /// The sync at call `at` fails, and the power goes after the act.
    std::string failedSync(long at, std::uint64_t seed);

private:
    Outcome runUndisturbed() const;
    void restore();
    std::string checkSurvivor(const PowerModel& model, const Outcome& outcome, std::uint64_t seed);
    std::string checkLeft(const Fault& fault, const Outcome& outcome);
    std::string checkOpens(const std::string& folder) const;
    std::string checkFiles(const Picture& left, bool mayLeaveUnfinished) const;
    std::string checkDone(const Picture& left, const Outcome& outcome) const;
    std::string checkRefused(const Picture& left, const Problem& problem,
                             bool mayLeaveUnfinished) const;
    std::string checkRetry(const Picture& left);
    std::string checkWrites(const std::string& folder) const;

    const Act& m_act;
    QTemporaryDir m_place;
    std::string m_folder;   ///< where the act runs
    std::string m_survived; ///< what a power loss left
    std::optional<StoredFolder> m_start;
    Picture m_before;
    Picture m_after;
    std::vector<Call> m_calls;
};

} // namespace holdband::faults
