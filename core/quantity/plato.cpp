#include "core/quantity/plato.h"

#include <algorithm>

namespace holdband {

double platoOf(Gravity gravity)
{
    const double s = gravity.specific();
    return std::max(0.0, -616.868 + s * (1111.14 + s * (-630.272 + s * 135.997)));
}

Gravity gravityOfPlato(double plato)
{
    double low = 0.99;
    double high = 1.20;
    for (int i = 0; i < 60; ++i) {
        const double middle = (low + high) / 2.0;
        (platoOf(Gravity::specific(middle)) < plato ? low : high) = middle;
    }
    return Gravity::specific((low + high) / 2.0);
}

} // namespace holdband
