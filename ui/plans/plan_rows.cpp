#include "ui/plans/plan_rows.h"

#include "core/model/names.h"
#include "core/store/records/plan_check.h"
#include "core/text/phrase.h"
#include "core/text/places.h"
#include "core/text/quantities.h"
#include "core/text/times.h"
#include "ui/forms/number_rules.h"
#include "ui/forms/quantity_cells.h"
#include "ui/words/choice_text.h"
#include "ui/words/words.h"

namespace holdband::ui {

namespace {

const std::array allUntil{StageUntil::hours, StageUntil::turnedDown, StageUntil::gravity};

bool isRamp(const QStringList& row)
{
    return row[planKind] == stageKindWord(StageKind::ramp);
}

bool isAtGravity(const QStringList& row)
{
    return row[planEnds] == untilText(StageUntil::gravity);
}

QString hoursRule(double hours)
{
    return hours > 0.0 ? QString() : Words::tr("the hours must be above 0");
}

QString bandRule(double kelvins)
{
    return kelvins > 0.0 ? QString() : Words::tr("the band must be above 0");
}

QString settlingRule(double hours)
{
    return hours >= 0.0 ? QString() : Words::tr("the settling allowed can't be negative");
}

EditColumn choiceColumn(const QString& title, const QStringList& choices)
{
    EditColumn column{title, choices.front(), choices};
    column.refusal = {};
    return column;
}

QStringList kindChoices()
{
    return {stageKindWord(StageKind::hold), stageKindWord(StageKind::ramp)};
}

QStringList untilChoices()
{
    QStringList words;
    for (const StageUntil until : allUntil)
        words << untilText(until);
    return words;
}

template <typename Value>
QString textOf(Quantity quantity, const std::optional<Value>& value, const UnitFormat& format)
{
    return value ? typedText(quantity, plainOf(*value), format) : QString();
}

QStringList cellsOf(const Stage& stage, const UnitFormat& format)
{
    QStringList cells;
    cells.resize(planColumnCount);
    cells[planStage] = shown(stage.label);
    cells[planKind] = stageKindWord(stage.kind);
    cells[planTarget] = typedText(Quantity::temperature, plainOf(stage.target), format);
    cells[planLasts] = textOf(Quantity::hours, stage.length, format);
    cells[planEnds] = untilText(stage.until);
    cells[planGravity] = textOf(Quantity::gravity, stage.untilGravity, format);
    cells[planBand] = textOf(Quantity::difference, stage.tolerance, format);
    cells[planSettling] = textOf(Quantity::hours, stage.settleAllowed, format);
    return cells;
}

/// Reads the cells of one row; a cell that still has its original text gives the original value.
class RowReader {
public:
    RowReader(const EditRow& row, const Stage* origin, const UnitFormat& format)
        : m_row(row), m_format(format)
    {
        if (origin)
            m_shown = cellsOf(*origin, format);
    }

    template <typename Value>
    Done take(PlanColumn column, Quantity quantity, const std::optional<Value>& origin,
              std::optional<Value>& into) const
    {
        const QString& text = m_row.cells[column];
        if (!m_shown.isEmpty() && text == m_shown[column]) {
            into = origin;
            return {};
        }
        into.reset();
        if (text.trimmed().isEmpty())
            return {};
        const auto number = readTyped(quantity, text, m_format);
        HOLDBAND_TRY(number);
        into = fromPlain<Value>(*number);
        return {};
    }

private:
    const EditRow& m_row;
    const UnitFormat& m_format;
    QStringList m_shown;
};

StageUntil untilOf(const QString& words)
{
    for (const StageUntil until : allUntil) {
        if (untilText(until) == words)
            return until;
    }
    return StageUntil::hours;
}

Done readQuantities(const RowReader& reader, const Stage& origin, Stage& stage)
{
    std::optional<Temperature> target;
    HOLDBAND_TRY(
        reader.take(planTarget, Quantity::temperature, std::optional(origin.target), target));
    if (!target)
        return dataProblem(Phrase::tr("the target is missing"), {},
                           Phrase::tr("type a temperature"));
    stage.target = *target;
    HOLDBAND_TRY(reader.take(planLasts, Quantity::hours, origin.length, stage.length));
    HOLDBAND_TRY(reader.take(planBand, Quantity::difference, origin.tolerance, stage.tolerance));
    HOLDBAND_TRY(
        reader.take(planSettling, Quantity::hours, origin.settleAllowed, stage.settleAllowed));
    if (stage.until != StageUntil::gravity)
        return {};
    HOLDBAND_TRY(
        reader.take(planGravity, Quantity::gravity, origin.untilGravity, stage.untilGravity));
    if (!stage.untilGravity)
        return dataProblem(Phrase::tr("the gravity that ends it is missing"), {},
                           Phrase::tr("type one, such as 1.012"));
    return {};
}

std::string stagePlace(std::size_t index, const std::string& label)
{
    const std::string number = std::to_string(index + 1);
    return label.empty() ? Phrase::tr("stage %1").with(number)
                         : Phrase::tr("stage %1 (%2)").with(number, label);
}

/// Checks the plan as a whole; the place of a Problem is only the stage.
Done checked(const Schedule& schedule, const std::optional<TemperatureDifference>& tolerance)
{
    Batch batch;
    batch.schedule = schedule;
    batch.tolerance = tolerance;
    Done done = checkPlan(batch);
    if (done)
        return done;
    Problem problem = done.error();
    const std::string prefix = batchPlace("");
    problem.place.erase(0, problem.place.starts_with(prefix + ", ") ? prefix.size() + 2
                                                                    : prefix.size());
    return failure(problem);
}

} // namespace

QString untilText(StageUntil until)
{
    switch (until) {
    case StageUntil::hours:
        return Words::tr("after its hours");
    case StageUntil::turnedDown:
        return Words::tr("when turned down");
    case StageUntil::gravity:
        return Words::tr("at a gravity");
    }
    return {};
}

std::vector<EditColumn> planColumns(const UnitFormat& format)
{
    const QString degrees = unitOf(Quantity::temperature, format);
    std::vector<EditColumn> columns(planColumnCount);
    columns[planStage] = {Words::tr("Stage")};
    columns[planKind] = choiceColumn(Words::tr("Kind"), kindChoices());
    columns[planTarget] = {Words::tr("Target, %1").arg(degrees), {}, {}, true};
    columns[planTarget].refusal =
        quantityRefusal(planTarget, Quantity::temperature, false, format, {});
    columns[planLasts] = {Words::tr("Lasts, h or d"), {}, {}, true};
    columns[planLasts].refusal = [read = quantityRefusal(planLasts, Quantity::hours, true, format,
                                                         hoursRule)](const QStringList& row) {
        if (isRamp(row) && row[planLasts].trimmed().isEmpty())
            return Words::tr("a ramp needs hours");
        return read(row);
    };
    columns[planEnds] = choiceColumn(Words::tr("Ends"), untilChoices());
    columns[planGravity] = {Words::tr("Gravity"), {}, {}, true};
    columns[planGravity].used = isAtGravity;
    columns[planGravity].refusal =
        quantityRefusal(planGravity, Quantity::gravity, false, format, gravityRule);
    columns[planBand] = {Words::tr("Band ±, %1").arg(degrees), {}, {}, true};
    columns[planBand].refusal =
        quantityRefusal(planBand, Quantity::difference, true, format, bandRule);
    columns[planSettling] = {Words::tr("May settle"), {}, {}, true};
    columns[planSettling].refusal =
        quantityRefusal(planSettling, Quantity::hours, true, format, settlingRule);
    columns[planBegins] = {Words::tr("Begins"), {}, {}, false, true};
    return columns;
}

std::vector<EditRow> planRows(const Schedule& schedule, const UnitFormat& format)
{
    std::vector<EditRow> rows;
    for (const Stage& stage : schedule)
        rows.push_back({cellsOf(stage, format), static_cast<int>(rows.size())});
    return rows;
}

Result<Stage> stageOf(const EditRow& row, const Schedule& origin, const UnitFormat& format)
{
    for (const EditColumn& column : planColumns(format)) {
        const bool used = !column.used || column.used(row.cells);
        const QString refused = used && column.refusal ? column.refusal(row.cells) : QString();
        if (!refused.isEmpty())
            return dataProblem(core(refused));
    }
    const bool known = row.origin >= 0 && static_cast<std::size_t>(row.origin) < origin.size();
    const Stage before = known ? origin[static_cast<std::size_t>(row.origin)] : Stage{};
    Stage stage;
    stage.label = core(row.cells[planStage].trimmed());
    stage.kind = isRamp(row.cells) ? StageKind::ramp : StageKind::hold;
    stage.until = untilOf(row.cells[planEnds]);
    const RowReader reader(row, known ? &before : nullptr, format);
    HOLDBAND_TRY(readQuantities(reader, before, stage));
    return stage;
}

Result<Schedule> scheduleOf(const std::vector<EditRow>& rows, const Schedule& origin,
                            const std::optional<TemperatureDifference>& tolerance,
                            const UnitFormat& format)
{
    Schedule schedule;
    for (std::size_t i = 0; i < rows.size(); ++i) {
        auto stage = stageOf(rows[i], origin, format);
        if (!stage) {
            Problem problem = stage.error();
            problem.place = stagePlace(i, core(rows[i].cells[planStage].trimmed()));
            return failure(problem);
        }
        if (stage->label.empty())
            stage->label = Phrase::tr("Stage %1").with(std::to_string(i + 1));
        schedule.push_back(std::move(*stage));
    }
    HOLDBAND_TRY(checked(schedule, tolerance));
    return schedule;
}

QStringList stageBeginnings(const Schedule& schedule, std::optional<Instant> pitched,
                            const UnitFormat& format)
{
    QStringList words;
    std::optional<double> hours = 0.0;
    QString before;
    for (const Stage& stage : schedule) {
        if (!hours) {
            words << Words::tr("after %1").arg(before);
        } else {
            QString text = Words::tr("day %1").arg(static_cast<int>(*hours / 24.0));
            if (pitched) {
                const Instant at = *pitched + toMilliseconds(Hours{*hours});
                text += QStringLiteral(", ") + shown(localShortText(at, format.zone));
            }
            words << text;
        }
        const bool ends = stage.until == StageUntil::hours && stage.length;
        hours = hours && ends ? std::optional(*hours + stage.length->count()) : std::nullopt;
        before = stage.label.empty() ? Words::tr("the one before") : shown(stage.label);
    }
    return words;
}

QStringList planQuestions(const Schedule& schedule, const UnitFormat& format)
{
    QStringList questions;
    for (const Stage& stage : schedule) {
        const bool cold = stage.target < Temperature::celsius(0.0);
        const bool hot = stage.target > Temperature::fahrenheit(110.0);
        if (!cold && !hot)
            continue;
        const QString target =
            shown(temperatureText(stage.target, format.temperature(), 1, format.sign));
        questions << Words::tr("The target of %1 is %2, %3. Is that intended?")
                         .arg(stage.label.empty() ? Words::tr("a stage") : shown(stage.label),
                              target,
                              cold ? Words::tr("below freezing")
                                   : Words::tr("hotter than beer ferments"));
    }
    return questions;
}

} // namespace holdband::ui
