// Sets the look of the application: style, palette, and the look of buttons, fields and tables.
#pragma once

#include "ui/theme/colours.h"

#include <QApplication>
#include <optional>

class QLabel;

namespace holdband::ui {

/// The scheme of the desktop.
Scheme systemScheme(const QPalette& desktop);

void dress(QApplication& application, Scheme scheme);

/// The role of a widget, for its style: "page" (a tab of the window), "fold" (the heading of a card
/// that folds), "main", "muted", "title", "warn", "care", "refused", "cell".
void setRole(QWidget* widget, const char* role);

/// A label with wrapping text, in a role.
QLabel* makeLabel(const QString& text, const char* role, QWidget* parent);

} // namespace holdband::ui
