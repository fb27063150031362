// Decides for a column whether the day or the month comes first, from all of its rows: an order is
// excluded if one row is no date in it. If several remain, the user is asked; it is never guessed.
#pragma once

#include "core/intake/time/stamps.h"
#include "core/problem.h"

#include <array>
#include <cstdint>
#include <string>
#include <string_view>

namespace holdband {

/// "ymd", "mdy", "dmy": the values of --date-order.
std::string_view optionText(DateOrder order);
/// "year first", "month first", "day first"
std::string orderText(DateOrder order);

struct DecidedOrder {
    DateOrder order = DateOrder::yearMonthDay;
    std::string reason; ///< "day first: 25.03.2026 06:30 occurs in line 7"
};

class DateOrderVotes {
public:
    /// Takes one row's time with its text.
    void take(const LooseTime& time, std::int64_t line, std::string_view text);
    bool any() const { return m_any; }
    /// Problem (data): several orders fit and give different dates, or none fits all rows. The
    /// remedy names --date-order with the orders to choose from.
    Result<DecidedOrder> decide() const;

private:
    struct Witness {
        std::int64_t line = 0; ///< 0: none
        std::string text;
    };
    std::vector<std::string> optionsLeft() const;

    bool m_any = false;
    /// By order: the first row that is no date in it.
    std::array<Witness, 3> m_against;
    /// The first row that two orders read differently.
    std::array<std::array<Witness, 3>, 3> m_differ;
};

} // namespace holdband
