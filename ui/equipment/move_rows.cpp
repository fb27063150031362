#include "ui/equipment/move_rows.h"

#include "core/text/phrase.h"
#include "ui/forms/time_cells.h"
#include "ui/words/words.h"

#include <algorithm>

namespace holdband::ui {

namespace {

enum MoveColumn : int { moveFrom, moveSetup };

QString shelf()
{
    return Words::tr("not in use");
}

} // namespace

std::vector<EditColumn> moveColumns(const std::vector<Setup>& setups, const UnitFormat& format)
{
    QStringList places;
    for (const Setup& setup : setups)
        places << shown(setup.name);
    places << shelf();
    return {timeColumn(Words::tr("From"), moveFrom, false, format),
            {Words::tr("Counts for"), places.front(), places}};
}

std::vector<EditRow> moveRows(const std::vector<MeterMove>& moves, const UnitFormat& format)
{
    std::vector<EditRow> rows;
    for (const MeterMove& move : moves)
        rows.push_back(
            {{typedTime(move.from, format.zone), move.setup ? shown(*move.setup) : shelf()},
             static_cast<int>(rows.size())});
    return rows;
}

Result<std::vector<MeterMove>> movesOf(const std::vector<EditRow>& rows,
                                       const std::vector<MeterMove>& origin,
                                       const UnitFormat& format)
{
    std::vector<MeterMove> moves;
    for (const EditRow& row : rows) {
        const MeterMove* before = originOf(row, origin);
        const auto from = timeIn(row.cells[moveFrom],
                                 before ? std::optional(before->from) : std::nullopt, format);
        HOLDBAND_TRY(from);
        const QString& place = row.cells[moveSetup];
        moves.push_back({*from, place == shelf() ? std::nullopt : std::optional(core(place))});
    }
    const auto earlier = [](const MeterMove& a, const MeterMove& b) { return a.from < b.from; };
    std::sort(moves.begin(), moves.end(), earlier);
    for (std::size_t i = 1; i < moves.size(); ++i) {
        if (moves[i].from == moves[i - 1].from)
            return dataProblem(Phrase::tr("two moves are at the same time"), Phrase::tr("moves"));
    }
    return moves;
}

} // namespace holdband::ui
