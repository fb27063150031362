// Dresses the application: style, palette, and the look of buttons, fields and tables.
#pragma once

#include "ui/theme/colours.h"

#include <QApplication>
#include <optional>

class QLabel;

namespace holdband::ui {

/// What the desktop itself uses.
Scheme systemScheme(const QPalette& desktop);

void dress(QApplication& application, Scheme scheme);

/// The part that a widget plays, for its style: "page", "main", "muted", "title", "warn", "care",
/// "refused", "cell".
void setRole(QWidget* widget, const char* role);

/// A label with wrapping text, in a role.
QLabel* makeLabel(const QString& text, const char* role, QWidget* parent);

} // namespace holdband::ui
