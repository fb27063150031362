// Handles keys that the window's parts would otherwise treat differently. Enter presses the button
// that has the focus, as Space does. A focused line edit claims many menu shortcuts for its own
// editing (Ctrl+E, Ctrl+K, Ctrl+Z even with nothing to undo); here the menu takes precedence,
// except for copying, pasting, selecting all, and undoing while text is being typed.
#pragma once

#include <QObject>

namespace holdband::ui {

class WindowKeys : public QObject {
    Q_OBJECT
public:
    /// Watches the entire application while it lives.
    explicit WindowKeys(QObject* parent);

    bool eventFilter(QObject* watched, QEvent* event) override;
};

} // namespace holdband::ui
