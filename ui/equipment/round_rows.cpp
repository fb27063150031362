#include "ui/equipment/round_rows.h"

#include "core/text/name_suggestions.h"
#include "core/text/phrase.h"
#include "ui/equipment/window_rows.h"
#include "ui/words/choice_text.h"
#include "ui/words/words.h"

#include <algorithm>

namespace holdband::ui {

namespace {

enum RoundColumn : int { roundLabel, roundFrom, roundTo };

QString labelRefusal(const QStringList& row)
{
    return row[roundLabel].trimmed().isEmpty() ? Words::tr("the round needs a name") : QString();
}

QString fromRefusal(const QStringList& row)
{
    return typedMinute(row[roundFrom]) ? QString()
                                       : Words::tr("write a time of day, such as 06:30");
}

QString toRefusal(const QStringList& row)
{
    const auto from = typedMinute(row[roundFrom]);
    const auto to = typedMinute(row[roundTo]);
    if (!to)
        return Words::tr("write a time of day, such as 09:00");
    return from && *to <= *from ? Words::tr("a round ends after it begins, on the same day")
                                : QString();
}

Result<RoundWindow> roundOf(const EditRow& row)
{
    for (const QString& refused :
         {labelRefusal(row.cells), fromRefusal(row.cells), toRefusal(row.cells)}) {
        if (!refused.isEmpty())
            return dataProblem(core(refused));
    }
    return RoundWindow{storedRoundName(row.cells[roundLabel].trimmed()),
                       *typedMinute(row.cells[roundFrom]), *typedMinute(row.cells[roundTo])};
}

Done checkDay(const std::vector<RoundWindow>& rounds)
{
    for (std::size_t i = 1; i < rounds.size(); ++i) {
        if (rounds[i].fromMinute < rounds[i - 1].toMinute)
            return dataProblem(
                Phrase::tr("%1 begins before %2 is over")
                    .with(core(roundWord(rounds[i].label)), core(roundWord(rounds[i - 1].label))),
                Phrase::tr("rounds"), Phrase::tr("give each its own time"));
    }
    for (std::size_t i = 0; i < rounds.size(); ++i) {
        for (std::size_t k = 0; k < i; ++k) {
            if (folded(core(roundWord(rounds[i].label))) ==
                folded(core(roundWord(rounds[k].label))))
                return dataProblem(
                    Phrase::tr("two rounds are called %1").with(core(roundWord(rounds[i].label))),
                    Phrase::tr("rounds"), Phrase::tr("call one of them something else"));
        }
    }
    return {};
}

} // namespace

std::vector<EditColumn> roundColumns()
{
    EditColumn label{Words::tr("Round")};
    label.refusal = labelRefusal;
    EditColumn from{Words::tr("From"), {}, {}, true};
    from.refusal = fromRefusal;
    EditColumn to{Words::tr("To"), {}, {}, true};
    to.refusal = toRefusal;
    return {label, from, to};
}

std::vector<EditRow> roundRows(const std::vector<RoundWindow>& rounds)
{
    std::vector<EditRow> rows;
    for (const RoundWindow& round : rounds)
        rows.push_back(
            {{roundWord(round.label), minuteCell(round.fromMinute), minuteCell(round.toMinute)},
             static_cast<int>(rows.size())});
    return rows;
}

Result<std::vector<RoundWindow>> roundsOf(const std::vector<EditRow>& rows)
{
    if (rows.empty())
        return dataProblem(Phrase::tr("a day needs at least one round"), Phrase::tr("rounds"),
                           Phrase::tr("add one"));
    if (rows.size() > mostRounds)
        return dataProblem(Phrase::counted("a day can have at most %n rounds",
                                           "a day has one round at most", mostRounds),
                           Phrase::tr("rounds"), Phrase::tr("take one out"));
    std::vector<RoundWindow> rounds;
    for (const EditRow& row : rows) {
        auto round = roundOf(row);
        if (!round) {
            Problem problem = round.error();
            problem.place = Phrase::tr("round %1").with(std::to_string(rounds.size() + 1));
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
