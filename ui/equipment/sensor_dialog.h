// Edits a sensor: what it measures, where its probe is, its accuracy, and its offsets.
#pragma once

#include "core/editing/ice_point.h"
#include "ui/equipment/equipment_dialog.h"
#include "ui/forms/unit_format.h"

class QCheckBox;
class QComboBox;
class QLineEdit;

namespace holdband::ui {

class EditTable;
class IcePanel;
class QuantityField;

class SensorDialog : public EquipmentDialog {
    Q_OBJECT
public:
    /// `sensor` without a name: a new one.
    SensorDialog(Session& session, const Equipment& equipment, const Sensor& sensor,
                 QWidget* parent = nullptr);

    QLineEdit* name() const { return m_name; }
    QComboBox* reads() const { return m_reads; }
    QComboBox* setup() const { return m_setup; }
    QuantityField* accuracy() const { return m_accuracy; }
    QComboBox* placement() const { return m_placement; }
    QCheckBox* byHand() const { return m_byHand; }
    EditTable* offsets() const { return m_offsets; }
    IcePanel* ice() const { return m_ice; }

protected:
    void save() override;

private:
    void addFields();
    void fill();
    /// Enables "read by eye" for temperatures only: the rounds have no other sensors.
    void offerWhatFitsKind();
    SensorKind chosenKind() const;
    void offerEarlierReadings();
    void takeIcePoint(const results::IcePoint& point);
    Result<Sensor> typedSensor();

    UnitFormat m_format;
    Equipment m_equipment;
    Sensor m_sensor;
    QLineEdit* m_name;
    QComboBox* m_reads;
    QComboBox* m_intervalTime;
    QComboBox* m_setup;
    QComboBox* m_placement;
    QuantityField* m_accuracy;
    QCheckBox* m_byHand;
    EditTable* m_offsets;
    IcePanel* m_ice;
};

} // namespace holdband::ui
