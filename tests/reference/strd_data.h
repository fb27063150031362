// Data of the NIST Statistical Reference Datasets (StRD, https://www.itl.nist.gov/div898/strd):
// "Michelso" (univariate) and "Norris" (linear regression). The figures were read from the copies
// that Debian's r-base-core (morley.tab) and python3-scipy (Norris.dat) carry.
#pragma once

#include <array>

namespace holdband::test {

/// Michelson's speed of light in air, km/s above 299,000, in the order of the file.
inline constexpr std::array michelsonSpeeds{
    850,  740, 900, 1070, 930, 850, 950, 980, 980, 880, 1000, 980, 930, 650, 760, 810, 1000,
    1000, 960, 960, 960,  940, 960, 940, 880, 800, 850, 880,  900, 840, 830, 790, 810, 880,
    880,  830, 800, 790,  760, 800, 880, 880, 880, 860, 720,  720, 620, 860, 970, 950, 880,
    910,  850, 870, 840,  840, 850, 840, 840, 840, 890, 810,  810, 820, 800, 770, 760, 740,
    750,  760, 910, 920,  890, 860, 880, 720, 840, 850, 850,  780, 890, 840, 780, 810, 760,
    810,  790, 810, 820,  850, 870, 870, 810, 740, 810, 940,  950, 800, 810, 870};

struct NorrisPoint {
    double y;
    double x;
};

/// An ozone monitor's reading y for the concentration x of a standard.
inline constexpr std::array norrisPoints{
    NorrisPoint{0.1, 0.2},     NorrisPoint{338.8, 337.4}, NorrisPoint{118.1, 118.2},
    NorrisPoint{888.0, 884.6}, NorrisPoint{9.2, 10.1},    NorrisPoint{228.1, 226.5},
    NorrisPoint{668.5, 666.3}, NorrisPoint{998.5, 996.3}, NorrisPoint{449.1, 448.6},
    NorrisPoint{778.9, 777.0}, NorrisPoint{559.2, 558.2}, NorrisPoint{0.3, 0.4},
    NorrisPoint{0.1, 0.6},     NorrisPoint{778.1, 775.5}, NorrisPoint{668.8, 666.9},
    NorrisPoint{339.3, 338.0}, NorrisPoint{448.9, 447.5}, NorrisPoint{10.8, 11.6},
    NorrisPoint{557.7, 556.0}, NorrisPoint{228.3, 228.1}, NorrisPoint{998.0, 995.8},
    NorrisPoint{888.8, 887.6}, NorrisPoint{119.6, 120.2}, NorrisPoint{0.3, 0.3},
    NorrisPoint{0.6, 0.3},     NorrisPoint{557.6, 556.8}, NorrisPoint{339.3, 339.1},
    NorrisPoint{888.0, 887.2}, NorrisPoint{998.5, 999.0}, NorrisPoint{778.9, 779.0},
    NorrisPoint{10.2, 11.1},   NorrisPoint{117.6, 118.3}, NorrisPoint{228.9, 229.2},
    NorrisPoint{668.4, 669.1}, NorrisPoint{449.2, 448.9}, NorrisPoint{0.2, 0.5}};

} // namespace holdband::test
