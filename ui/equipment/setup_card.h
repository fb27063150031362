// A setup with its ratings, its parts, which fold, and buttons for its actions.
#pragma once

#include "ui/equipment/equipment_tables.h"
#include "ui/theme/card.h"

class QPushButton;

namespace holdband::ui {

class TableCard;

/// The name, shortened if it is too long for a heading.
QString shortTitle(const std::string& name);

class SetupCard : public Card {
    Q_OBJECT
public:
    SetupCard(const Setup& setup, const Equipment& equipment, bool editable,
              QWidget* parent = nullptr);

    /// Folded at first; hidden without parts.
    TableCard* parts() const { return m_parts; }
    QPushButton* editButton() const { return m_edit; }
    QPushButton* retireButton() const { return m_retire; }
    QPushButton* removeButton() const { return m_remove; }

private:
    void addButtons(const QString& name, bool retired, bool editable);

    TableCard* m_parts;
    QPushButton* m_edit;
    QPushButton* m_retire;
    QPushButton* m_remove;
};

} // namespace holdband::ui
