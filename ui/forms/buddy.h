// Makes a label's underlined letter focus a field made of several widgets.
#pragma once

#include <QLabel>

namespace holdband::ui {

/// A QLabel gives the focus only to a widget that accepts it itself, not through a focus proxy.
inline void setBuddyOf(QLabel& label, QWidget& field)
{
    QWidget* inner = &field;
    while (inner->focusProxy())
        inner = inner->focusProxy();
    label.setBuddy(inner);
}

} // namespace holdband::ui
