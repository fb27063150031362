#include "tests/faults/fault_engine.h"

#include <cerrno>
#include <limits>

namespace holdband::faults {

namespace {

/// A full disk still reads, renames and removes.
bool needsRoom(Call call)
{
    return call == Call::create || call == Call::write || call == Call::sync ||
           call == Call::makeFolder;
}

} // namespace

bool fits(const Fault& fault, Call call)
{
    return (fault.error != ENOSPC || needsRoom(call)) && (!fault.half || call == Call::write);
}

FaultEngine& FaultEngine::only()
{
    static FaultEngine engine;
    return engine;
}

void FaultEngine::arm(const std::string& root, std::optional<Fault> fault)
{
    *this = {};
    m_root = root + "/";
    m_fault = fault;
}

void FaultEngine::armPowerLoss(const std::string& root, PowerModel& model, long lossAt)
{
    arm(root, std::nullopt);
    m_model = &model;
    m_lossAt = lossAt;
}

void FaultEngine::armFailedSync(const std::string& root, PowerModel& model, const Fault& fault)
{
    arm(root, fault);
    m_model = &model;
    m_lossAt = std::numeric_limits<long>::max();
}

void FaultEngine::disarm()
{
    m_root.clear();
    m_model = nullptr;
}

bool FaultEngine::watches(const std::string& path) const
{
    return !m_root.empty() && (path + "/").starts_with(m_root);
}

Answer FaultEngine::next(Call call)
{
    m_calls.push_back(call);
    if (m_model) {
        m_dead = m_dead || count() >= m_lossAt;
        if (m_dead)
            return Answer::fail;
    }
    if (!m_fault || count() < m_fault->at || (m_fired && !m_fault->lasting) ||
        (m_fault->error == ENOSPC && !needsRoom(call)))
        return Answer::go;
    m_firedAt = m_fired ? m_firedAt : call;
    m_fired = true;
    return m_fault->half && call == Call::write ? Answer::half : Answer::fail;
}

} // namespace holdband::faults
