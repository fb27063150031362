// Lists to choose a name from, and helpers to read fields into a value.
#pragma once

#include "ui/forms/quantity_field.h"

#include <QString>
#include <string>
#include <vector>

class QComboBox;

namespace holdband::ui {

/// A list that doesn't grow with long names.
QComboBox* makeChoice(const QString& name, QWidget* parent);

/// Fills the list; if `none` is given, it is the text of an empty choice at the end. Chooses
/// `chosen`, else the first. Emits no signal.
void offerChoices(QComboBox* list, const std::vector<std::string>& names, const std::string& chosen,
                  const QString& none = {});

/// Empty if nothing or "none" is chosen.
std::string chosenIn(const QComboBox* list);

/// Stores the typed value in its place. On a Problem the field gets the focus, and the Problem's
/// place is its name.
template <typename Value>
Done readField(QuantityField* field, std::optional<Value>& into)
{
    const auto read = field->value<Value>();
    if (!read) {
        field->setFocus();
        Problem problem = read.error();
        problem.place = field->name();
        return failure(problem);
    }
    into = *read;
    return {};
}

} // namespace holdband::ui
