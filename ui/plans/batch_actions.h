// What the menu and the pages can ask about batches: each reads the logbook on the worker, opens
// its dialog, and says what was kept. One key and Enter: pitch, turn down, end, reopen.
#pragma once

#include "core/problem.h"
#include "ui/plans/batch_form_data.h"

#include <QObject>
#include <QString>
#include <functional>

namespace holdband::ui {

class Session;

class BatchActions : public QObject {
    Q_OBJECT
public:
    /// Dialogs belong to `window`.
    BatchActions(Session& session, QWidget* window);

    void newBatch();
    void editBatch(const QString& batch);
    void splitBatch(const QString& batch);
    /// Pitches a batch whose pitching lies ahead; without a name, or where it has been pitched
    /// already, begins a new batch.
    void pitchNow(const QString& batch = {});
    /// "Turn down now": ends the stage in progress.
    void endStageNow(const QString& batch);
    void endBatchNow(const QString& batch);
    /// Takes the end of a batch back.
    void reopen(const QString& batch);

Q_SIGNALS:
    /// "Pale 2: Primary ended"
    void kept(const QString& what);
    void failed(const QString& sentence);
    /// A new batch was saved.
    void pitched(const QString& batch);

private:
    void withWorld(std::function<void(const BatchFormData&)> act);
    void withBatch(const QString& name,
                   std::function<void(const BatchFormData&, const Batch&)> act);
    void openNew(const BatchFormData& world, const std::string& splitFrom);

    Session* m_session;
    QWidget* m_window;
};

} // namespace holdband::ui
