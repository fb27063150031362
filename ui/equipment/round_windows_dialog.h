// When the meters are to be read: one to six times of day.
#pragma once

#include "core/model/equipment.h"
#include "ui/forms/form_dialog.h"

class QSpinBox;

namespace holdband::ui {

class EditTable;

class RoundWindowsDialog : public FormDialog {
    Q_OBJECT
public:
    RoundWindowsDialog(Session& session, const LogbookSettings& settings,
                       QWidget* parent = nullptr);

    EditTable* rounds() const { return m_rounds; }
    /// How far a typed time may be off, in minutes.
    QSpinBox* timeDoubt() const { return m_timeDoubt; }

protected:
    void save() override;

private:
    void limitRows();

    EditTable* m_rounds;
    QSpinBox* m_timeDoubt;
};

} // namespace holdband::ui
