#include "ui/equipment/round_rows.h"

#include "core/text/near.h"
#include "ui/equipment/window_rows.h"
#include "ui/words/words.h"

#include <algorithm>

namespace holdband::ui {

namespace {

enum RoundColumn : int { roundLabel, roundFrom, roundTo };

QString clockOf(int minute)
{
    return QStringLiteral("%1:%2")
        .arg(minute / 60, 2, 10, QLatin1Char('0'))
        .arg(minute % 60, 2, 10, QLatin1Char('0'));
}

QString labelRefusal(const QStringList& row)
{
    return row[roundLabel].trimmed().isEmpty() ? QStringLiteral("the round needs a name")
                                               : QString();
}

QString fromRefusal(const QStringList& row)
{
    return typedMinute(row[roundFrom]) ? QString()
                                       : QStringLiteral("write a time of day, such as 06:30");
}

QString toRefusal(const QStringList& row)
{
    const auto from = typedMinute(row[roundFrom]);
    const auto to = typedMinute(row[roundTo]);
    if (!to)
        return QStringLiteral("write a time of day, such as 09:00");
    return from && *to <= *from ? QStringLiteral("a round ends after it begins, on the same day")
                                : QString();
}

Result<RoundWindow> roundOf(const EditRow& row)
{
    for (const QString& refused :
         {labelRefusal(row.cells), fromRefusal(row.cells), toRefusal(row.cells)}) {
        if (!refused.isEmpty())
            return dataProblem(core(refused));
    }
    return RoundWindow{core(row.cells[roundLabel].trimmed()), *typedMinute(row.cells[roundFrom]),
                       *typedMinute(row.cells[roundTo])};
}

Done checkDay(const std::vector<RoundWindow>& rounds)
{
    for (std::size_t i = 1; i < rounds.size(); ++i) {
        if (rounds[i].fromMinute < rounds[i - 1].toMinute)
            return dataProblem(rounds[i].label + " begins before " + rounds[i - 1].label +
                                   " is over",
                               "rounds", "give each its own time");
    }
    for (std::size_t i = 0; i < rounds.size(); ++i) {
        for (std::size_t k = 0; k < i; ++k) {
            if (folded(rounds[i].label) == folded(rounds[k].label))
                return dataProblem("two rounds are called " + rounds[i].label, "rounds",
                                   "call one of them something else");
        }
    }
    return {};
}

} // namespace

std::vector<EditColumn> roundColumns()
{
    EditColumn label{QStringLiteral("Round")};
    label.refusal = labelRefusal;
    EditColumn from{QStringLiteral("From"), {}, {}, true};
    from.refusal = fromRefusal;
    EditColumn to{QStringLiteral("To"), {}, {}, true};
    to.refusal = toRefusal;
    return {label, from, to};
}

std::vector<EditRow> roundRows(const std::vector<RoundWindow>& rounds)
{
    std::vector<EditRow> rows;
    for (const RoundWindow& round : rounds)
        rows.push_back({{shown(round.label), clockOf(round.fromMinute), clockOf(round.toMinute)},
                        static_cast<int>(rows.size())});
    return rows;
}

Result<std::vector<RoundWindow>> roundsOf(const std::vector<EditRow>& rows)
{
    if (rows.empty())
        return dataProblem("a day has one round at least", "rounds", "add one");
    if (rows.size() > mostRounds)
        return dataProblem("a day has " + std::to_string(mostRounds) + " rounds at most", "rounds",
                           "take one out");
    std::vector<RoundWindow> rounds;
    for (const EditRow& row : rows) {
        auto round = roundOf(row);
        if (!round) {
            Problem problem = round.error();
            problem.place = "round " + std::to_string(rounds.size() + 1);
            return failure(problem);
        }
        rounds.push_back(std::move(*round));
    }
    const auto earlier = [](const RoundWindow& a, const RoundWindow& b) {
        return a.fromMinute < b.fromMinute;
    };
    std::stable_sort(rounds.begin(), rounds.end(), earlier);
    HOLDBAND_TRY(checkDay(rounds));
    return rounds;
}

} // namespace holdband::ui
