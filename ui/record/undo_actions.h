// Undo and redo in the menu: their texts name what they would do now; the work runs on a worker.
#pragma once

#include <QObject>

class QAction;
class QMenu;

namespace holdband::ui {

class Session;

class UndoActions : public QObject {
    Q_OBJECT
public:
    UndoActions(Session& session, QObject* parent = nullptr);

    void addTo(QMenu* menu);
    QAction* undo() const { return m_undo; }
    QAction* redo() const { return m_redo; }

    /// Asks the logbook what can be undone.
    void refresh();

Q_SIGNALS:
    /// "Undid: saved a round of 2 readings", or why not.
    void said(const QString& sentence);

private:
    enum class Which { undo, redo };
    void run(Which which);

    Session* m_session;
    QAction* m_undo;
    QAction* m_redo;
};

} // namespace holdband::ui
