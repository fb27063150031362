#include "ui/forms/time_cells.h"

#include "ui/forms/typed_time.h"
#include "ui/words/words.h"

namespace holdband::ui {

EditColumn timeColumn(const QString& title, int column, bool mayBeEmpty, const UnitFormat& format)
{
    EditColumn made{title};
    made.sample = longestTime();
    made.time = true;
    made.refusal = [=, zone = format.zone](const QStringList& row) {
        if (mayBeEmpty && row[column].trimmed().isEmpty())
            return QString();
        const auto at = readTypedTime(row[column], zone, std::nullopt);
        if (at)
            return QString();
        const Problem& problem = at.error();
        return shown(problem.remedy.empty() ? problem.what : problem.what + "; " + problem.remedy);
    };
    return made;
}

Result<Instant> timeIn(const QString& cell, std::optional<Instant> origin, const UnitFormat& format)
{
    if (origin && cell == typedTime(*origin, format.zone))
        return *origin;
    return readTypedTime(cell, format.zone, std::nullopt);
}

} // namespace holdband::ui
