#include "core/intake/time/date_order.h"

#include "core/intake/log/log_places.h"
#include "core/text/name_suggestions.h"
#include "core/text/phrase.h"

namespace holdband {

std::string_view optionText(DateOrder order)
{
    static constexpr std::array<std::string_view, 3> texts{"ymd", "mdy", "dmy"};
    return texts[static_cast<std::size_t>(order)];
}

std::string orderText(DateOrder order)
{
    switch (order) {
    case DateOrder::yearMonthDay:
        return Phrase::tr("year first");
    case DateOrder::monthDayYear:
        return Phrase::tr("month first");
    case DateOrder::dayMonthYear:
        break;
    }
    return Phrase::tr("day first");
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

std::vector<std::string> DateOrderVotes::optionsLeft() const
{
    std::vector<std::string> options;
    for (std::size_t i = 0; i < 3; ++i) {
        if (m_against[i].line == 0)
            options.emplace_back(optionText(allDateOrders[i]));
    }
    return options.empty() ? std::vector<std::string>{"mdy", "dmy"} : options;
}

Result<DecidedOrder> DateOrderVotes::decide() const
{
    std::optional<std::size_t> left;
    for (std::size_t i = 0; i < 3; ++i) {
        if (m_against[i].line != 0)
            continue;
        if (left && m_differ[*left][i].line != 0) {
            const Witness& row = m_differ[*left][i];
            return dataProblem(
                Phrase::tr("the dates fit more than one order, such as \"%1\"").with(row.text),
                linePlace(row.line),
                Phrase::tr("say --date-order %1").with(alternatives(optionsLeft())),
                Decision::dateOrder, optionsLeft());
        }
        if (!left)
            left = i;
    }
    const auto& [ymd, mdy, dmy] = m_against;
    if (!left)
        return dataProblem(
            Phrase::tr("the dates have no common order: \"%1\" in line %2 can't be month first, "
                       "\"%3\" in line %4 can't be day first")
                .with(mdy.text, std::to_string(mdy.line), dmy.text, std::to_string(dmy.line)),
            {},
            Phrase::tr("say --date-order %1 to leave the others out")
                .with(alternatives(optionsLeft())),
            Decision::dateOrder, optionsLeft());
    const DateOrder order = allDateOrders[*left];
    const Witness& why = order == DateOrder::monthDayYear ? dmy : mdy;
    if (why.line == 0)
        return DecidedOrder{order, orderText(order)};
    return DecidedOrder{order, Phrase::tr("%1: %2 occurs in line %3")
                                   .with(orderText(order), why.text, std::to_string(why.line))};
}

} // namespace holdband
