#include "ui/plans/step_dialog.h"

#include "core/store/records/batches.h"
#include "core/text/phrase.h"
#include "ui/forms/instant_field.h"
#include "ui/forms/save_row.h"
#include "ui/session/session.h"
#include "ui/theme/theme.h"
#include "ui/words/words.h"

#include <QFormLayout>
#include <QLabel>
#include <QPushButton>

namespace holdband::ui {

StepDialog::StepDialog(Session& session, const QString& title, const QString& saveText,
                       const UnitFormat& format, std::string oldName, Steps steps, QWidget* parent)
    : FormDialog(session, title, saveText, parent), m_oldName(std::move(oldName)),
      m_steps(std::move(steps)), m_words(makeLabel({}, "", this)),
      m_at(new InstantField(Words::tr("Time"), this))
{
    m_words->setAccessibleName(Words::tr("What will be written"));
    addWide(m_words);
    addRow(Words::tr("&Time"), m_at);
    m_at->setZone(format.zone);
    m_at->setClock([this] { return this->session().now(); });
    m_at->setInstant(session.now());
    connect(m_at, &InstantField::edited, this, &StepDialog::say);
    say();
    watchFields();
    foot()->saveButton()->setFocus();
}

Result<Step> StepDialog::typedStep()
{
    const auto at = m_at->instant();
    if (!at || !*at)
        return at ? dataProblem(Phrase::tr("the time is missing")) : failure(at.error());
    return m_steps(**at);
}

void StepDialog::say()
{
    const auto step = typedStep();
    // The field already shows below it that the text is no time.
    const bool said = !m_at->problem().isEmpty();
    m_words->setText(step ? step->words : said ? QString() : sentence(step.error()));
    setRole(m_words, step ? "plain" : "warn");
}

void StepDialog::hideTime()
{
    form()->setRowVisible(m_at, false);
}

void StepDialog::setQuestions(std::function<QStringList(const Batch&)> questions)
{
    m_questions = std::move(questions);
}

QString StepDialog::words() const
{
    return m_words->text();
}

void StepDialog::save()
{
    const auto step = typedStep();
    if (!step) {
        say();
        m_at->setFocus();
        return;
    }
    if (m_questions && !foot()->agreed(m_questions(step->batch)))
        return;
    commitChange(step->entry, [batch = step->batch, name = m_oldName](const store::Change& change) {
        return store::updateBatch(change, name, batch);
    });
}

} // namespace holdband::ui
