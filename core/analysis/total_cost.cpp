#include "core/analysis/total_cost.h"

#include "core/analysis/bounded.h"

namespace holdband::analysis {

namespace {

std::optional<Ahead> lesser(double aMoreThanB)
{
    if (aMoreThanB == 0.0)
        return std::nullopt;
    return aMoreThanB < 0.0 ? Ahead::a : Ahead::b;
}

} // namespace

Crossing crossingOf(const SideCost& a, const SideCost& b)
{
    const double parts = b.parts - a.parts; // A's saving on parts
    const Bounded more = *differenceOf(a.perBatch, b.perBatch);
    Crossing crossing;
    crossing.cheaperFirst = lesser(parts != 0.0 ? -parts : more.value);
    if (!crossing.cheaperFirst) {
        crossing.kind = CrossingKind::same;
        crossing.sure = more.bounded() && *more.low == *more.high;
        return crossing;
    }
    if (parts * more.value > 0.0) {
        crossing.kind = CrossingKind::crosses;
        crossing.batches = parts / more.value;
    }
    if (!more.bounded())
        return crossing;
    // Toward the crossing: the extra cost per batch of the side with the cheaper parts.
    const double direction = parts < 0.0 ? -1.0 : 1.0;
    const double least = direction * (direction > 0.0 ? *more.low : *more.high);
    const double most = direction * (direction > 0.0 ? *more.high : *more.low);
    if (parts == 0.0) {
        crossing.sure = least > 0.0 || most < 0.0;
        return crossing;
    }
    if (most > 0.0)
        crossing.earliest = direction * parts / most;
    if (least > 0.0)
        crossing.latest = direction * parts / least;
    crossing.sure = least > 0.0 || most <= 0.0;
    return crossing;
}

} // namespace holdband::analysis
