// The actions on equipment: its dialogs, retiring and bringing back, removing. The store refuses to
// remove anything in use.
#pragma once

#include "core/store/logbook_file.h"
#include "ui/equipment/equipment_tables.h"
#include "ui/forms/unit_format.h"

#include <QObject>

namespace holdband::ui {

class FormDialog;
class Session;

class EquipmentActions : public QObject {
    Q_OBJECT
public:
    /// Dialogs belong to `window`.
    EquipmentActions(Session& session, QWidget* window);

    /// The equipment that the dialogs show and offer.
    void setEquipment(const Equipment& equipment);

    void addSetup();
    void addSensor();
    void addMeter();
    void addPlan();
    void editSetup(const Setup& setup);
    void editSensor(const Sensor& sensor);
    void editMeter(const Meter& meter);
    void editPlan(const NamedPlan& plan);
    void editPrices();
    void editRounds();

    void toggleRetired(Setup setup);
    void toggleRetired(Sensor sensor);
    void toggleRetired(Meter meter);
    void remove(const Setup& setup);
    void remove(const Sensor& sensor);
    void remove(const Meter& meter);
    void remove(const NamedPlan& plan);

Q_SIGNALS:
    void saved(const QString& what);
    void failed(const QString& sentence);

private:
    void open(FormDialog* dialog);
    void commitChange(const store::HistoryEntry& entry,
                      std::function<Done(const store::Change&)> work);
    /// Retires something in use as of now, or brings it back. True: it is retired now.
    bool toggle(std::optional<Instant>& retired) const;

    Session* m_session;
    QWidget* m_window;
    Equipment m_equipment;
};

} // namespace holdband::ui
