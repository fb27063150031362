#include "ui/equipment/offset_rows.h"

#include "core/text/phrase.h"
#include "ui/forms/quantity_cells.h"
#include "ui/words/words.h"

#include <QRegularExpression>
#include <algorithm>

namespace holdband::ui {

namespace {

QString doubtRule(double kelvins)
{
    return kelvins > 0.0 ? QString() : Words::tr("the uncertainty must be above 0");
}

Result<Offset> offsetOf(const EditRow& row, const Offset* before, const UnitFormat& format)
{
    Offset offset;
    const auto from =
        timeIn(row.cells[offsetFrom], before ? std::optional(before->from) : std::nullopt, format);
    HOLDBAND_TRY(from);
    offset.from = *from;
    const auto add =
        quantityIn(row.cells[offsetAdd], Quantity::difference,
                   before ? std::optional(before->add.kelvins()) : std::nullopt, format);
    HOLDBAND_TRY(add);
    offset.add = TemperatureDifference::kelvins(*add);
    if (!row.cells[offsetDoubt].trimmed().isEmpty()) {
        const auto known = before && before->doubt ? std::optional(before->doubt->kelvins())
                                                   : std::optional<double>();
        const auto doubt =
            quantityIn(row.cells[offsetDoubt], Quantity::difference, known, format, doubtRule);
        HOLDBAND_TRY(doubt);
        offset.doubt = TemperatureDifference::kelvins(*doubt);
    }
    offset.why = core(row.cells[offsetWhy].trimmed());
    return offset;
}

} // namespace

std::vector<EditColumn> offsetColumns(const UnitFormat& format)
{
    const QString degrees = unitOf(Quantity::difference, format);
    EditColumn add{Words::tr("Add, %1").arg(degrees), {}, {}, true};
    add.refusal = quantityRefusal(offsetAdd, Quantity::difference, false, format, {});
    EditColumn doubt{Words::tr("Uncertainty ±, %1").arg(degrees), {}, {}, true};
    doubt.refusal = quantityRefusal(offsetDoubt, Quantity::difference, true, format, doubtRule);
    return {
        timeColumn(Words::tr("From"), offsetFrom, false, format), add, doubt, {Words::tr("Why")}};
}

EditRow offsetRow(const Offset& offset, int origin, const UnitFormat& format)
{
    return {
        {typedTime(offset.from, format.zone),
         typedText(Quantity::difference, plainOf(offset.add), format),
         offset.doubt ? typedText(Quantity::difference, plainOf(*offset.doubt), format) : QString(),
         shown(offset.why)},
        origin};
}

std::vector<EditRow> offsetRows(const std::vector<Offset>& offsets, const UnitFormat& format)
{
    std::vector<EditRow> rows;
    for (const Offset& offset : offsets)
        rows.push_back(offsetRow(offset, static_cast<int>(rows.size()), format));
    return rows;
}

Result<std::vector<Offset>> offsetsOf(const std::vector<EditRow>& rows,
                                      const std::vector<Offset>& origin, const UnitFormat& format)
{
    std::vector<Offset> offsets;
    for (const EditRow& row : rows) {
        auto offset = offsetOf(row, originOf(row, origin), format);
        if (!offset) {
            Problem problem = offset.error();
            problem.place = Phrase::tr("offset %1").with(std::to_string(offsets.size() + 1));
            return failure(problem);
        }
        offsets.push_back(std::move(*offset));
    }
    const auto earlier = [](const Offset& a, const Offset& b) { return a.from < b.from; };
    std::sort(offsets.begin(), offsets.end(), earlier);
    for (std::size_t i = 1; i < offsets.size(); ++i) {
        if (offsets[i].from == offsets[i - 1].from)
            return dataProblem(Phrase::tr("two offsets begin at the same time"),
                               Phrase::tr("offsets"));
    }
    return offsets;
}

Result<std::vector<Temperature>> typedReadings(const QString& text, const UnitFormat& format)
{
    static const QRegularExpression blanks(QStringLiteral("[\\s;]+"));
    static const QRegularExpression blanksOrCommas(QStringLiteral("[\\s;,]+"));
    std::vector<Temperature> readings;
    const QStringList parts =
        text.split(format.sign == ',' ? blanks : blanksOrCommas, Qt::SkipEmptyParts);
    for (const QString& part : parts) {
        const auto celsius = readTyped(Quantity::temperature, part, format);
        if (!celsius)
            return failure(celsius.error());
        readings.push_back(Temperature::celsius(*celsius));
    }
    return readings;
}

} // namespace holdband::ui
