#include "core/intake/log/interval_energy.h"

namespace holdband::intake {

ColumnFalls fallsOf(const std::vector<MeterReading>& readings, const RegisterCheck& meter)
{
    ColumnFalls found;
    for (std::size_t i = 1; i < readings.size(); ++i) {
        const MeterReading& before = readings[i - 1];
        const MeterReading& reading = readings[i];
        if (reading.registerReading == before.registerReading)
            continue;
        ++found.steps;
        if (reading.registerReading > before.registerReading ||
            rolledOver(meter.meter(), before, reading))
            continue;
        ++found.falls;
        if (found.firstAt.size() < mostFallsListed)
            found.firstAt.push_back(i);
    }
    return found;
}

bool looksLikeRegister(const std::vector<double>& energies)
{
    std::size_t rises = 0;
    for (std::size_t i = 1; i < energies.size(); ++i) {
        if (energies[i] < energies[i - 1])
            return false;
        rises += energies[i] > energies[i - 1];
    }
    return rises >= mostRises;
}

} // namespace holdband::intake
