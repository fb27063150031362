// Keys that the window's parts would each take in their own way. Enter presses the button that has
// the focus, as Space does. Where a line has the focus it claims many keys of the menus for its own
// editing (Ctrl+E, Ctrl+K, Ctrl+Z even with nothing to take back); here the menu wins, but for
// copying, pasting, choosing all, and taking back what is being typed.
#pragma once

#include <QObject>

namespace holdband::ui {

class WindowKeys : public QObject {
    Q_OBJECT
public:
    /// Watches the whole application as long as it lives.
    explicit WindowKeys(QObject* parent);

    bool eventFilter(QObject* watched, QEvent* event) override;
};

} // namespace holdband::ui
