#include "ui/equipment/equipment_actions.h"

#include "core/store/history/history_text.h"
#include "core/store/records/batches.h"
#include "core/store/records/equipment.h"
#include "ui/equipment/meter_dialog.h"
#include "ui/equipment/prices_dialog.h"
#include "ui/equipment/round_windows_dialog.h"
#include "ui/equipment/sensor_dialog.h"
#include "ui/equipment/setup_dialog.h"
#include "ui/forms/save_change.h"
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
    connect(dialog, &FormDialog::saved, this, &EquipmentActions::saved);
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
    const UnitFormat format = unitFormatOf(m_equipment.settings, m_equipment.zone);
    open(new SetupDialog(*m_session, format, setup, m_window));
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
    BatchFormData formData;
    formData.settings = m_equipment.settings;
    formData.format = unitFormatOf(m_equipment.settings, m_equipment.zone);
    formData.plans = m_equipment.plans;
    open(new PlanDialog(*m_session, formData, plan, m_window));
}

void EquipmentActions::editPrices()
{
    open(new PricesDialog(*m_session, m_equipment, m_window));
}

void EquipmentActions::editRounds()
{
    open(new RoundWindowsDialog(*m_session, m_equipment.settings, m_window));
}

void EquipmentActions::commitChange(const store::HistoryEntry& entry,
                                    std::function<Done(const store::Change&)> work)
{
    saveChange(*m_session, this, entry, std::move(work), [this, entry](const Done& done) {
        if (done)
            Q_EMIT saved(shown(store::historyText(entry)));
        else
            Q_EMIT failed(sentence(done.error()));
    });
}

bool EquipmentActions::toggle(std::optional<Instant>& retired) const
{
    retired = retired ? std::nullopt : std::optional(m_session->now());
    return retired.has_value();
}

void EquipmentActions::toggleRetired(Setup setup)
{
    const bool retired = toggle(setup.retired);
    commitChange({retired ? store::HistoryVerb::setupRetired : store::HistoryVerb::setupRestored,
                  {setup.name}},
                 [setup](const store::Change& change) {
                     return store::updateSetup(change, setup.name, setup);
                 });
}

void EquipmentActions::toggleRetired(Sensor sensor)
{
    const bool retired = toggle(sensor.retired);
    commitChange({retired ? store::HistoryVerb::sensorRetired : store::HistoryVerb::sensorRestored,
                  {sensor.name}},
                 [sensor](const store::Change& change) {
                     return store::updateSensor(change, sensor.name, sensor);
                 });
}

void EquipmentActions::toggleRetired(Meter meter)
{
    const bool retired = toggle(meter.retired);
    commitChange({retired ? store::HistoryVerb::meterRetired : store::HistoryVerb::meterRestored,
                  {meter.name}},
                 [meter](const store::Change& change) {
                     return store::updateMeter(change, meter.name, meter);
                 });
}

void EquipmentActions::remove(const Setup& setup)
{
    commitChange({store::HistoryVerb::setupRemoved, {setup.name}},
                 [name = setup.name](const store::Change& change) {
                     return store::removeSetup(change, name);
                 });
}

void EquipmentActions::remove(const Sensor& sensor)
{
    commitChange({store::HistoryVerb::sensorRemoved, {sensor.name}},
                 [name = sensor.name](const store::Change& change) {
                     return store::removeSensor(change, name);
                 });
}

void EquipmentActions::remove(const Meter& meter)
{
    commitChange({store::HistoryVerb::meterRemoved, {meter.name}},
                 [name = meter.name](const store::Change& change) {
                     return store::removeMeter(change, name);
                 });
}

void EquipmentActions::remove(const NamedPlan& plan)
{
    commitChange({store::HistoryVerb::planRemoved, {plan.name}},
                 [name = plan.name](const store::Change& change) {
                     return store::removePlan(change, name);
                 });
}

} // namespace holdband::ui
