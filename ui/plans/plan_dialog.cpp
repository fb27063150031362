#include "ui/plans/plan_dialog.h"

#include "core/store/records/batches.h"
#include "core/text/name_suggestions.h"
#include "ui/forms/save_row.h"
#include "ui/plans/plan_editor.h"
#include "ui/words/words.h"

#include <QLineEdit>
#include <QPushButton>

namespace holdband::ui {

PlanDialog::PlanDialog(Session& session, const BatchFormData& formData, const NamedPlan& plan,
                       QWidget* parent)
    : FormDialog(session, Words::tr("Named plan"), Words::tr("Save plan"), parent),
      m_formData(formData), m_name(makeLine(Words::tr("Name"))),
      m_note(makeLine(Words::tr("Note"))), m_editor(new PlanEditor(this))
{
    addRow(Words::tr("&Name"), m_name);
    addRow(Words::tr("No&te"), m_note);
    addWide(m_editor);
    m_editor->nameButton()->hide();
    m_editor->setFormat(formData.format);
    m_editor->setPlan({plan.schedule, plan.tolerance});
    m_name->setText(shown(plan.name));
    m_note->setText(shown(plan.note));
    m_oldName = isTaken(plan.name) ? plan.name : std::string();
    resize(860, height());
    m_name->setFocus();
    watchFields();
}

bool PlanDialog::isTaken(const std::string& name) const
{
    return std::any_of(m_formData.plans.begin(), m_formData.plans.end(),
                       [&](const NamedPlan& plan) { return plan.name == name; });
}

void PlanDialog::save()
{
    NamedPlan plan;
    plan.name = core(m_name->text().trimmed());
    plan.note = core(m_note->text().trimmed());
    if (plan.name.empty())
        return refuse(Words::tr("The plan needs a name."), m_name);
    const auto typed = m_editor->plan();
    if (!typed)
        return foot()->refuse(sentence(typed.error()));
    plan.schedule = typed->schedule;
    plan.tolerance = typed->tolerance;
    QStringList questions = m_editor->questions();
    if (plan.name != m_oldName && isTaken(plan.name))
        questions << Words::tr("There is a plan %1 already. Shall this one take its place?")
                         .arg(shown(plan.name));
    if (!foot()->agreed(questions))
        return;
    const std::string renamed = m_oldName != plan.name ? m_oldName : std::string();
    commitChange({store::HistoryVerb::planSaved, {plan.name}},
                 [plan, renamed](const store::Change& change) -> Done {
                     if (!renamed.empty())
                         HOLDBAND_TRY(store::removePlan(change, renamed));
                     return store::savePlan(change, plan);
                 });
}

} // namespace holdband::ui
