// Units, zone and currency of the logbook: they belong to the record, so that everybody who opens
// it sees the same figures.
#pragma once

#include "ui/forms/form_dialog.h"

#include "core/model/equipment.h"

class QComboBox;

namespace holdband::ui {

class UnitsDialog : public FormDialog {
    Q_OBJECT
public:
    UnitsDialog(Session& session, const LogbookSettings& settings, QWidget* parent = nullptr);

    QComboBox* units() const { return m_units; }
    QComboBox* zone() const { return m_zone; }
    QLineEdit* currency() const { return m_currency; }

protected:
    void save() override;

private:
    QComboBox* m_units;
    QComboBox* m_zone;
    QLineEdit* m_currency;
};

/// Reads the settings and opens the dialog.
void openUnits(Session& session, QWidget* parent);

} // namespace holdband::ui
