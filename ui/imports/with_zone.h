// Something read from the logbook, with the zone that its times are shown in.
#pragma once

#include "core/store/records/equipment.h"
#include "core/text/zone.h"

#include <utility>

namespace holdband::ui {

template <typename Value>
struct WithZone {
    Value value;
    Zone zone; ///< the logbook's; UTC where its name is not known here
};

/// Reads the value, then the zone. To be called on a worker.
template <typename Value>
Result<WithZone<Value>> readWithZone(const store::LogbookFile& file,
                                     Result<Value> (*read)(const store::LogbookFile&))
{
    auto value = read(file);
    HOLDBAND_TRY(value);
    auto settings = store::readSettings(file);
    HOLDBAND_TRY(settings);
    return WithZone<Value>{std::move(*value), Zone::named(settings->zone).value_or(Zone::utc())};
}

} // namespace holdband::ui
