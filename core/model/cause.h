// The cause of an excursion, given by the user. No Qt.
#pragma once

#include "core/quantity/instant.h"

#include <optional>
#include <string>

namespace holdband {

/// Side of the band.
enum class Side { above, below };

enum class Cause { lidOpen, powerCut, sensorMoved, warmRoom, control, other };

/// An excursion is identified by its span and side at the time when the cause was given.
struct ExcursionCause {
    Span span;
    Side side = Side::above;
    std::optional<Cause> cause; ///< absent: there is only a note
    std::string note;

    bool operator==(const ExcursionCause&) const = default;
};

} // namespace holdband
