// Sample values for the tests of forms.
#pragma once

#include "core/model/batch.h"
#include "core/text/times.h"
#include "ui/forms/unit_format.h"

#include <optional>

namespace holdband::ui {

inline UnitFormat us()
{
    return {UnitSystem::us, "USD", *Zone::named("America/Denver"), '.'};
}

inline Stage stage(const char* label, double fahrenheit, std::optional<Hours> length)
{
    Stage made;
    made.label = label;
    made.target = Temperature::fahrenheit(fahrenheit);
    made.length = length;
    return made;
}

/// A local time in the zone of `us`.
inline Instant denverTime(const char* text)
{
    return *parseTime(text, us().zone);
}

} // namespace holdband::ui
