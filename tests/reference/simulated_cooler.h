// Simulated batches on one vessel, whose truth is known: beer, a cooler that a thermostat with
// hysteresis switches, a room with a daily wave, and rounds every 12 h. As method.md 8.1's table
// says: noise with lag-1 correlation φ 0 to 0.8, and a batch's insulation and performance each
// apart by 2 to 7 % (SD). All other figures are ours, those of a small fermentation fridge.
#pragma once

#include "core/analysis/forecast.h"
#include "core/analysis/heat.h"
#include "sample-data/maker/noise.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <optional>
#include <string>
#include <vector>

namespace holdband::test {

/// What a setup is, W and K.
struct SimulatedSetup {
    double lossWPerK;   ///< heat through the insulation
    double performance; ///< heat moved for electricity
    double standingW;
    double coolerW; ///< electricity while it cools
    double litres;
    double phi;
    double insulationSd; ///< between batches, a fraction
    double performanceSd;
};

inline SimulatedSetup someSetup(sample::Noise& noise)
{
    const auto from = [&](double low, double high) { return low + (high - low) * noise.uniform(); };
    SimulatedSetup setup{};
    setup.lossWPerK = from(1.2, 2.5);
    setup.performance = from(0.8, 1.6);
    setup.standingW = from(3.0, 12.0);
    setup.litres = from(18.0, 30.0);
    // Enough for 32 K of lift and a crash of about a day and a half.
    const double crashW = setup.litres * analysis::beerHeatPerLitreKelvin * 1000.0 * 16.0 / 130e3;
    setup.coolerW = (setup.lossWPerK * 32.0 + crashW) / setup.performance;
    setup.phi = from(0.0, 0.8);
    setup.insulationSd = from(0.02, 0.07);
    setup.performanceSd = from(0.02, 0.07);
    return setup;
}

struct SimulatedBatch {
    analysis::PastBatch past;                ///< as rounds would have it
    std::vector<analysis::BatchPoint> quiet; ///< rounds in hold time, from 72 h on
    analysis::ByPart<double> meteredKwh;     ///< by the register
    /// As planned with exactly this room: lift is room − target.
    analysis::ByPart<std::optional<analysis::PartConditions>> planned;
};

/// One batch: 8 days at 18 °C, 3 days at 2 °C.
class BatchSimulation {
public:
    BatchSimulation(const SimulatedSetup& setup, double warmerK, sample::Noise& noise)
        : m_setup(setup), m_noise(noise), m_loss(setup.lossWPerK * apart(setup.insulationSd)),
          m_performance(setup.performance * apart(setup.performanceSd)),
          m_roomC(23.0 + 2.0 * noise.normal() + warmerK), m_swingK(1.0 + 2.0 * noise.uniform()),
          m_extractKg(setup.litres * (0.075 + 0.025 * noise.uniform())), m_error(noise.normal())
    {
    }

    SimulatedBatch run(const std::string& name)
    {
        m_made.past.batch = name;
        for (int step = 0; step < steps; ++step) {
            if (step % stepsInRound == 0)
                beginRound();
            advance(step);
            if ((step + 1) % stepsInRound == 0)
                endRound(step + 1, name);
        }
        finishPart(analysis::BatchPart::crash, crashHours);
        return m_made;
    }

    static constexpr double resolution = 0.01; // kWh

private:
    static constexpr double stepSeconds = 300.0;
    static constexpr int stepsInHour = 12;
    static constexpr int stepsInRound = 12 * stepsInHour;
    static constexpr double beforeHours = 192.0;
    static constexpr double crashHours = 72.0;
    static constexpr int steps = static_cast<int>(beforeHours + crashHours) * stepsInHour;
    static constexpr double warmTarget = 18.0;
    static constexpr double coldTarget = 2.0;
    static constexpr double hysteresisK = 0.3;
    static constexpr double toleranceK = 1.0;
    static constexpr double noiseShare = 0.08;        // of the loss, as section 8.2's pairs
    static constexpr double fermentationHours = 22.0; // the heat falls to 1/e in them

    double apart(double sd) { return std::max(0.5, 1.0 + sd * m_noise.normal()); }

    void beginRound()
    {
        m_error =
            m_setup.phi * m_error + std::sqrt(1.0 - m_setup.phi * m_setup.phi) * m_noise.normal();
        m_roundKh = 0.0;
        m_roundRead = readRegister();
        m_roundInBand = true;
    }

    double readRegister() const { return std::floor(m_kwh / resolution) * resolution; }

    void advance(int step)
    {
        const double hours = static_cast<double>(step) / stepsInHour;
        if (step == static_cast<int>(beforeHours) * stepsInHour)
            finishPart(analysis::BatchPart::beforeCrash, beforeHours);
        const double target = hours < beforeHours ? warmTarget : coldTarget;
        const double room =
            m_roomC + m_swingK * std::sin(2.0 * std::numbers::pi * hours / 24.0) + 0.5 * m_error;
        if (m_beerC > target + hysteresisK)
            m_on = true;
        else if (m_beerC < target - hysteresisK)
            m_on = false;
        const double fermenting = analysis::fermentationHeat(m_extractKg).kilowattHours() * 1000.0 /
                                  fermentationHours * std::exp(-hours / fermentationHours);
        const double loss = m_loss * (1.0 + noiseShare * m_error) * (room - m_beerC);
        const double cooled = m_on ? m_setup.coolerW * m_performance : 0.0;
        m_beerC += (loss + fermenting - cooled) * stepSeconds /
                   (1000.0 * analysis::beerHeatPerLitreKelvin * m_setup.litres);
        m_kwh += (m_setup.standingW + (m_on ? m_setup.coolerW : 0.0)) * stepSeconds / 3.6e6;
        const double lift = std::max(0.0, room - m_beerC) / stepsInHour;
        m_roundKh += lift;
        m_liftKh += lift;
        m_plannedKh += std::max(0.0, room - target) / stepsInHour;
        m_roundInBand = m_roundInBand && std::abs(m_beerC - target) <= toleranceK;
    }

    void endRound(int step, const std::string& name)
    {
        if (!m_roundInBand || step <= (72 + 12) * stepsInHour)
            return;
        m_made.quiet.push_back(
            {{m_roundKh / 12.0, (readRegister() - m_roundRead) * 1000.0 / 12.0, 12.0}, {name}});
    }

    void finishPart(analysis::BatchPart part, double hours)
    {
        const double heat = part == analysis::BatchPart::crash
                                ? analysis::heatToCool(Volume::litres(m_setup.litres),
                                                       Temperature::celsius(warmTarget),
                                                       Temperature::celsius(coldTarget))
                                      .kilowattHours()
                                : analysis::fermentationHeat(m_extractKg).kilowattHours();
        const double kwh = readRegister() - m_partRead;
        m_made.meteredKwh[part] = kwh;
        m_made.past.parts[part] = analysis::PastPart{{hours, m_liftKh / hours, heat}, kwh};
        m_made.planned[part] = {hours, m_plannedKh / hours, heat};
        m_partRead = readRegister();
        m_liftKh = 0.0;
        m_plannedKh = 0.0;
    }

    const SimulatedSetup& m_setup;
    sample::Noise& m_noise;
    double m_loss;
    double m_performance;
    double m_roomC;
    double m_swingK;
    double m_extractKg;
    double m_error;
    double m_beerC = warmTarget;
    double m_kwh = 0.0;
    bool m_on = false;
    bool m_roundInBand = true;
    double m_roundKh = 0.0;
    double m_roundRead = 0.0;
    double m_partRead = 0.0;
    double m_liftKh = 0.0;
    double m_plannedKh = 0.0;
    SimulatedBatch m_made;
};

} // namespace holdband::test
