// Edits an energy meter: its resolution and accuracy, and which setup it counts for when.
#pragma once

#include "ui/equipment/equipment_dialog.h"
#include "ui/forms/unit_format.h"

class QComboBox;
class QLabel;
class QLineEdit;

namespace holdband::ui {

class EditTable;
class InstantField;
class QuantityField;

class MeterDialog : public EquipmentDialog {
    Q_OBJECT
public:
    /// `meter` without a name: a new one.
    MeterDialog(Session& session, const Equipment& equipment, const Meter& meter,
                QWidget* parent = nullptr);

    QLineEdit* name() const { return m_name; }
    QComboBox* setup() const { return m_setup; }
    QuantityField* resolution() const { return m_resolution; }
    QuantityField* top() const { return m_top; }
    QuantityField* accuracy() const { return m_accuracy; }
    EditTable* moves() const { return m_moves; }

protected:
    void save() override;

private:
    void addFields();
    void fill();
    Result<Meter> typedMeter();
    Done readQuantities(Meter& into);
    Done readTimes(Meter& into);
    std::optional<Energy> topMeant() const;
    double lastDigit() const;
    void showTop();

    UnitFormat m_format;
    Equipment m_equipment;
    Meter m_meter;
    QLineEdit* m_name;
    QComboBox* m_setup;
    QuantityField* m_resolution;
    QuantityField* m_top;
    QLabel* m_topText; ///< explains the register's highest value
    QuantityField* m_accuracy;
    InstantField* m_from;
    InstantField* m_to;
    EditTable* m_moves;
};

} // namespace holdband::ui
