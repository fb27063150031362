// The values from one end of an axis to the other, in the axis's unit.
#pragma once

namespace holdband::ui {

struct ValueRange {
    double low = 0.0;
    double high = 1.0;

    bool operator==(const ValueRange&) const = default;
};

} // namespace holdband::ui
