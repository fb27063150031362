// Which setup a meter counts for, and when: meters come into service, move, and are taken out of
// use. No Qt.
#pragma once

#include "core/model/equipment.h"

#include <optional>
#include <string>
#include <vector>

namespace holdband {

/// A stretch in which a meter counts for one setup.
struct MeterService {
    std::string setup;
    std::optional<Instant> from; ///< absent: always
    std::optional<Instant> to;

    bool contains(Instant at) const { return (!from || *from <= at) && (!to || at < *to); }
    bool operator==(const MeterService&) const = default;
};

/// In order of time, without the time when it is not in use.
std::vector<MeterService> servicesOf(const Meter& meter);

/// The setup that the meter counts for at that instant; absent out of service.
std::optional<std::string> setupAt(const Meter& meter, Instant at);

} // namespace holdband
