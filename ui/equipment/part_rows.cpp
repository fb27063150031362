#include "ui/equipment/part_rows.h"

#include "core/results/comparison/side_by_side.h"
#include "core/text/numbers.h"
#include "core/text/phrase.h"
#include "core/text/quantities.h"
#include "ui/forms/number_rules.h"
#include "ui/forms/quantity_cells.h"
#include "ui/words/words.h"

namespace holdband::ui {

namespace {

enum PartColumn : int { partItem, partPieces, partPrice };
enum RatingColumn : int { ratingCriterion, ratingValue };

/// As stored in the logbook; results::criterionWord gives the text that is shown and typed.
constexpr std::array usualCriteria{"build effort", "ease of use", "cleaning", "noise", "space"};

std::string storedCriterion(const std::string& typed)
{
    for (const char* usual : usualCriteria) {
        if (typed == results::criterionWord(usual))
            return usual;
    }
    return typed;
}

QString piecesRule(double pieces)
{
    return pieces > 0.0 ? QString() : Words::tr("the pieces must be above 0");
}

QString ratingRule(double value)
{
    return value >= 1.0 && value <= 5.0 ? QString() : Words::tr("a rating must be from 1 to 5");
}

} // namespace

std::vector<EditColumn> partColumns(const UnitFormat& format)
{
    EditColumn item{Words::tr("Part")};
    item.refusal = [](const QStringList& row) {
        return row[partItem].trimmed().isEmpty() ? Words::tr("the part needs a name") : QString();
    };
    EditColumn pieces{Words::tr("Pieces"), QStringLiteral("1"), {}, true};
    pieces.refusal = quantityRefusal(partPieces, Quantity::number, false, format, piecesRule);
    const QString currency =
        format.currency.empty() ? QString() : QStringLiteral(", ") + shown(format.currency);
    EditColumn price{Words::tr("Price each%1", "with its currency").arg(currency), {}, {}, true};
    price.refusal = quantityRefusal(partPrice, Quantity::money, false, format, priceRule);
    return {item, pieces, price};
}

std::vector<EditRow> partRows(const std::vector<Part>& parts, const UnitFormat& format)
{
    std::vector<EditRow> rows;
    for (const Part& part : parts)
        rows.push_back({{shown(part.item), typedText(Quantity::number, part.quantity, format),
                         typedText(Quantity::money, part.price, format)},
                        static_cast<int>(rows.size())});
    return rows;
}

Result<std::vector<Part>> partsOf(const std::vector<EditRow>& rows, const std::vector<Part>& origin,
                                  const UnitFormat& format)
{
    std::vector<Part> parts;
    for (const EditRow& row : rows) {
        const Part* before = originOf(row, origin);
        const auto pieces =
            quantityIn(row.cells[partPieces], Quantity::number,
                       before ? std::optional(before->quantity) : std::nullopt, format, piecesRule);
        HOLDBAND_TRY(pieces);
        const auto price =
            quantityIn(row.cells[partPrice], Quantity::money,
                       before ? std::optional(before->price) : std::nullopt, format, priceRule);
        HOLDBAND_TRY(price);
        if (row.cells[partItem].trimmed().isEmpty())
            return dataProblem(Phrase::tr("the part needs a name"),
                               Phrase::tr("part %1").with(std::to_string(parts.size() + 1)));
        parts.push_back({core(row.cells[partItem].trimmed()), *pieces, *price});
    }
    return parts;
}

QString partsSumText(const std::vector<EditRow>& rows, const UnitFormat& format)
{
    double sum = 0.0;
    for (const EditRow& row : rows) {
        const auto pieces = readTyped(Quantity::number, row.cells[partPieces], format);
        const auto price = readTyped(Quantity::money, row.cells[partPrice], format);
        if (pieces && price)
            sum += *pieces * *price;
    }
    return rows.empty() ? QString()
                        : Words::tr("All parts: %1")
                              .arg(shown(moneyText(sum, format.currency, format.sign)));
}

std::vector<EditColumn> ratingColumns(const UnitFormat& format)
{
    EditColumn value{Words::tr("1 poor … 5 good"), {}, {}, true};
    value.refusal = quantityRefusal(ratingValue, Quantity::number, true, format, ratingRule);
    return {{Words::tr("What can't be measured")}, value};
}

std::vector<EditRow> ratingRows(const std::map<std::string, double>& ratings,
                                const UnitFormat& format)
{
    std::vector<EditRow> rows;
    for (const auto& [criterion, value] : ratings)
        rows.push_back(
            {{shown(results::criterionWord(criterion)), typedText(Quantity::number, value, format)},
             -1});
    for (const char* criterion : usualCriteria) {
        if (!ratings.contains(criterion))
            rows.push_back({{shown(results::criterionWord(criterion)), QString()}, -1});
    }
    return rows;
}

Result<std::map<std::string, double>> ratingsOf(const std::vector<EditRow>& rows,
                                                const UnitFormat& format)
{
    std::map<std::string, double> ratings;
    for (const EditRow& row : rows) {
        if (row.cells[ratingValue].trimmed().isEmpty())
            continue;
        const std::string typed = core(row.cells[ratingCriterion].trimmed());
        const std::string criterion = storedCriterion(typed);
        const auto value =
            quantityIn(row.cells[ratingValue], Quantity::number, std::nullopt, format, ratingRule);
        HOLDBAND_TRY(value);
        if (criterion.empty())
            return dataProblem(Phrase::tr("a rating needs to say what it rates"),
                               Phrase::tr("ratings"));
        if (!ratings.emplace(criterion, *value).second)
            return dataProblem(Phrase::tr("\"%1\" is rated twice").with(typed),
                               Phrase::tr("ratings"), Phrase::tr("take one of them out"));
    }
    return ratings;
}

} // namespace holdband::ui
