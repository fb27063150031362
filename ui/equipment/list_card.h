// A card with a list of things and what can be done with the chosen one: edit, retire, remove.
#pragma once

#include "ui/tables/table_card.h"

class QPushButton;

namespace holdband::ui {

class ListCard : public TableCard {
    Q_OBJECT
public:
    enum class Can { everything, notRetire };

    /// `what` is in a row: "meter".
    ListCard(const QString& title, const QString& what, int wide, Can can,
             QWidget* parent = nullptr);

    /// `retired` for each row: those can be brought back.
    void setThings(TableWords words, std::vector<bool> retired);
    void setEditable(bool editable);

    QPushButton* addButton() const { return m_add; }
    QPushButton* editButton() const { return m_edit; }
    QPushButton* retireButton() const { return m_retire; }
    QPushButton* removeButton() const { return m_remove; }
    int currentRow() const;

Q_SIGNALS:
    void addWanted();
    void editWanted(int row);
    /// Or to be brought back, where it is retired.
    void retireWanted(int row);
    void removeWanted(int row);

private:
    QPushButton* makeButton(const QString& words, const QString& name);
    void showChoice();
    void makeRoomForTheBar(int nearest, int farthest);

    std::vector<bool> m_retired;
    bool m_editable = true;
    QPushButton* m_add;
    QPushButton* m_edit;
    QPushButton* m_retire;
    QPushButton* m_remove;
};

} // namespace holdband::ui
