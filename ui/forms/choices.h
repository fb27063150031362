// Lists to choose a name from, and fields read into a value.
#pragma once

#include "ui/forms/quantity_field.h"

#include <QString>
#include <string>
#include <vector>

class QComboBox;

namespace holdband::ui {

/// A list that long names don't widen.
QComboBox* makeChoice(const QString& name, QWidget* parent);

/// Fills the list; `none` in words is an empty choice at its end, where given. Chooses `chosen`,
/// else the first. Says nothing of it.
void offerChoices(QComboBox* list, const std::vector<std::string>& names, const std::string& chosen,
                  const QString& none = {});

/// Empty where nothing or "none" is chosen.
std::string chosenIn(const QComboBox* list);

/// Puts what is typed into its place. On a Problem the focus goes to the field, and the place is
/// its name.
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
