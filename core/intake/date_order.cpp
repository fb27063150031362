#include "core/intake/date_order.h"

namespace holdband {

std::string_view optionText(DateOrder order)
{
    static constexpr std::array<std::string_view, 3> texts{"ymd", "mdy", "dmy"};
    return texts[static_cast<std::size_t>(order)];
}

std::string_view orderWords(DateOrder order)
{
    static constexpr std::array<std::string_view, 3> texts{"year first", "month first",
                                                           "day first"};
    return texts[static_cast<std::size_t>(order)];
}

void DateOrderVotes::take(const LooseTime& time, std::int64_t line, std::string_view text)
{
    m_any = true;
    std::array<std::optional<LocalTime>, 3> read;
    for (std::size_t i = 0; i < 3; ++i) {
        if (m_against[i].line != 0)
            continue;
        read[i] = inOrder(time, allDateOrders[i]);
        if (!read[i])
            m_against[i] = {line, std::string(text)};
    }
    for (std::size_t i = 0; i < 3; ++i) {
        for (std::size_t j = i + 1; j < 3; ++j) {
            if (m_differ[i][j].line == 0 && read[i] && read[j] && *read[i] != *read[j])
                m_differ[i][j] = {line, std::string(text)};
        }
    }
}

std::string DateOrderVotes::optionsLeft() const
{
    std::string list;
    for (std::size_t i = 0; i < 3; ++i) {
        if (m_against[i].line == 0)
            list += (list.empty() ? "" : " or ") + std::string(optionText(allDateOrders[i]));
    }
    return list.empty() ? "mdy or dmy" : list;
}

Result<DecidedOrder> DateOrderVotes::decide() const
{
    std::optional<std::size_t> left;
    for (std::size_t i = 0; i < 3; ++i) {
        if (m_against[i].line != 0)
            continue;
        if (left && m_differ[*left][i].line != 0) {
            const Witness& row = m_differ[*left][i];
            return dataProblem("the dates fit more than one order, such as \"" + row.text + "\"",
                               "line " + std::to_string(row.line),
                               "say --date-order " + optionsLeft(), Decision::dateOrder);
        }
        if (!left)
            left = i;
    }
    const auto& [ymd, mdy, dmy] = m_against;
    if (!left)
        return dataProblem("the dates have no common order: \"" + mdy.text + "\" in line " +
                               std::to_string(mdy.line) + " can't be month first, \"" + dmy.text +
                               "\" in line " + std::to_string(dmy.line) + " can't be day first",
                           {}, "say --date-order " + optionsLeft() + " to leave the others out",
                           Decision::dateOrder);
    const DateOrder order = allDateOrders[*left];
    const Witness& why = order == DateOrder::monthDayYear ? dmy : mdy;
    std::string words(orderWords(order));
    if (why.line != 0)
        words += ": " + why.text + " occurs in line " + std::to_string(why.line);
    return DecidedOrder{order, words};
}

} // namespace holdband
