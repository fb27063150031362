#include "ui/window/window_keys.h"

#include "ui/tables/plain_table.h"
#include "ui/window/help_dialog.h"

#include <QAbstractSpinBox>
#include <QApplication>
#include <QComboBox>
#include <QDialog>
#include <QKeyEvent>
#include <QLineEdit>
#include <QMainWindow>
#include <QPushButton>
#include <QScrollBar>

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

/// Dialogs already do so themselves.
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

/// In the window itself F1 is a menu shortcut.
bool asksHelp(QObject* watched, const QKeyEvent& key)
{
    const auto* widget = qobject_cast<QWidget*>(watched);
    auto* dialog = widget ? qobject_cast<QDialog*>(widget->window()) : nullptr;
    if (!dialog || key.key() != Qt::Key_F1 || qobject_cast<HelpDialog*>(dialog) ||
        qobject_cast<const PlainTable*>(watched))
        return false;
    openHelp(*dialog, helpFor(*dialog));
    return true;
}

/// The wheel scrolls the page; it never changes a value under the pointer.
bool isTurned(const QObject* watched)
{
    return qobject_cast<const QAbstractSlider*>(watched)
               ? !qobject_cast<const QScrollBar*>(watched)
               : qobject_cast<const QAbstractSpinBox*>(watched) ||
                     qobject_cast<const QComboBox*>(watched);
}

/// The line edit in which the user types.
const QLineEdit* lineOf(QObject* watched)
{
    if (const auto* box = qobject_cast<const QAbstractSpinBox*>(watched))
        return box->findChild<const QLineEdit*>();
    return qobject_cast<const QLineEdit*>(watched);
}

} // namespace

WindowKeys::WindowKeys(QObject* parent) : QObject(parent)
{
    qApp->installEventFilter(this);
}

bool WindowKeys::eventFilter(QObject* watched, QEvent* event)
{
    if (event->type() == QEvent::KeyPress)
        return pressesButton(watched, *static_cast<const QKeyEvent*>(event)) ||
               asksHelp(watched, *static_cast<const QKeyEvent*>(event));
    if (event->type() == QEvent::Wheel && isTurned(watched)) {
        event->ignore(); // so that its surroundings scroll
        return true;
    }
    if (event->type() != QEvent::ShortcutOverride)
        return false;
    const QLineEdit* line = lineOf(watched);
    if (!line || isLinesOwn(*static_cast<const QKeyEvent*>(event), *line))
        return false;
    event->ignore();
    return true;
}

} // namespace holdband::ui
