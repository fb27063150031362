#include "ui/forms/quantity_cells.h"

#include "ui/words/words.h"

namespace holdband::ui {

std::function<QString(const QStringList& row)> quantityRefusal(int column, Quantity quantity,
                                                               bool mayBeEmpty,
                                                               const UnitFormat& format,
                                                               NumberRule rule)
{
    return [=, rule = std::move(rule)](const QStringList& row) {
        if (row[column].trimmed().isEmpty())
            return mayBeEmpty ? QString() : Words::tr("nothing is typed here");
        const auto number = readTyped(quantity, row[column], format);
        if (number)
            return rule ? rule(*number) : QString();
        const Problem& problem = number.error();
        return shown(problem.remedy.empty() ? problem.what : problem.what + "; " + problem.remedy);
    };
}

Result<double> quantityIn(const QString& cell, Quantity quantity, std::optional<double> origin,
                          const UnitFormat& format, const NumberRule& rule)
{
    if (origin && cell == typedText(quantity, *origin, format))
        return *origin;
    const auto number = readTyped(quantity, cell, format);
    if (!number)
        return number;
    const QString refused = rule ? rule(*number) : QString();
    if (!refused.isEmpty())
        return dataProblem(core(refused));
    return *number;
}

} // namespace holdband::ui
