// A card with a list of equipment, a button in its heading to add one, and below it the name of the
// chosen item with buttons for it: edit, retire, remove.
#pragma once

#include "ui/tables/table_card.h"

class QPushButton;

namespace holdband::ui {

class ElidedLabel;

class ListCard : public TableCard {
    Q_OBJECT
public:
    enum class Can { everything, notRetire };

    /// `what`: the name of an item, "meter".
    ListCard(const QString& title, const QString& what, int wide, Can can,
             QWidget* parent = nullptr);

    /// `retired`: one for each row; retired items can be brought back.
    void setItems(TableText words, std::vector<bool> retired);
    void setEditable(bool editable);

    QPushButton* addButton() const { return m_add; }
    QPushButton* editButton() const { return m_edit; }
    QPushButton* retireButton() const { return m_retire; }
    QPushButton* removeButton() const { return m_remove; }
    int currentRow() const;
    /// The item that the buttons act on; empty if none is chosen.
    QString currentName() const;
    /// Before the buttons.
    ElidedLabel* choice() const { return m_choice; }

Q_SIGNALS:
    void addWanted();
    void editWanted(int row);
    /// Also emitted to bring a retired item back.
    void retireWanted(int row);
    void removeWanted(int row);

private:
    QPushButton* makeButton(const QString& words, const QString& name);
    void showChoice();
    void nameButtons(const QString& name, bool retired);
    QString nameAt(int row) const;
    int rowNamed(const QString& name) const;
    void makeRoomForTheBar(int nearest, int farthest);

    Can m_can;
    std::vector<bool> m_retired;
    ElidedLabel* m_choice;
    bool m_editable = true;
    QPushButton* m_add;
    QPushButton* m_edit;
    QPushButton* m_retire;
    QPushButton* m_remove;
};

/// How retiring and removing differ, for tooltips.
QString retireTip(const QString& name, bool retired);
QString removeTip(const QString& name);

} // namespace holdband::ui
