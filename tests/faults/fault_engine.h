// Counts the calls that read or change files below one folder, and makes one of them fail. Used by
// the VFS under SQLite (faulty_vfs.h) and by the calls beside it (faulty_disk.h).
#pragma once

#include "tests/faults/power_model.h"

#include <optional>
#include <string>
#include <vector>

namespace holdband::faults {

enum class Call { open, create, read, write, truncate, sync, rename, remove, makeFolder };

struct Fault {
    long at = 0; ///< counted from 1; the first call from there on that it fits
    int error;   ///< ENOSPC or EIO
    bool lasting = false;
    bool half = false; ///< a write that fails has written its first half
};

/// Whether that call can fail like this: a full disk still reads, renames and removes, and only a
/// write can be half done.
bool fits(const Fault& fault, Call call);

enum class Answer { go, fail, half };

class FaultEngine {
public:
    static FaultEngine& only();

    /// Calls below `root` are counted from now on. With a power model, all calls are recorded in
    /// it, and the power goes at call `lossAt`: nothing changes from there on.
    void arm(const std::string& root, std::optional<Fault> fault);
    void armPowerLoss(const std::string& root, PowerModel& model, long lossAt);
    /// A sync fails; when the power goes afterwards, what it should have synced counts as unsynced.
    void armFailedSync(const std::string& root, PowerModel& model, const Fault& fault);
    void disarm();

    bool watches(const std::string& path) const;
    Answer next(Call call);
    int error() const { return m_fault ? m_fault->error : 0; }
    /// Null unless the power can go, and once it is gone. The call at which it goes is recorded: it
    /// may or may not have reached the disk.
    PowerModel* model() const { return m_dead && count() > m_lossAt ? nullptr : m_model; }
    bool isDead() const { return m_dead; }
    const std::vector<Call>& calls() const { return m_calls; }
    bool fired() const { return m_fired; }
    /// What the fault stopped first.
    Call firedAt() const { return m_firedAt; }

private:
    long count() const { return static_cast<long>(m_calls.size()); }

    std::string m_root;
    std::optional<Fault> m_fault;
    PowerModel* m_model = nullptr;
    long m_lossAt = 0;
    std::vector<Call> m_calls;
    bool m_fired = false;
    Call m_firedAt = Call::open;
    bool m_dead = false;
};

} // namespace holdband::faults
