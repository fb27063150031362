// Random numbers for the sample, the same on every machine. The C++ standard specifies the engine
// exactly but not the distributions, so these are our own and use plain arithmetic only.
#pragma once

#include <cstdint>
#include <random>

namespace holdband::sample {

class Noise {
public:
    explicit Noise(std::uint64_t start) : m_engine(start) {}

    /// At least 0 and below 1, all 53 bits of a double.
    double uniform() { return static_cast<double>(m_engine() >> 11U) * 0x1.0p-53; }

    /// Mean 0, standard deviation 1, never beyond 6: the sum of twelve uniforms minus their mean.
    double normal()
    {
        double sum = -6.0;
        for (int i = 0; i < 12; ++i)
            sum += uniform();
        return sum;
    }

private:
    std::mt19937_64 m_engine;
};

} // namespace holdband::sample
