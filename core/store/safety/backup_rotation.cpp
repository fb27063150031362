#include "core/store/safety/backup_rotation.h"

#include <algorithm>
#include <optional>

namespace holdband::store {

namespace {

/// 1970-01-01 was a Thursday: the fourth day of a week that begins on Monday.
std::int64_t weekOf(std::chrono::local_days day)
{
    return std::chrono::floor<std::chrono::weeks>(day + std::chrono::days{3})
        .time_since_epoch()
        .count();
}

/// True for the first copy of each of the first `most` periods, newest first.
class FirstOfPeriods {
public:
    explicit FirstOfPeriods(int most) : m_left(most) {}

    bool begins(std::int64_t period)
    {
        if (m_last == period)
            return false;
        m_last = period;
        return m_left-- > 0;
    }

private:
    int m_left;
    std::optional<std::int64_t> m_last;
};

/// Adds the size of those that it retains to `bytes`.
std::vector<bool> retained(std::span<const DatedCopy> newestFirst, const RotationLimits& limits,
                           std::uint64_t& bytes)
{
    FirstOfPeriods days(limits.days);
    FirstOfPeriods weeks(limits.weeks);
    std::vector<bool> keep;
    bool full = false;
    for (const DatedCopy& copy : newestFirst) {
        const bool ofDay = days.begins(copy.day.time_since_epoch().count());
        const bool ofWeek = weeks.begins(weekOf(copy.day));
        const bool atLeast = static_cast<int>(keep.size()) < limits.least;
        const bool wanted = ofDay || ofWeek;
        full = full || (wanted && copy.bytes > limits.bytes - std::min(bytes, limits.bytes));
        keep.push_back(atLeast || (wanted && !full));
        if (keep.back())
            bytes += copy.bytes;
    }
    return keep;
}

} // namespace

std::vector<bool> copiesToRetain(std::span<const DatedCopy> newestFirst,
                                 std::chrono::local_days today, RotationLimits limits)
{
    const auto firstReal =
        std::find_if(newestFirst.begin(), newestFirst.end(),
                     [today](const DatedCopy& copy) { return copy.day <= today; });
    const auto later = static_cast<std::size_t>(firstReal - newestFirst.begin());
    std::uint64_t bytes = 0;
    const std::vector<bool> real = retained(newestFirst.subspan(later), limits, bytes);
    std::vector<bool> keep = retained(newestFirst.first(later), limits, bytes);
    keep.insert(keep.end(), real.begin(), real.end());
    return keep;
}

} // namespace holdband::store
