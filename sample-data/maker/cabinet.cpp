#include "sample-data/maker/cabinet.h"

#include "sample-data/maker/beer.h"

#include <algorithm>

namespace holdband::sample {

namespace {

constexpr double airCapacity = 6000.0; // air and liner, J/K
constexpr double wallWperK = 1.5;
constexpr double openLidWperK = 60.0;
constexpr double beerToAirWperK = 4.0;
constexpr double fanW = 3.0;
constexpr double cabinetBeltW = 25.0;
constexpr double cabinetControllerW = 2.0;
constexpr double cabinetCompressorW = 70.0;
constexpr double coolingAtNoLiftW = 75.0;
constexpr double liftWithoutCoolingK = 50.0;

double coolingW(double roomC, double airC)
{
    const double left = 1.0 - (roomC - airC) / liftWithoutCoolingK;
    return coolingAtNoLiftW * std::clamp(left, 0.0, 1.0);
}

double compressorPowerW(double roomC)
{
    return cabinetCompressorW * (1.0 + 0.005 * (roomC - 20.0));
}

} // namespace

void Cabinet::fill(const Batch* now, double roomC)
{
    if (now && now != m_batch)
        m_beerC = celsius(now->fillF);
    if (!now)
        m_beerC = roomC;
    m_batch = now;
}

void Cabinet::stepHeat(Instant at, double roomC, double seconds, double beltNowW, double takenW)
{
    const double wall = wallWperK + (within(m_scenario.lidOpen, at) ? openLidWperK : 0.0);
    const double beerToAir = m_batch ? beerToAirWperK * (m_beerC - m_airC) : 0.0;
    const double fan = m_batch ? fanW : 0.0;
    const double airHeat = wall * (roomC - m_airC) + beerToAir + fan - takenW;
    m_airC += airHeat * seconds / airCapacity;
    if (m_batch) {
        const double beerHeat = fermentationHeatW(*m_batch, at) + beltNowW - beerToAir;
        m_beerC += beerHeat * seconds / heatCapacity(*m_batch);
    }
}

void Cabinet::step(Instant at, double roomC, double seconds)
{
    fill(batchIn(m_scenario, Vessel::cabinet, at), roomC);
    const bool powered = !m_scenario.powerCut.contains(at);
    const double target = m_batch ? targetC(*m_batch, at) : 0.0;
    bool cooling = false;
    bool heating = false;
    if (m_batch && powered) {
        cooling = m_compressor.update(at, m_beerC, target);
        heating = m_belt.update(at, m_beerC, target);
    } else {
        m_compressor.cut(at);
        m_belt.cut(at);
    }
    const double taken = cooling ? coolingW(roomC, m_airC) : 0.0;
    const double compressor = cooling ? compressorPowerW(roomC) : 0.0;
    const double belt = heating ? cabinetBeltW : 0.0;
    const double fan = m_batch && powered ? fanW : 0.0;
    stepHeat(at, roomC, seconds, belt, taken);
    m_joules += (compressor + belt + fan + (powered ? cabinetControllerW : 0.0)) * seconds;
}

} // namespace holdband::sample
