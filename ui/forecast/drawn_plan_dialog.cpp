#include "ui/forecast/drawn_plan_dialog.h"

#include "ui/plans/plan_editor.h"
#include "ui/theme/theme.h"
#include "ui/words/words.h"

#include <QDialogButtonBox>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace holdband::ui {

DrawnPlanDialog::DrawnPlanDialog(const PlanValue& plan, const UnitFormat& format, QWidget* parent)
    : QDialog(parent), m_editor(new PlanEditor(this))
{
    setWindowTitle(Words::tr("Draw a plan"));
    setAttribute(Qt::WA_DeleteOnClose);
    m_editor->nameButton()->hide();
    m_editor->setFormat(format);
    m_editor->setPlan(plan);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel, this);
    m_use = buttons->addButton(Words::tr("Use this plan"), QDialogButtonBox::AcceptRole);
    setRole(m_use, "main");
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(makeLabel(Words::tr("For the forecast only; \"Pitch this\" takes it along."),
                                "muted", this));
    layout->addWidget(m_editor, 1);
    layout->addWidget(buttons);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    connect(buttons, &QDialogButtonBox::accepted, this, &DrawnPlanDialog::take);
    resize(860, sizeHint().height());
}

/// What is wrong stands below the editor's table.
void DrawnPlanDialog::take()
{
    const auto plan = m_editor->plan();
    if (!plan)
        return;
    Q_EMIT drawn(*plan);
    accept();
}

} // namespace holdband::ui
