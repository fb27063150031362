// The days of the week as a description writes them. Not for use outside core/exchange.
#pragma once

#include <array>

namespace holdband::exchange {

/// Monday first, as in TariffWindow::days.
inline constexpr std::array<const char*, 7> dayNames{"mon", "tue", "wed", "thu",
                                                     "fri", "sat", "sun"};

} // namespace holdband::exchange
