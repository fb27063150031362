#include "ui/window/window_keys.h"

#include <QApplication>
#include <QKeyEvent>
#include <QLineEdit>
#include <QMainWindow>
#include <QPushButton>

namespace holdband::ui {

namespace {

bool isEditing(const QKeyEvent& key)
{
    for (const auto standard :
         {QKeySequence::Copy, QKeySequence::Cut, QKeySequence::Paste, QKeySequence::SelectAll}) {
        if (key.matches(standard))
            return true;
    }
    return false;
}

bool isLinesOwn(const QKeyEvent& key, const QLineEdit& line)
{
    if (key.matches(QKeySequence::Undo))
        return line.isUndoAvailable();
    if (key.matches(QKeySequence::Redo))
        return line.isRedoAvailable();
    const bool letter = key.key() >= Qt::Key_A && key.key() <= Qt::Key_Z;
    return !letter || key.modifiers() != Qt::ControlModifier || isEditing(key);
}

/// Dialogs do so by themselves.
bool pressesButton(QObject* watched, const QKeyEvent& key)
{
    auto* button = qobject_cast<QPushButton*>(watched);
    const bool enter = key.key() == Qt::Key_Return || key.key() == Qt::Key_Enter;
    const bool bare = (key.modifiers() & ~Qt::KeypadModifier) == Qt::NoModifier;
    if (!button || !enter || !bare || !qobject_cast<QMainWindow*>(button->window()))
        return false;
    button->click();
    return true;
}

} // namespace

WindowKeys::WindowKeys(QObject* parent) : QObject(parent)
{
    qApp->installEventFilter(this);
}

bool WindowKeys::eventFilter(QObject* watched, QEvent* event)
{
    if (event->type() == QEvent::KeyPress)
        return pressesButton(watched, *static_cast<const QKeyEvent*>(event));
    if (event->type() != QEvent::ShortcutOverride)
        return false;
    const auto* line = qobject_cast<const QLineEdit*>(watched);
    if (!line || isLinesOwn(*static_cast<const QKeyEvent*>(event), *line))
        return false;
    event->ignore();
    return true;
}

} // namespace holdband::ui
