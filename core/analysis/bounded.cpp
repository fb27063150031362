#include "core/analysis/bounded.h"

#include <algorithm>
#include <cmath>

namespace holdband::analysis {

namespace {

template <typename Combine>
std::optional<double> both(const std::optional<double>& a, const std::optional<double>& b,
                           Combine combine)
{
    return a && b ? std::optional<double>(combine(*a, *b)) : std::nullopt;
}

/// One end of a quotient whose divisor is between b.low ≥ 0 and b.high.
std::optional<double> quotientEnd(const std::optional<double>& top, bool wantLeast,
                                  const Bounded& b)
{
    if (!top || !b.low || *b.low < 0.0)
        return std::nullopt;
    const bool byLargest = (*top >= 0.0) == wantLeast;
    const std::optional<double>& divisor = byLargest ? b.high : b.low;
    // A difference of equal numbers may leave a rounding error, which is not a difference.
    const double nothing = 1e-9 * std::abs(b.value);
    return divisor && *divisor > nothing ? std::optional(*top / *divisor) : std::nullopt;
}

} // namespace

Bounded exactly(double value)
{
    return {value, value, value};
}

Bounded fromEnergy(const EnergyFigure& energy)
{
    Bounded figure{energy.kwh, std::nullopt, std::nullopt};
    if (energy.lowKnown())
        figure.low = energy.low;
    if (energy.highKnown())
        figure.high = energy.high;
    return figure;
}

Bounded withUncertainty(double value, std::optional<double> doubt, double floor)
{
    if (!doubt)
        return {value, std::nullopt, std::nullopt};
    return {value, std::max(floor, value - *doubt), value + *doubt};
}

Bounded scaled(const Bounded& figure, double factor)
{
    Bounded result{figure.value * factor, figure.low, figure.high};
    if (result.low)
        *result.low *= factor;
    if (result.high)
        *result.high *= factor;
    if (factor < 0.0)
        std::swap(result.low, result.high);
    return result;
}

std::optional<Bounded> differenceOf(const std::optional<Bounded>& a,
                                    const std::optional<Bounded>& b)
{
    if (!a || !b)
        return std::nullopt;
    return Bounded{a->value - b->value, both(a->low, b->high, std::minus<double>()),
                   both(a->high, b->low, std::minus<double>())};
}

std::optional<Bounded> ratioOf(const std::optional<Bounded>& a, const std::optional<Bounded>& b)
{
    if (!a || !b || b->value == 0.0)
        return std::nullopt;
    return Bounded{a->value / b->value, quotientEnd(a->low, true, *b),
                   quotientEnd(a->high, false, *b)};
}

Bounded sizeOf(const Bounded& figure)
{
    Bounded size{std::abs(figure.value), figure.low, figure.high};
    if (!figure.bounded())
        return size;
    const double left = std::abs(*figure.low);
    const double right = std::abs(*figure.high);
    const bool holdsZero = *figure.low <= 0.0 && *figure.high >= 0.0;
    size.low = holdsZero ? 0.0 : std::min(left, right);
    size.high = std::max(left, right);
    return size;
}

namespace {

/// By more than the rounding error of two equal figures.
bool isBelow(double low, double high)
{
    constexpr double sameShare = 1e-9;
    const double apart = high - low;
    return std::isinf(apart) ? apart > 0.0
                             : apart > sameShare * std::max(std::abs(low), std::abs(high));
}

} // namespace

std::optional<Ahead> whoIsAhead(const std::optional<Bounded>& a, const std::optional<Bounded>& b,
                                Better better)
{
    if (!a || !b)
        return std::nullopt;
    if (!a->low || !b->low) // at least one of them has no known bounds
        return std::nullopt;
    const bool aBelow = a->high && isBelow(*a->high, *b->low);
    const bool bBelow = b->high && isBelow(*b->high, *a->low);
    if (!aBelow && !bBelow)
        return a->bounded() && b->bounded() ? std::optional(Ahead::tooClose) : std::nullopt;
    return aBelow == (better == Better::less) ? Ahead::a : Ahead::b;
}

} // namespace holdband::analysis
