#include "ui/record/undo_actions.h"

#include "core/store/history/history_text.h"
#include "core/store/history/undo.h"
#include "ui/session/session.h"
#include "ui/words/words.h"

#include <QAction>
#include <QMenu>

namespace holdband::ui {

namespace {

void describe(QAction& action, const QString& verb, bool writable,
              const std::optional<store::UndoStep>& step)
{
    const bool possible = writable && step;
    action.setEnabled(possible);
    if (!possible)
        return action.setText(verb);
    // An "&" in the text would take a mnemonic key.
    const QString words = shown(store::historyText(step->entry));
    action.setText(verb + QStringLiteral(": ") +
                   QString(words).replace(QLatin1Char('&'), QStringLiteral("&&")));
}

} // namespace

UndoActions::UndoActions(Session& session, QObject* parent)
    : QObject(parent), m_session(&session), m_undo(new QAction(this)), m_redo(new QAction(this))
{
    m_undo->setShortcuts(QKeySequence::Undo);
    m_redo->setShortcuts(
        {QKeySequence(QStringLiteral("Ctrl+Shift+Z")), QKeySequence(QStringLiteral("Ctrl+Y"))});
    describe(*m_undo, Words::tr("&Undo"), false, {});
    describe(*m_redo, Words::tr("&Redo"), false, {});
    connect(m_undo, &QAction::triggered, this, [this] { run(Which::undo); });
    connect(m_redo, &QAction::triggered, this, [this] { run(Which::redo); });
    connect(&session, &Session::opened, this, &UndoActions::refresh);
    connect(&session, &Session::changed, this, &UndoActions::refresh);
}

void UndoActions::addTo(QMenu* menu)
{
    menu->addAction(m_undo);
    menu->addAction(m_redo);
}

void UndoActions::refresh()
{
    m_session->ask<store::UndoState>(
        this, store::readUndoState, [this](Result<store::UndoState> state) {
            const store::UndoState now = state.value_or(store::UndoState{});
            const bool writable = !m_session->readOnly();
            describe(*m_undo, Words::tr("&Undo"), writable, now.undo);
            describe(*m_redo, Words::tr("&Redo"), writable, now.redo);
        });
}

void UndoActions::run(Which which)
{
    if (m_session->readOnly())
        return;
    // Disabled until the answer arrives, so that a second press can't undo something the user has
    // not read.
    m_undo->setEnabled(false);
    m_redo->setEnabled(false);
    m_session->change<store::HistoryEntry>(
        this, which == Which::undo ? store::undoLast : store::redoLast,
        [this](Result<store::HistoryEntry> done) {
            if (done)
                Q_EMIT said(capitalised(shown(store::historyText(*done))) + QLatin1Char('.'));
            else
                Q_EMIT said(sentence(done.error()));
            m_session->announceChange();
        });
}

} // namespace holdband::ui
