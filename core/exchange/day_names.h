// The days of the week as they are written in a description. Not for use outside core/exchange.
#pragma once

#include <array>

namespace holdband::exchange {

/// Monday first, as in TariffWindow::days.
inline constexpr std::array<const char*, 7> dayNames{"mon", "tue", "wed", "thu",
                                                     "fri", "sat", "sun"};

} // namespace holdband::exchange
