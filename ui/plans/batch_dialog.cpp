#include "ui/plans/batch_dialog.h"

#include "core/store/records/batches.h"
#include "core/text/phrase.h"
#include "ui/forms/edit_table.h"
#include "ui/forms/instant_field.h"
#include "ui/forms/save_row.h"
#include "ui/plans/batch_fields.h"
#include "ui/plans/batch_steps.h"
#include "ui/plans/beer_uses.h"
#include "ui/plans/plan_dialog.h"
#include "ui/plans/plan_editor.h"
#include "ui/plans/schedule_table.h"
#include "ui/session/session.h"
#include "ui/tables/table_card.h"
#include "ui/theme/theme.h"
#include "ui/words/words.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QRadioButton>
#include <QTabWidget>
#include <QVBoxLayout>

namespace holdband::ui {

namespace {

enum Tab : int { detailsTab, planTab, usesTab, doneTab };

QVBoxLayout* columnIn(QWidget* page)
{
    auto* column = new QVBoxLayout(page);
    column->setContentsMargins(12, 10, 12, 8);
    column->setSpacing(8);
    return column;
}

QStringList beerSensors(const BatchFormData& formData, const Batch& batch)
{
    QStringList names;
    for (const std::string& name :
         offeredSensors(formData, SensorKind::beer, batch.setup, batch.beerSensor))
        names << shown(name);
    for (const BeerUse& use : batch.beerUses) {
        if (!names.contains(shown(use.sensor)))
            names << shown(use.sensor);
    }
    return names;
}

} // namespace

BatchDialog::BatchDialog(Session& session, const BatchFormData& formData, const Batch& batch,
                         QWidget* parent)
    : FormDialog(session, Words::tr("Batch %1").arg(shown(batch.name)), Words::tr("Save changes"),
                 parent),
      m_formData(formData), m_batch(batch), m_tabs(new QTabWidget(this)),
      m_fields(new BatchFields(BatchFields::For::anyBatch, this)), m_editor(new PlanEditor(this)),
      m_fromNowOn(new QRadioButton(Words::tr("from a time on; &targets before stay"), this)),
      m_forThePast(new QRadioButton(Words::tr("it was planned &wrong: for the past too"), this)),
      m_from(new InstantField(Words::tr("The change of plan holds from"), this)),
      m_why(makeLine(Words::tr("Why the plan changed"))),
      m_uses(new EditTable(Words::tr("use of sensor and vessel"),
                           useColumns(beerSensors(formData, batch), formData.format), 1, this)),
      m_split(new QPushButton(Words::tr("&Split into a second vessel…"), this)),
      m_remove(new QPushButton(Words::tr("&Remove this batch"), this))
{
    m_tabs->addTab(makeDetails(), Words::tr("Details"));
    m_tabs->addTab(makePlan(), Words::tr("Plan"));
    m_tabs->addTab(makeUses(), Words::tr("Sensors and vessels"));
    m_tabs->addTab(makeDone(), Words::tr("Planned and done"));
    addWide(m_tabs);
    fill();
    connect(m_editor, &PlanEditor::nameWanted, this, &BatchDialog::saveNamedPlan);
    connect(m_split, &QPushButton::clicked, this,
            [this] { Q_EMIT splitWanted(shown(m_batch.name)); });
    connect(m_remove, &QPushButton::clicked, this, &BatchDialog::remove);
    m_fields->name()->setFocus();
    resize(920, height());
    watchFields();
}

QWidget* BatchDialog::makeDetails()
{
    auto* page = new QWidget;
    QVBoxLayout* column = columnIn(page);
    if (m_batch.splitFrom)
        column->addWidget(
            makeLabel(Words::tr("Part of %1, in a second vessel.").arg(shown(*m_batch.splitFrom)),
                      "muted", page));
    column->addWidget(m_fields);
    column->addStretch();
    auto* buttons = new QHBoxLayout;
    buttons->addWidget(m_split);
    buttons->addStretch();
    buttons->addWidget(m_remove);
    column->addLayout(buttons);
    m_split->setAutoDefault(false);
    m_remove->setAutoDefault(false);
    return page;
}

QWidget* BatchDialog::makePlan()
{
    auto* page = new QWidget;
    QVBoxLayout* column = columnIn(page);
    column->addWidget(m_editor);
    auto* when = new QHBoxLayout;
    when->addWidget(new QLabel(Words::tr("A change holds"), page));
    when->addWidget(m_fromNowOn);
    when->addWidget(m_from);
    when->addWidget(m_forThePast);
    when->addStretch();
    column->addLayout(when);
    m_why->setPlaceholderText(Words::tr("why it changed"));
    column->addWidget(m_why);
    column->addStretch();
    connect(m_fromNowOn, &QRadioButton::toggled, this, [this](bool on) {
        m_from->setEnabled(on);
        m_why->setEnabled(on);
    });
    return page;
}

QWidget* BatchDialog::makeUses()
{
    auto* page = new QWidget;
    QVBoxLayout* column = columnIn(page);
    column->addWidget(makeLabel(Words::tr("From pitching on the beer is read by the sensor in "
                                          "the details. Where a probe was replaced or the "
                                          "beer moved, say from when on."),
                                "muted", page));
    m_uses->hideMoves();
    column->addWidget(m_uses);
    column->addStretch();
    return page;
}

QWidget* BatchDialog::makeDone()
{
    auto* page = new QWidget;
    QVBoxLayout* column = columnIn(page);
    auto* beside = new QHBoxLayout;
    auto* planned = new TableCard(Words::tr("First planned"), 0, page);
    planned->setWords(scheduleTable(firstPlanned(m_batch), m_batch, m_formData.format));
    auto* done = new TableCard(Words::tr("Done"), 0, page);
    done->setWords(scheduleTable(stagesInForce(m_batch), m_batch, m_formData.format));
    beside->addWidget(planned, 1, Qt::AlignTop);
    beside->addWidget(done, 1, Qt::AlignTop);
    column->addLayout(beside);
    for (const QString& line : planHistory(m_batch, m_formData.format))
        column->addWidget(makeLabel(line, "muted", page));
    column->addStretch();
    return page;
}

bool BatchDialog::hasStarted() const
{
    return m_batch.pitched < session().now() && !m_batch.ended;
}

void BatchDialog::fill()
{
    const auto now = [this] { return session().now(); };
    m_fields->setFormData(m_formData, now);
    m_fields->setBatch(m_batch);
    m_editor->setFormat(m_formData.format);
    m_editor->setPlan(latestPlan(m_batch));
    m_editor->setPitched(m_batch.pitched);
    m_from->setZone(m_formData.format.zone);
    m_from->setClock(now);
    m_from->setInstant(now());
    m_forThePast->setChecked(!hasStarted());
    m_fromNowOn->setChecked(hasStarted());
    m_fromNowOn->setEnabled(hasStarted());
    m_from->setEnabled(hasStarted());
    m_why->setEnabled(hasStarted());
    m_uses->model()->setRows(useRows(m_batch.beerUses, m_formData.format));
}

void BatchDialog::saveNamedPlan()
{
    const auto typed = m_editor->plan();
    if (!typed)
        return foot()->refuse(sentence(typed.error()));
    NamedPlan plan;
    plan.schedule = typed->schedule;
    plan.tolerance = typed->tolerance;
    (new PlanDialog(session(), m_formData, plan, this))->open();
}

Result<Batch> BatchDialog::withTypedPlan(Batch batch)
{
    const PlanValue before = latestPlan(m_batch);
    const auto plan = m_editor->plan();
    if (!plan) {
        m_tabs->setCurrentIndex(planTab);
        return failure(plan.error());
    }
    if (*plan == before)
        return batch;
    if (!m_fromNowOn->isChecked())
        return withPlanInstead(std::move(batch), *plan);
    const auto from = m_from->instant();
    if (!from || !*from) {
        m_tabs->setCurrentIndex(planTab);
        m_from->setFocus();
        return from ? dataProblem(Phrase::tr("the time from which the plan holds is missing"))
                    : failure(from.error());
    }
    return withPlanFrom(std::move(batch), *plan, **from, core(m_why->text().trimmed()));
}

Result<Batch> BatchDialog::typedBatch()
{
    auto batch = m_fields->read(m_batch);
    if (!batch) {
        m_tabs->setCurrentIndex(detailsTab);
        return batch;
    }
    auto planned = withTypedPlan(std::move(*batch));
    if (!planned)
        return planned;
    auto uses = usesOf(m_uses->model()->rows(), m_batch.beerUses, *planned, m_formData.format);
    if (!uses) {
        m_tabs->setCurrentIndex(usesTab);
        m_uses->check();
        return failure(uses.error());
    }
    planned->beerUses = std::move(*uses);
    return planned;
}

void BatchDialog::save()
{
    m_removeAsked = false;
    const auto batch = typedBatch();
    if (!batch)
        return foot()->refuse(sentence(batch.error()));
    if (!foot()->agreed(batchQuestions(*batch, m_batch.name, m_formData, session().now())))
        return;
    commitChange({store::HistoryVerb::batchChanged, {m_batch.name}},
                 [stored = *batch, name = m_batch.name](const store::Change& change) {
                     return store::updateBatch(change, name, stored);
                 });
}

void BatchDialog::remove()
{
    if (!std::exchange(m_removeAsked, true))
        return foot()->refuse(
            Words::tr("Remove %1? Its readings stay with their sensors. Press again to remove "
                      "it.")
                .arg(shown(m_batch.name)));
    commitChange({store::HistoryVerb::batchRemoved, {m_batch.name}},
                 [name = m_batch.name](const store::Change& change) {
                     return store::removeBatch(change, name);
                 });
}

} // namespace holdband::ui
