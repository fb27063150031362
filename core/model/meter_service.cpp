#include "core/model/meter_service.h"

#include <algorithm>

namespace holdband {

namespace {

std::optional<Instant> earlier(const std::optional<Instant>& a, const std::optional<Instant>& b)
{
    if (a && b)
        return std::min(*a, *b);
    return a ? a : b;
}

} // namespace

std::vector<MeterService> servicesOf(const Meter& meter)
{
    const std::optional<Instant> end = earlier(meter.to, meter.retired);
    std::vector<MeterService> services;
    std::optional<std::string> setup = meter.setup;
    std::optional<Instant> from = meter.from;
    const auto close = [&](const std::optional<Instant>& to) {
        const bool empty = from && to && *to <= *from;
        if (setup && !empty)
            services.push_back({*setup, from, to});
    };
    for (const MeterMove& move : meter.moves) {
        close(earlier(move.from, end));
        setup = move.setup;
        from = from ? std::max(*from, move.from) : move.from;
    }
    close(end);
    return services;
}

std::optional<std::string> setupAt(const Meter& meter, Instant at)
{
    for (const MeterService& service : servicesOf(meter)) {
        if (service.contains(at))
            return service.setup;
    }
    return std::nullopt;
}

} // namespace holdband
