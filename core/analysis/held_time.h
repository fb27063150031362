// Hold time of a stage or of a whole run, and where the beer was in it. Section 3 of the method in
// DEVELOPERS.md. No Qt, no SQL.
#pragma once

#include <optional>

namespace holdband::analysis {

struct HeldTime {
    double settlingMs = 0.0; ///< ms, covered and not judged
    double holdMs = 0.0;     ///< ms, clock
    double coveredMs = 0.0;  ///< ms of hold time
    double insideMs = 0.0;   ///< ms, covered and in the band
    double aboveMs = 0.0;    ///< ms, covered and above it
    double belowMs = 0.0;    ///< ms, covered and below it

    double outsideMs() const { return aboveMs + belowMs; } ///< ms
    /// covered / hold; absent without hold time.
    std::optional<double> coverage() const { return share(coveredMs, holdMs); }
    /// inside / covered; absent where nothing is covered.
    std::optional<double> insideShare() const { return share(insideMs, coveredMs); }
    /// outside / covered; absent where nothing is covered.
    std::optional<double> outsideShare() const { return share(outsideMs(), coveredMs); }

    HeldTime& operator+=(const HeldTime& other)
    {
        settlingMs += other.settlingMs;
        holdMs += other.holdMs;
        coveredMs += other.coveredMs;
        insideMs += other.insideMs;
        aboveMs += other.aboveMs;
        belowMs += other.belowMs;
        return *this;
    }

private:
    static std::optional<double> share(double part, double whole)
    {
        return whole > 0.0 ? std::optional(part / whole) : std::nullopt;
    }
};

} // namespace holdband::analysis
