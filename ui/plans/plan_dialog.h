// A named plan: its name, a note, its stages. Also saves a batch's plan under a name.
#pragma once

#include "ui/forms/form_dialog.h"
#include "ui/plans/batch_form_data.h"

namespace holdband::ui {

class PlanEditor;

class PlanDialog : public FormDialog {
    Q_OBJECT
public:
    /// Shows `plan`; if one of its name is already stored, saving changes that one.
    PlanDialog(Session& session, const BatchFormData& formData, const NamedPlan& plan,
               QWidget* parent = nullptr);

    QLineEdit* name() const { return m_name; }
    PlanEditor* editor() const { return m_editor; }

protected:
    void save() override;

private:
    bool isTaken(const std::string& name) const;

    BatchFormData m_formData;
    std::string m_oldName; ///< empty: a new one
    QLineEdit* m_name;
    QLineEdit* m_note;
    PlanEditor* m_editor;
};

} // namespace holdband::ui
