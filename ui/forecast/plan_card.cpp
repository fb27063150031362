#include "ui/forecast/plan_card.h"

#include "ui/forecast/drawn_plan_dialog.h"
#include "ui/forms/buddy.h"
#include "ui/forms/choices.h"
#include "ui/forms/quantity_field.h"
#include "ui/plans/plan_drawing.h"
#include "ui/plans/plan_layout.h"
#include "ui/theme/theme.h"
#include "ui/words/words.h"

#include <QCheckBox>
#include <QComboBox>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalBlocker>
#include <QVBoxLayout>
#include <numeric>

namespace holdband::ui {

PlanCard::PlanCard(QWidget* parent)
    : Card(Words::tr("The plan"), parent), m_choice(makeChoice(Words::tr("Plan"), this)),
      m_draw(new QPushButton(Words::tr("&Draw…"), this)), m_drawing(new PlanDrawing(this)),
      m_volume(new QuantityField(Quantity::volume, Words::tr("Volume"), this)),
      m_original(new QuantityField(Quantity::gravity, Words::tr("Original gravity"), this)),
      m_final(new QuantityField(Quantity::gravity, Words::tr("Final gravity"), this)),
      m_shared(new QCheckBox(Words::tr("&Another batch runs beside it"), this))
{
    m_drawing->setAccessibleName(Words::tr("Stages of the plan"));
    m_shared->setToolTip(Words::tr(
        "On the same setup at the same time. Only past batches that shared it count then."));
    for (QuantityField* field : {m_volume, m_original, m_final})
        field->setOptional(true);
    m_volume->setRule(aboveZero);
    layOut();
    connectParts();
}

void PlanCard::layOut()
{
    auto* form = new QFormLayout;
    form->setFieldGrowthPolicy(QFormLayout::AllNonFixedFieldsGrow);
    auto* row = new QHBoxLayout;
    row->addWidget(m_choice, 1);
    row->addWidget(m_draw);
    auto* planLabel = new QLabel(Words::tr("&Plan"), this);
    planLabel->setBuddy(m_choice);
    form->addRow(planLabel, row);
    contents()->addLayout(form);
    contents()->addWidget(m_drawing);
    auto* fields = new QFormLayout;
    const auto addField = [&](const QString& text, QuantityField* field) {
        auto* label = new QLabel(text, this);
        setBuddyOf(*label, *field);
        fields->addRow(label, field);
    };
    addField(Words::tr("Vol&ume"), m_volume);
    addField(Words::tr("&Original gravity"), m_original);
    addField(Words::tr("Fi&nal gravity"), m_final);
    contents()->addLayout(fields);
    contents()->addWidget(m_shared);
}

void PlanCard::connectParts()
{
    connect(m_choice, &QComboBox::activated, this, [this] {
        takeChoice();
        Q_EMIT changed();
    });
    connect(m_draw, &QPushButton::clicked, this, &PlanCard::openEditor);
    connect(m_shared, &QCheckBox::toggled, this, &PlanCard::changed);
    for (QuantityField* field : {m_volume, m_original, m_final})
        connect(field->edit(), &QLineEdit::editingFinished, this, &PlanCard::changed);
    connect(m_drawing, &PlanDrawing::targetDragged, this, [this](int row, Temperature target) {
        PlanValue plan{chosen().schedule, chosen().tolerance};
        plan.schedule[static_cast<std::size_t>(row)].target = target;
        takeDrawn(plan);
    });
    connect(m_drawing, &PlanDrawing::lengthDragged, this, [this](int row, Hours length) {
        PlanValue plan{chosen().schedule, chosen().tolerance};
        plan.schedule[static_cast<std::size_t>(row)].length = length;
        takeDrawn(plan);
    });
}

void PlanCard::offer(results::NextPlan plan, const QString& text)
{
    m_choice->addItem(text);
    m_offered.push_back(std::move(plan));
}

void PlanCard::setOffer(const results::NextBatchOffer& given, const UnitFormat& format)
{
    m_format = format;
    const QString before = m_choice->currentText();
    const bool first = m_offered.empty();
    {
        const QSignalBlocker quiet(m_choice);
        m_choice->clear();
        m_offered.clear();
        for (const results::NextPlan& plan : given.plans)
            offer(plan, shown(plan.name));
        for (const results::NextPlan& batch : given.batches)
            offer(batch, Words::tr("like %1").arg(shown(batch.name)));
        if (m_drawn && !m_offered.empty())
            takeDrawn(*m_drawn);
        const int kept = m_choice->findText(before);
        if (!first && kept >= 0)
            m_choice->setCurrentIndex(kept);
    }
    for (QuantityField* field : {m_volume, m_original, m_final})
        field->setFormat(format);
    if (first)
        takeChoice();
    else
        showPlan();
}

const results::NextPlan& PlanCard::chosen() const
{
    static const results::NextPlan none;
    const int index = m_choice->currentIndex();
    return index < 0 ? none : m_offered[static_cast<std::size_t>(index)];
}

/// Volume and gravities are those of the choice.
void PlanCard::takeChoice()
{
    if (m_offered.empty())
        return showPlan();
    m_volume->set(chosen().volume);
    m_original->set(chosen().originalGravity);
    m_final->set(chosen().finalGravity);
    showPlan();
}

void PlanCard::takeDrawn(const PlanValue& value)
{
    const QString text = Words::tr("drawn");
    results::NextPlan plan = chosen();
    plan.name.clear();
    plan.schedule = value.schedule;
    plan.tolerance = value.tolerance;
    m_drawn = value;
    int at = m_choice->findText(text);
    if (at < 0) {
        const QSignalBlocker quiet(m_choice);
        offer(std::move(plan), text);
        at = m_choice->count() - 1;
    } else {
        m_offered[static_cast<std::size_t>(at)] = std::move(plan);
    }
    m_choice->setCurrentIndex(at);
    showPlan();
    Q_EMIT changed();
}

void PlanCard::openEditor()
{
    auto* dialog = new DrawnPlanDialog({chosen().schedule, chosen().tolerance}, m_format, window());
    connect(dialog, &DrawnPlanDialog::drawn, this, &PlanCard::takeDrawn);
    dialog->open();
}

void PlanCard::showPlan()
{
    const Schedule& schedule = chosen().schedule;
    std::vector<int> rows(schedule.size());
    std::iota(rows.begin(), rows.end(), 0);
    m_drawing->setPlan(drawnStages(schedule, rows, chosen().tolerance), m_format);
}

Result<results::NextPlan> PlanCard::plan()
{
    results::NextPlan plan = chosen();
    HOLDBAND_TRY(readField<Volume>(m_volume, plan.volume));
    HOLDBAND_TRY(readField<Gravity>(m_original, plan.originalGravity));
    HOLDBAND_TRY(readField<Gravity>(m_final, plan.finalGravity));
    plan.shared = m_shared->isChecked();
    return plan;
}

} // namespace holdband::ui
