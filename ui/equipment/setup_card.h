// A setup with its parts, its ratings, the cautions for its kind, and buttons for its actions.
#pragma once

#include "ui/equipment/equipment_tables.h"
#include "ui/tables/table_card.h"

class QPushButton;

namespace holdband::ui {

/// The name, shortened if it is too long for a heading.
QString shortTitle(const std::string& name);

class SetupCard : public TableCard {
    Q_OBJECT
public:
    SetupCard(const Setup& setup, const Equipment& equipment, bool editable,
              QWidget* parent = nullptr);

    QPushButton* editButton() const { return m_edit; }
    QPushButton* retireButton() const { return m_retire; }
    QPushButton* removeButton() const { return m_remove; }

private:
    QPushButton* m_edit;
    QPushButton* m_retire;
    QPushButton* m_remove;
};

} // namespace holdband::ui
