// A plan drawn for a forecast only; nothing is saved.
#pragma once

#include "ui/forms/unit_format.h"
#include "ui/plans/plan_rows.h"

#include <QDialog>

class QPushButton;

namespace holdband::ui {

class PlanEditor;

class DrawnPlanDialog : public QDialog {
    Q_OBJECT
public:
    DrawnPlanDialog(const PlanValue& plan, const UnitFormat& format, QWidget* parent);

    PlanEditor* editor() const { return m_editor; }
    QPushButton* useButton() const { return m_use; }

Q_SIGNALS:
    void drawn(const holdband::ui::PlanValue& plan);

private:
    void take();

    PlanEditor* m_editor;
    QPushButton* m_use;
};

} // namespace holdband::ui
