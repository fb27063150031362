#include "ui/plans/plan_editor.h"

#include "ui/forms/buddy.h"
#include "ui/forms/edit_table.h"
#include "ui/forms/quantity_field.h"
#include "ui/plans/plan_drawing.h"
#include "ui/theme/theme.h"
#include "ui/words/words.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTableView>
#include <QVBoxLayout>

namespace holdband::ui {

PlanEditor::PlanEditor(QWidget* parent)
    : QWidget(parent),
      m_band(new QuantityField(Quantity::difference, Words::tr("Band, plus or minus"), this)),
      m_drawing(new PlanDrawing(this)),
      m_table(new EditTable(Words::tr("stage"), planColumns(m_format), planStage, this)),
      m_words(makeLabel({}, "warn", this)),
      m_name(new QPushButton(Words::tr("Save as a named plan…"), this))
{
    m_band->setOptional(true);
    m_band->setRule(aboveZero);
    m_table->setVisibleRows(3, 6);
    m_name->setAutoDefault(false);
    m_words->setAccessibleName(Words::tr("What is wrong with the plan"));
    layOut();
    connectParts();
    showTyped();
}

void PlanEditor::layOut()
{
    auto* top = new QHBoxLayout;
    auto* label = new QLabel(Words::tr("&Hold band ±"), this);
    label->setMargin(4);
    setBuddyOf(*label, *m_band);
    top->addWidget(label, 0, Qt::AlignTop);
    top->addWidget(m_band);
    top->addStretch();
    top->addWidget(m_name, 0, Qt::AlignTop);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(6);
    layout->addLayout(top);
    layout->addWidget(m_drawing);
    layout->addWidget(m_table);
    layout->addWidget(m_words);
}

void PlanEditor::connectParts()
{
    const auto typed = [this] {
        showTyped();
        Q_EMIT changed();
    };
    connect(m_band, &QuantityField::edited, this, typed);
    connect(m_table, &EditTable::edited, this, typed);
    connect(m_name, &QPushButton::clicked, this, &PlanEditor::nameWanted);
    connect(m_table, &EditTable::rowChosen, m_drawing, &PlanDrawing::setChosenRow);
    connect(m_drawing, &PlanDrawing::rowChosen, m_table, &EditTable::chooseRow);
    connect(m_drawing, &PlanDrawing::targetDragged, this, [this](int row, Temperature target) {
        m_table->model()->setCell(row, planTarget,
                                  typedText(Quantity::temperature, plainOf(target), m_format));
    });
    connect(m_drawing, &PlanDrawing::lengthDragged, this, [this](int row, Hours length) {
        m_table->model()->setCell(row, planLasts,
                                  typedText(Quantity::hours, plainOf(length), m_format));
    });
}

void PlanEditor::setFormat(const UnitFormat& format)
{
    m_format = format;
    m_band->setFormat(format);
    m_table->model()->setColumns(planColumns(format));
    m_table->model()->setRows(planRows(m_origin, format));
    showTyped();
}

void PlanEditor::setPitched(std::optional<Instant> pitched)
{
    m_pitched = pitched;
    showTyped();
}

void PlanEditor::setPlan(const PlanValue& plan)
{
    m_origin = plan.schedule;
    m_band->set(plan.tolerance);
    m_table->model()->setRows(planRows(plan.schedule, m_format));
    m_table->chooseRow(0);
    showTyped();
}

std::optional<TemperatureDifference> PlanEditor::tolerance() const
{
    const auto read = m_band->value<TemperatureDifference>();
    return read ? *read : std::nullopt;
}

Result<Schedule> PlanEditor::typedSchedule() const
{
    return scheduleOf(m_table->model()->rows(), m_origin, tolerance(), m_format);
}

/// Draws the stages that can be read so far, and shows what is wrong with the others.
void PlanEditor::showTyped()
{
    Schedule readable;
    std::vector<int> rows;
    const auto& typed = m_table->model()->rows();
    for (std::size_t i = 0; i < typed.size(); ++i) {
        auto stage = stageOf(typed[i], m_origin, m_format);
        if (!stage)
            continue;
        readable.push_back(std::move(*stage));
        rows.push_back(static_cast<int>(i));
    }
    showBeginnings(readable, rows);
    m_drawing->setPlan(drawnStages(readable, rows, tolerance()), m_format);
    const auto whole = typedSchedule();
    // The table already shows below it why a cell is refused.
    const bool said = m_table->model()->firstRefused().isValid();
    const QString words = !whole && !said ? sentence(whole.error())
                          : whole         ? planQuestions(*whole, m_format).join(QLatin1Char(' '))
                                          : QString();
    m_words->setText(capitalised(words));
    m_words->setVisible(!words.isEmpty());
}

/// After a stage that can't be read the beginning of the next is unknown.
void PlanEditor::showBeginnings(const Schedule& schedule, const std::vector<int>& rows)
{
    const QStringList words = stageBeginnings(schedule, m_pitched, m_format);
    for (int row = 0; row < m_table->model()->rowCount(); ++row) {
        const auto place = static_cast<std::size_t>(row);
        const bool known = place < rows.size() && rows[place] == row;
        m_table->model()->showCell(row, planBegins, known ? words[row] : QString());
    }
}

Result<PlanValue> PlanEditor::plan()
{
    const auto band = m_band->value<TemperatureDifference>();
    if (!band) {
        m_band->setFocus();
        return failure(band.error());
    }
    const auto schedule = typedSchedule();
    if (schedule)
        return PlanValue{*schedule, *band};
    if (m_table->check())
        m_table->view()->setFocus();
    return failure(schedule.error());
}

QStringList PlanEditor::questions() const
{
    const auto schedule = typedSchedule();
    return schedule ? planQuestions(*schedule, m_format) : QStringList();
}

QString PlanEditor::words() const
{
    return m_words->text();
}

} // namespace holdband::ui
