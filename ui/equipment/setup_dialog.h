// Edits a setup: its kind, its parts with their sum, and ratings for what can't be measured.
#pragma once

#include "ui/equipment/equipment_dialog.h"
#include "ui/forms/unit_format.h"

class QLabel;
class QLineEdit;
class QSpinBox;

namespace holdband::ui {

class EditTable;
class QuantityField;

class SetupDialog : public EquipmentDialog {
    Q_OBJECT
public:
    /// `setup` without a name: a new one.
    SetupDialog(Session& session, const UnitFormat& format, const Setup& setup,
                QWidget* parent = nullptr);

    QLineEdit* name() const { return m_name; }
    QLineEdit* kind() const { return m_kind; }
    QSpinBox* vessels() const { return m_vessels; }
    QuantityField* power() const { return m_power; }
    EditTable* parts() const { return m_parts; }
    EditTable* ratings() const { return m_ratings; }
    QString sumText() const;

protected:
    void save() override;

private:
    void addParts();
    Result<Setup> typedSetup();

    UnitFormat m_format;
    Setup m_setup;
    QLineEdit* m_name;
    QLineEdit* m_kind;
    QSpinBox* m_vessels;
    QuantityField* m_power;
    EditTable* m_parts;
    QLabel* m_sum;
    EditTable* m_ratings;
};

} // namespace holdband::ui
