#include "ui/plans/new_batch_dialog.h"

#include "core/store/records/batches.h"
#include "ui/forms/instant_field.h"
#include "ui/forms/save_row.h"
#include "ui/plans/batch_fields.h"
#include "ui/plans/batch_steps.h"
#include "ui/plans/plan_dialog.h"
#include "ui/plans/plan_editor.h"
#include "ui/session/session.h"
#include "ui/theme/theme.h"
#include "ui/words/words.h"

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>

namespace holdband::ui {

namespace {

PlanValue emptyPlan(const UnitFormat& format)
{
    PlanValue plan;
    plan.tolerance = format.units == UnitSystem::us ? TemperatureDifference::fahrenheitDegrees(3.0)
                                                    : TemperatureDifference::kelvins(1.5);
    return plan;
}

} // namespace

NewBatchDialog::NewBatchDialog(Session& session, const BatchFormData& formData,
                               const std::string& splitFrom, QWidget* parent)
    : FormDialog(session, Words::tr("New batch"), Words::tr("Start the batch"), parent),
      m_formData(formData), m_splitFrom(splitFrom),
      m_fields(new BatchFields(BatchFields::For::newBatch, this)), m_choice(new QComboBox(this)),
      m_editor(new PlanEditor(this))
{
    addParts();
    m_fields->setFormData(formData, [this] { return this->session().now(); });
    m_editor->setFormat(formData.format);
    m_fields->setBatch(suggested());
    offerPlans();
    takePlan();
    connect(m_choice, &QComboBox::currentIndexChanged, this, &NewBatchDialog::takePlan);
    connect(m_editor, &PlanEditor::nameWanted, this, [this] {
        NamedPlan plan;
        if (const auto typed = m_editor->plan()) {
            plan.schedule = typed->schedule;
            plan.tolerance = typed->tolerance;
            (new PlanDialog(this->session(), m_formData, plan, this))->open();
        } else {
            foot()->refuse(sentence(typed.error()));
        }
    });
    m_fields->name()->setFocus();
    m_fields->name()->selectAll();
    resize(920, height());
    watchFields();
}

void NewBatchDialog::addParts()
{
    if (!m_splitFrom.empty())
        addWide(makeLabel(Words::tr("Part of %1, in a second vessel with a sensor of its own.")
                              .arg(shown(m_splitFrom)),
                          "muted", this));
    addWide(m_fields);
    m_choice->setAccessibleName(Words::tr("Plan to start from"));
    m_choice->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    m_choice->setMinimumContentsLength(24);
    addRow(Words::tr("Plan f&rom"), m_choice);
    addWide(m_editor);
    connect(m_fields->pitched(), &InstantField::edited, this, [this] {
        const auto at = m_fields->pitched()->instant();
        m_editor->setPitched(at ? *at : std::nullopt);
    });
}

Batch NewBatchDialog::suggested() const
{
    Batch batch;
    const Batch* parent = m_splitFrom.empty() ? nullptr : m_formData.batch(m_splitFrom);
    const Batch* last = parent ? parent : m_formData.lastBatch();
    if (last) {
        batch.setup = last->setup;
        batch.ambientSensor = last->ambientSensor;
        batch.volume = last->volume;
        batch.originalGravity = parent ? parent->originalGravity : std::nullopt;
    }
    const auto setups = offeredSetups(m_formData);
    if (!setups.empty() && std::find(setups.begin(), setups.end(), batch.setup) == setups.end())
        batch.setup = setups.front();
    const auto beer = offeredSensors(m_formData, SensorKind::beer, batch.setup);
    batch.beerSensor = beer.empty() ? std::string() : beer[parent && beer.size() > 1 ? 1 : 0];
    batch.name = parent ? parent->name + " B" : suggestedName(m_formData);
    batch.pitched = session().now();
    return batch;
}

void NewBatchDialog::offerPlans()
{
    const QSignalBlocker quiet(m_choice);
    const Batch* parent =
        m_splitFrom.empty() ? m_formData.lastBatch() : m_formData.batch(m_splitFrom);
    if (parent) {
        m_choice->addItem(Words::tr("as %1").arg(shown(parent->name)));
        m_offered.push_back(latestPlan(*parent));
    }
    for (const NamedPlan& plan : m_formData.plans) {
        m_choice->addItem(shown(plan.name));
        m_offered.push_back({plan.schedule, plan.tolerance});
    }
    m_choice->addItem(Words::tr("nothing: type it below"));
    m_offered.push_back(emptyPlan(m_formData.format));
}

void NewBatchDialog::takePlan()
{
    const auto at = static_cast<std::size_t>(std::max(0, m_choice->currentIndex()));
    m_editor->setPlan(m_offered[at]);
    const auto pitched = m_fields->pitched()->instant();
    m_editor->setPitched(pitched ? *pitched : std::nullopt);
}

void NewBatchDialog::startFrom(const PlannedBatch& planned)
{
    m_planned = planned;
    Batch batch = suggested();
    batch.setup = planned.setup;
    batch.volume = planned.volume;
    batch.originalGravity = planned.originalGravity;
    const auto beer = offeredSensors(m_formData, SensorKind::beer, batch.setup);
    batch.beerSensor = beer.empty() ? std::string() : beer.front();
    m_fields->setBatch(batch);
    m_choice->insertItem(0, planned.planName);
    m_offered.insert(m_offered.begin(), planned.plan);
    m_choice->setCurrentIndex(0);
    takePlan();
}

/// Only where it is the batch that was forecast.
std::optional<BatchForecast> NewBatchDialog::forecastFor(const Batch& batch) const
{
    if (!m_planned || batch.schedule != m_planned->plan.schedule ||
        batch.tolerance != m_planned->plan.tolerance || batch.volume != m_planned->volume)
        return std::nullopt;
    const auto found = m_planned->forecasts.find(batch.setup);
    return found == m_planned->forecasts.end() ? std::nullopt : std::optional(found->second);
}

void NewBatchDialog::save()
{
    Batch batch;
    if (!m_splitFrom.empty())
        batch.splitFrom = m_splitFrom;
    auto read = m_fields->read(std::move(batch));
    if (!read)
        return foot()->refuse(sentence(read.error()));
    const auto plan = m_editor->plan();
    if (!plan)
        return foot()->refuse(sentence(plan.error()));
    read->schedule = plan->schedule;
    read->tolerance = plan->tolerance;
    read->forecast = forecastFor(*read);
    if (!foot()->agreed(batchQuestions(*read, {}, m_formData, session().now())))
        return;
    m_savedName = shown(read->name);
    commitChange(
        {store::HistoryVerb::batchPitched, {read->name}},
        [made = *read](const store::Change& change) { return store::addBatch(change, made); });
}

} // namespace holdband::ui
