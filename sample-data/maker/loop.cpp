#include "sample-data/maker/loop.h"

#include "sample-data/maker/beer.h"

namespace holdband::sample {

namespace {

constexpr double bathTargetC = -1.5;
constexpr double bathCapacity = 20.0 * 1.03 * 3800.0; // 20 L of glycol and water, J/K
constexpr double bathLossWperK = 0.9;
constexpr double coilWperK = 7.5;
constexpr double vesselLossWperK = 1.0;
constexpr double pumpW = 12.0;
constexpr double pumpHeatShare = 0.6; // share of a pump's power that heats the coolant
constexpr double stirrerW = 5.0;
constexpr double loopBeltW = 24.0;
constexpr double loopControllerW = 3.0;
constexpr double loopCompressorW = 150.0;

/// Heat that the compressor removes from the bath for each joule it uses; falls with the lift.
double performance(double roomC, double bathC)
{
    return 1.9 - 0.02 * (roomC - bathC);
}

} // namespace

CoolantLoop::Flow CoolantLoop::stepVessel(std::size_t index, Instant at, double roomC,
                                          double seconds, bool powered)
{
    VesselState& v = m_vessels[index];
    const Batch* now = batchIn(m_scenario, index == 0 ? Vessel::loop1 : Vessel::loop2, at);
    if (now != v.batch) {
        v.batch = now;
        v.beerC = now ? celsius(now->fillF) : roomC;
    }
    if (!now) {
        v.beerC = roomC;
        return {};
    }
    const double target = targetC(*now, at);
    const bool stopped = index == 0 && m_scenario.pumpStopped.contains(at);
    const bool pumping = v.pump.update(at, v.beerC, target) && powered && !stopped;
    const bool heating = v.belt.update(at, v.beerC, target) && powered;
    const double toBath = pumping ? coilWperK * (v.beerC - m_bathC) : 0.0;
    const double heat = fermentationHeatW(*now, at) + vesselLossWperK * (roomC - v.beerC) +
                        (heating ? loopBeltW : 0.0) - toBath;
    v.beerC += heat * seconds / heatCapacity(*now);
    return {(pumping ? pumpW : 0.0) + (heating ? loopBeltW : 0.0),
            toBath + (pumping ? pumpHeatShare * pumpW : 0.0)};
}

double CoolantLoop::stepBath(Instant at, double roomC, double seconds, bool powered, double heatW)
{
    const bool inUse = powered && within(m_scenario.bathOn, at);
    if (!inUse)
        m_compressor.cut(at);
    const bool running = inUse && m_compressor.update(at, m_bathC, bathTargetC);
    const double taken = running ? loopCompressorW * performance(roomC, m_bathC) : 0.0;
    const double stirring = inUse ? stirrerW : 0.0;
    const double heat = heatW + stirring + bathLossWperK * (roomC - m_bathC) - taken;
    m_bathC += heat * seconds / bathCapacity;
    return stirring + (running ? loopCompressorW : 0.0);
}

void CoolantLoop::step(Instant at, double roomC, double seconds)
{
    const bool powered = !m_scenario.powerCut.contains(at);
    double electricalW = powered ? loopControllerW : 0.0;
    double intoBathW = 0.0;
    for (std::size_t i = 0; i < m_vessels.size(); ++i) {
        const Flow flow = stepVessel(i, at, roomC, seconds, powered);
        electricalW += flow.electricalW;
        intoBathW += flow.intoBathW;
    }
    electricalW += stepBath(at, roomC, seconds, powered, intoBathW);
    m_joules += electricalW * seconds;
}

} // namespace holdband::sample
