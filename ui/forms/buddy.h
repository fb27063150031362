// A label whose underlined letter leads to a field made of several widgets.
#pragma once

#include <QLabel>

namespace holdband::ui {

/// A label gives the focus only to a widget that takes it itself, not through another.
inline void setBuddyOf(QLabel& label, QWidget& field)
{
    QWidget* inner = &field;
    while (inner->focusProxy())
        inner = inner->focusProxy();
    label.setBuddy(inner);
}

} // namespace holdband::ui
