#include "ui/equipment/equipment_actions.h"

#include "core/store/history/act_words.h"
#include "core/store/records/batches.h"
#include "core/store/records/equipment.h"
#include "ui/equipment/meter_dialog.h"
#include "ui/equipment/prices_dialog.h"
#include "ui/equipment/round_windows_dialog.h"
#include "ui/equipment/sensor_dialog.h"
#include "ui/equipment/setup_dialog.h"
#include "ui/forms/keep_change.h"
#include "ui/plans/plan_dialog.h"
#include "ui/session/session.h"
#include "ui/words/words.h"

namespace holdband::ui {

EquipmentActions::EquipmentActions(Session& session, QWidget* window)
    : QObject(window), m_session(&session), m_window(window)
{
}

void EquipmentActions::setEquipment(const Equipment& equipment)
{
    m_equipment = equipment;
}

void EquipmentActions::open(FormDialog* dialog)
{
    connect(dialog, &FormDialog::kept, this, &EquipmentActions::kept);
    dialog->open();
}

void EquipmentActions::addSetup()
{
    editSetup({});
}

void EquipmentActions::addSensor()
{
    Sensor sensor;
    if (!m_equipment.setups.empty())
        sensor.setup = m_equipment.setups.front().name;
    editSensor(sensor);
}

void EquipmentActions::addMeter()
{
    Meter meter;
    if (!m_equipment.setups.empty())
        meter.setup = m_equipment.setups.front().name;
    editMeter(meter);
}

void EquipmentActions::addPlan()
{
    editPlan({});
}

void EquipmentActions::editSetup(const Setup& setup)
{
    const Manner manner = mannerOf(m_equipment.settings, m_equipment.zone);
    open(new SetupDialog(*m_session, manner, setup, m_window));
}

void EquipmentActions::editSensor(const Sensor& sensor)
{
    open(new SensorDialog(*m_session, m_equipment, sensor, m_window));
}

void EquipmentActions::editMeter(const Meter& meter)
{
    open(new MeterDialog(*m_session, m_equipment, meter, m_window));
}

void EquipmentActions::editPlan(const NamedPlan& plan)
{
    BatchWorld world;
    world.settings = m_equipment.settings;
    world.manner = mannerOf(m_equipment.settings, m_equipment.zone);
    world.plans = m_equipment.plans;
    open(new PlanDialog(*m_session, world, plan, m_window));
}

void EquipmentActions::editPrices()
{
    open(new PricesDialog(*m_session, m_equipment, m_window));
}

void EquipmentActions::editRounds()
{
    open(new RoundWindowsDialog(*m_session, m_equipment.settings, m_window));
}

void EquipmentActions::keep(const QString& what, std::function<Done(const store::Change&)> work)
{
    keepChange(*m_session, this, core(what), std::move(work), [this, what](const Done& done) {
        if (done)
            Q_EMIT kept(shown(store::actForPeople(core(what))));
        else
            Q_EMIT failed(sentence(done.error()));
    });
}

QString EquipmentActions::toggled(std::optional<Instant>& retired) const
{
    const bool back = retired.has_value();
    retired = back ? std::nullopt : std::optional(m_session->now());
    return back ? QStringLiteral("brought back") : QStringLiteral("retired");
}

void EquipmentActions::toggleRetired(Setup setup)
{
    const QString done = toggled(setup.retired);
    keep(QStringLiteral("setup %1 %2").arg(shown(setup.name), done),
         [setup](const store::Change& change) {
             return store::updateSetup(change, setup.name, setup);
         });
}

void EquipmentActions::toggleRetired(Sensor sensor)
{
    const QString done = toggled(sensor.retired);
    keep(QStringLiteral("sensor %1 %2").arg(shown(sensor.name), done),
         [sensor](const store::Change& change) {
             return store::updateSensor(change, sensor.name, sensor);
         });
}

void EquipmentActions::toggleRetired(Meter meter)
{
    const QString done = toggled(meter.retired);
    keep(QStringLiteral("meter %1 %2").arg(shown(meter.name), done),
         [meter](const store::Change& change) {
             return store::updateMeter(change, meter.name, meter);
         });
}

void EquipmentActions::remove(const Setup& setup)
{
    keep(QStringLiteral("setup %1 removed").arg(shown(setup.name)),
         [name = setup.name](const store::Change& change) {
             return store::removeSetup(change, name);
         });
}

void EquipmentActions::remove(const Sensor& sensor)
{
    keep(QStringLiteral("sensor %1 removed").arg(shown(sensor.name)),
         [name = sensor.name](const store::Change& change) {
             return store::removeSensor(change, name);
         });
}

void EquipmentActions::remove(const Meter& meter)
{
    keep(QStringLiteral("meter %1 removed").arg(shown(meter.name)),
         [name = meter.name](const store::Change& change) {
             return store::removeMeter(change, name);
         });
}

void EquipmentActions::remove(const NamedPlan& plan)
{
    keep(QStringLiteral("plan %1 removed").arg(shown(plan.name)),
         [name = plan.name](const store::Change& change) {
             return store::removePlan(change, name);
         });
}

} // namespace holdband::ui
