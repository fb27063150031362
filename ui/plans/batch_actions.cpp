#include "ui/plans/batch_actions.h"

#include "core/text/times.h"
#include "ui/plans/batch_dialog.h"
#include "ui/plans/batch_steps.h"
#include "ui/plans/new_batch_dialog.h"
#include "ui/plans/step_dialog.h"
#include "ui/session/session.h"
#include "ui/words/words.h"

namespace holdband::ui {

BatchActions::BatchActions(Session& session, QWidget* window)
    : QObject(window), m_session(&session), m_window(window)
{
}

void BatchActions::withFormData(std::function<void(const BatchFormData&)> act)
{
    if (m_session->readOnly())
        return Q_EMIT failed(
            Words::tr("The logbook is open for reading only: nothing can be saved."));
    m_session->ask<BatchFormData>(this, readFormData,
                                  [this, act = std::move(act)](Result<BatchFormData> formData) {
                                      if (formData)
                                          act(*formData);
                                      else
                                          Q_EMIT failed(sentence(formData.error()));
                                  });
}

void BatchActions::withBatch(const QString& name,
                             std::function<void(const BatchFormData&, const Batch&)> act)
{
    withFormData([this, name, act = std::move(act)](const BatchFormData& formData) {
        const Batch* batch = formData.batch(core(name));
        if (batch)
            act(formData, *batch);
        else
            Q_EMIT failed(Words::tr("No batch is open: choose one in the lanes first."));
    });
}

NewBatchDialog* BatchActions::openNew(const BatchFormData& formData, const std::string& splitFrom)
{
    auto* dialog = new NewBatchDialog(*m_session, formData, splitFrom, m_window);
    connect(dialog, &FormDialog::saved, this, &BatchActions::saved);
    connect(dialog, &FormDialog::saved, this,
            [this, dialog] { Q_EMIT pitched(dialog->savedName()); });
    dialog->open();
    return dialog;
}

void BatchActions::pitchPlanned(const PlannedBatch& planned)
{
    withFormData([this, planned](const BatchFormData& formData) {
        openNew(formData, {})->startFrom(planned);
    });
}

void BatchActions::newBatch()
{
    withFormData([this](const BatchFormData& formData) { openNew(formData, {}); });
}

void BatchActions::splitBatch(const QString& batch)
{
    withBatch(batch, [this](const BatchFormData& formData, const Batch& from) {
        openNew(formData, from.name);
    });
}

void BatchActions::editBatch(const QString& name)
{
    withBatch(name, [this](const BatchFormData& formData, const Batch& batch) {
        auto* dialog = new BatchDialog(*m_session, formData, batch, m_window);
        connect(dialog, &FormDialog::saved, this, &BatchActions::saved);
        connect(dialog, &BatchDialog::splitWanted, this, [this, dialog](const QString& from) {
            dialog->reject();
            if (!dialog->isVisible())
                splitBatch(from);
        });
        dialog->open();
    });
}

namespace {

using StepOf = Result<Step> (*)(const Batch&, Instant, Instant, const UnitFormat&);

StepDialog* makeStep(Session& session, const BatchFormData& formData, const Batch& batch,
                     StepOf stepOf, const QString& title, const QString& words, QWidget* window)
{
    return new StepDialog(
        session, QStringLiteral("%1: %2").arg(shown(batch.name), title), words, formData.format,
        batch.name,
        [&session, batch, stepOf, format = formData.format](Instant at) {
            return stepOf(batch, at, session.now(), format);
        },
        window);
}

} // namespace

void BatchActions::pitchNow(const QString& name)
{
    withFormData([this, name](const BatchFormData& formData) {
        const Batch* batch = formData.batch(core(name));
        if (!batch || batch->pitched <= m_session->now())
            return static_cast<void>(openNew(formData, {}));
        auto* dialog = makeStep(*m_session, formData, *batch, pitchStep, Words::tr("Pitch now"),
                                Words::tr("Pitch"), m_window);
        connect(dialog, &FormDialog::saved, this, &BatchActions::saved);
        dialog->open();
    });
}

void BatchActions::endStageNow(const QString& name)
{
    withBatch(name, [this](const BatchFormData& formData, const Batch& batch) {
        auto* dialog = makeStep(*m_session, formData, batch, stageEndStep,
                                Words::tr("Turn down now"), Words::tr("Turn down"), m_window);
        connect(dialog, &FormDialog::saved, this, &BatchActions::saved);
        dialog->open();
    });
}

void BatchActions::endBatchNow(const QString& name)
{
    withBatch(name, [this](const BatchFormData& formData, const Batch& batch) {
        if (batch.ended)
            return Q_EMIT failed(
                Words::tr("%1 ended %2. Edit the batch to change that, or reopen it.")
                    .arg(shown(batch.name), shown(localText(*batch.ended, formData.format.zone))));
        auto* dialog =
            makeStep(*m_session, formData, batch, batchEndStep, Words::tr("End the batch now"),
                     Words::tr("End the batch"), m_window);
        connect(dialog, &FormDialog::saved, this, &BatchActions::saved);
        dialog->open();
    });
}

void BatchActions::reopen(const QString& name)
{
    withBatch(name, [this](const BatchFormData& formData, const Batch& batch) {
        if (!batch.ended)
            return Q_EMIT failed(Words::tr("%1 has not ended: it runs.").arg(shown(batch.name)));
        auto* dialog = new StepDialog(
            *m_session, Words::tr("%1: reopen").arg(shown(batch.name)), Words::tr("Reopen"),
            formData.format, batch.name,
            [batch, format = formData.format](Instant) { return reopenStep(batch, format); },
            m_window);
        dialog->hideTime();
        dialog->setQuestions(
            [formData, name = batch.name, now = m_session->now()](const Batch& reopened) {
                return batchQuestions(reopened, name, formData, now);
            });
        connect(dialog, &FormDialog::saved, this, &BatchActions::saved);
        dialog->open();
    });
}

} // namespace holdband::ui
