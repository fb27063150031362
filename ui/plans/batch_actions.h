// The actions on batches for the menu and the pages: each reads the logbook on the worker, opens
// its dialog, and reports what was saved. One key and Enter: pitch, turn down, end, reopen.
#pragma once

#include "core/problem.h"
#include "ui/plans/batch_form_data.h"
#include "ui/plans/planned_batch.h"

#include <QObject>
#include <QString>
#include <functional>

namespace holdband::ui {

class NewBatchDialog;
class Session;

class BatchActions : public QObject {
    Q_OBJECT
public:
    /// Dialogs belong to `window`.
    BatchActions(Session& session, QWidget* window);

    void newBatch();
    /// A new batch as it was forecast.
    void pitchPlanned(const PlannedBatch& planned);
    void editBatch(const QString& batch);
    void splitBatch(const QString& batch);
    /// Pitches a batch whose pitching is in the future; without a name, or if it has already been
    /// pitched, begins a new batch.
    void pitchNow(const QString& batch = {});
    /// "Turn down now": ends the stage in progress.
    void endStageNow(const QString& batch);
    void endBatchNow(const QString& batch);
    /// Removes the end of a batch.
    void reopen(const QString& batch);

Q_SIGNALS:
    /// A change was saved, such as "Pale 2: Primary ended".
    void saved(const QString& what);
    void failed(const QString& sentence);
    /// A new batch was saved.
    void pitched(const QString& batch);

private:
    void withFormData(std::function<void(const BatchFormData&)> act);
    void withBatch(const QString& name,
                   std::function<void(const BatchFormData&, const Batch&)> act);
    NewBatchDialog* openNew(const BatchFormData& formData, const std::string& splitFrom);

    Session* m_session;
    QWidget* m_window;
};

} // namespace holdband::ui
