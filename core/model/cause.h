// What a person says an excursion came from. No Qt.
#pragma once

#include "core/quantity/instant.h"

#include <optional>
#include <string>

namespace holdband {

/// Of the band.
enum class Side { above, below };

enum class Cause { lidOpen, powerCut, sensorMoved, warmRoom, control, other };

/// The excursion is known by its span and side as they were when the cause was given.
struct ExcursionCause {
    Span span;
    Side side = Side::above;
    std::optional<Cause> cause; ///< absent: there is only a note
    std::string note;

    bool operator==(const ExcursionCause&) const = default;
};

} // namespace holdband
