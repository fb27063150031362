// Setups with their parts and cautions, meters, sensors, the price of energy, the rounds and named
// plans; each can be added, edited, retired and removed here.
#pragma once

#include "ui/equipment/equipment_tables.h"

#include <QWidget>

class QBoxLayout;
class QLabel;
class QPushButton;
class QVBoxLayout;

namespace holdband::ui {

class EmptyPage;
class EquipmentActions;
class ListCard;
class SafetyCard;
class Session;
class SetupCard;
class TableCard;

class EquipmentPage : public QWidget {
    Q_OBJECT
public:
    explicit EquipmentPage(Session& session, QWidget* parent = nullptr);

    void refresh();
    void clear();
    const QString& subtitle() const { return m_subtitle; }

    EquipmentActions* actions() const { return m_actions; }
    /// Shown while nothing is on record.
    EmptyPage* empty() const { return m_empty; }
    QPushButton* addSetupButton() const { return m_addSetup; }
    const std::vector<SetupCard*>& setupCards() const { return m_setupCards; }
    SafetyCard* safety() const { return m_safety; }
    ListCard* meters() const { return m_meters; }
    ListCard* sensors() const { return m_sensors; }
    ListCard* plans() const { return m_plans; }
    TableCard* prices() const { return m_prices; }
    QPushButton* pricesButton() const { return m_editPrices; }
    TableCard* rounds() const { return m_rounds; }
    QPushButton* roundsButton() const { return m_editRounds; }

Q_SIGNALS:
    void equipmentShown();
    void failed(const QString& sentence);
    /// A change was saved; `what` describes it.
    void saved(const QString& what);

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    void layOut();
    void connectLists();
    void fill(const Equipment& equipment);
    void fillSetups();
    void fillLists();
    void showEmpty();

    Session* m_session;
    Equipment m_equipment;
    EquipmentActions* m_actions;
    QWidget* m_inner;
    QBoxLayout* m_columns; ///< below each other where the page is narrow
    QVBoxLayout* m_setups;
    std::vector<SetupCard*> m_setupCards;
    QPushButton* m_addSetup;
    SafetyCard* m_safety;
    ListCard* m_meters;
    ListCard* m_sensors;
    ListCard* m_plans;
    TableCard* m_prices;
    QPushButton* m_editPrices;
    TableCard* m_rounds;
    QPushButton* m_editRounds;
    EmptyPage* m_empty;
    QString m_subtitle;
};

} // namespace holdband::ui
