#include "ui/equipment/equipment_page.h"

#include "ui/equipment/card_heading.h"
#include "ui/equipment/equipment_actions.h"
#include "ui/equipment/equipment_reading.h"
#include "ui/equipment/list_card.h"
#include "ui/equipment/safety_card.h"
#include "ui/equipment/setup_card.h"
#include "ui/session/session.h"
#include "ui/tables/table_card.h"
#include "ui/theme/empty_page.h"
#include "ui/theme/theme.h"
#include "ui/words/words.h"

#include <QBoxLayout>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>

namespace holdband::ui {

namespace {

template <typename Thing>
std::vector<bool> retiredOnes(const std::vector<Thing>& things)
{
    std::vector<bool> retired;
    for (const Thing& thing : things)
        retired.push_back(thing.retired.has_value());
    return retired;
}

template <typename Thing>
const Thing* at(const std::vector<Thing>& things, int row)
{
    const bool there = row >= 0 && static_cast<std::size_t>(row) < things.size();
    return there ? &things[static_cast<std::size_t>(row)] : nullptr;
}

QVBoxLayout* addColumn(QBoxLayout* columns)
{
    auto* column = new QVBoxLayout;
    column->setSpacing(spacing::gap);
    columns->addLayout(column, 1);
    return column;
}

} // namespace

EquipmentPage::EquipmentPage(Session& session, QWidget* parent)
    : QWidget(parent), m_session(&session), m_actions(new EquipmentActions(session, this)),
      m_inner(new QWidget(this)), m_columns(new QBoxLayout(QBoxLayout::LeftToRight, m_inner)),
      m_setups(new QVBoxLayout), m_addSetup(new QPushButton(Words::tr("Add a setup…"), this)),
      m_safety(new SafetyCard(this)), m_meters(new ListCard(Words::tr("Meters"), Words::tr("meter"),
                                                            1, ListCard::Can::everything, this)),
      m_sensors(new ListCard(Words::tr("Sensors"), Words::tr("sensor"), 2,
                             ListCard::Can::everything, this)),
      m_plans(new ListCard(Words::tr("Named plans"), Words::tr("named plan"), 1,
                           ListCard::Can::notRetire, this)),
      m_prices(new TableCard(Words::tr("Price of energy"), 2, this)),
      m_editPrices(new QPushButton(Words::tr("Edit…"), this)),
      m_rounds(new TableCard(Words::tr("Rounds"), 0, this)),
      m_editRounds(new QPushButton(Words::tr("Edit…"), this)),
      m_empty(new EmptyPage(EmptyExample::equipment,
                            Words::tr("A setup is what chills the beer: add yours, then its meter "
                                      "and its sensors."),
                            Words::tr("Add a &setup…"), this))
{
    layOut();
    connectLists();
    connect(m_actions, &EquipmentActions::failed, this, &EquipmentPage::failed);
    connect(m_actions, &EquipmentActions::saved, this, &EquipmentPage::saved);
    setRole(m_addSetup, "main");
    connect(m_empty->button(), &QPushButton::clicked, m_actions, &EquipmentActions::addSetup);
    connect(m_addSetup, &QPushButton::clicked, m_actions, &EquipmentActions::addSetup);
    connect(m_editPrices, &QPushButton::clicked, m_actions, &EquipmentActions::editPrices);
    connect(m_editRounds, &QPushButton::clicked, m_actions, &EquipmentActions::editRounds);
}

void EquipmentPage::layOut()
{
    m_inner->setObjectName(QStringLiteral("inner"));
    m_columns->setContentsMargins(0, 0, 0, 0);
    m_columns->setSpacing(spacing::gap);
    QVBoxLayout* left = addColumn(m_columns);
    QVBoxLayout* right = addColumn(m_columns);
    m_setups->setSpacing(spacing::gap);
    left->addWidget(makeHeadingLine(Words::tr("Setups"), m_addSetup, m_inner));
    left->addWidget(m_empty);
    left->addLayout(m_setups);
    left->addWidget(m_safety);
    left->addStretch();
    for (QWidget* card :
         std::initializer_list<QWidget*>{m_sensors, m_meters, m_prices, m_rounds, m_plans})
        right->addWidget(card);
    right->addStretch();
    m_editPrices->setAccessibleName(Words::tr("Edit the price of energy"));
    addToHeading(*m_prices, m_editPrices);
    m_editRounds->setAccessibleName(Words::tr("Edit the rounds"));
    addToHeading(*m_rounds, m_editRounds);
    auto* area = new QScrollArea(this);
    area->setWidget(m_inner);
    area->setWidgetResizable(true);
    area->setFocusPolicy(Qt::NoFocus);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(area);
}

void EquipmentPage::resizeEvent(QResizeEvent* event)
{
    constexpr double leastLines = 50.0; // width in heights of a line
    QWidget::resizeEvent(event);
    const bool narrow = width() < leastLines * fontMetrics().height();
    m_columns->setDirection(narrow ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight);
}

void EquipmentPage::connectLists()
{
    const auto wire = [this](ListCard* card, auto things, auto add, auto edit) {
        connect(card, &ListCard::addWanted, m_actions, add);
        connect(card, &ListCard::editWanted, this, [this, things, edit](int row) {
            if (const auto* thing = at(m_equipment.*things, row))
                edit(*m_actions, *thing);
        });
        connect(card, &ListCard::removeWanted, this, [this, things](int row) {
            if (const auto* thing = at(m_equipment.*things, row))
                m_actions->remove(*thing);
        });
    };
    // Plain lambdas: GCC 12 warns falsely of a captured pointer to member with sanitizers.
    using Actions = EquipmentActions;
    wire(m_meters, &Equipment::meters, &Actions::addMeter,
         [](Actions& actions, const Meter& meter) { actions.editMeter(meter); });
    wire(m_sensors, &Equipment::sensors, &Actions::addSensor,
         [](Actions& actions, const Sensor& sensor) { actions.editSensor(sensor); });
    wire(m_plans, &Equipment::plans, &Actions::addPlan,
         [](Actions& actions, const NamedPlan& plan) { actions.editPlan(plan); });
    connect(m_meters, &ListCard::retireWanted, this, [this](int row) {
        if (const Meter* meter = at(m_equipment.meters, row))
            m_actions->toggleRetired(*meter);
    });
    connect(m_sensors, &ListCard::retireWanted, this, [this](int row) {
        if (const Sensor* sensor = at(m_equipment.sensors, row))
            m_actions->toggleRetired(*sensor);
    });
}

void EquipmentPage::refresh()
{
    m_session->ask<Equipment>(this, readEquipment, [this](Result<Equipment> read) {
        if (read)
            fill(*read);
        else
            Q_EMIT failed(sentence(read.error()));
    });
}

void EquipmentPage::clear()
{
    fill({});
    m_subtitle.clear();
}

void EquipmentPage::fillSetups()
{
    QStringList open; // their parts stay open
    for (const SetupCard* card : m_setupCards) {
        if (!card->parts()->isFolded())
            open << card->accessibleName();
    }
    clearLayout(m_setups);
    m_setupCards.clear();
    for (const Setup& setup : m_equipment.setups) {
        auto* card = new SetupCard(setup, m_equipment, !m_session->readOnly(), m_inner);
        m_setupCards.push_back(card);
        m_setups->addWidget(card);
        card->parts()->setFolded(!open.contains(card->accessibleName()));
        connect(card->editButton(), &QPushButton::clicked, this,
                [this, setup] { m_actions->editSetup(setup); });
        connect(card->retireButton(), &QPushButton::clicked, this,
                [this, setup] { m_actions->toggleRetired(setup); });
        connect(card->removeButton(), &QPushButton::clicked, this,
                [this, setup] { m_actions->remove(setup); });
    }
    m_safety->setSetups(m_equipment.setups);
}

void EquipmentPage::fillLists()
{
    m_meters->setItems(metersTable(m_equipment), retiredOnes(m_equipment.meters));
    m_sensors->setItems(sensorsTable(m_equipment), retiredOnes(m_equipment.sensors));
    m_plans->setItems(plansTable(m_equipment), std::vector<bool>(m_equipment.plans.size(), false));
    m_prices->setWords(pricesTable(m_equipment));
    m_prices->setRemark(priceWords(m_equipment.settings));
    m_rounds->setWords(roundsTable(m_equipment));
    const auto emptyText = [](bool empty, const QString& words) {
        return empty ? words : QString();
    };
    m_meters->setRemark(
        emptyText(m_equipment.meters.empty(), Words::tr("No meter is on record yet.")));
    m_sensors->setRemark(
        emptyText(m_equipment.sensors.empty(), Words::tr("No sensor is on record yet.")));
    m_plans->setRemark(emptyText(m_equipment.plans.empty(),
                                 Words::tr("A saved plan is offered for each new batch.")));
}

/// In place of the setups; prices and lists can be edited before there is one.
void EquipmentPage::showEmpty()
{
    const bool none = m_equipment.setups.empty();
    m_empty->setVisible(none);
    m_empty->button()->setEnabled(m_addSetup->isEnabled());
    m_addSetup->setHidden(none);
}

void EquipmentPage::fill(const Equipment& equipment)
{
    m_equipment = equipment;
    m_actions->setEquipment(equipment);
    const bool editable = m_session->isOpen() && !m_session->readOnly();
    for (ListCard* card : {m_meters, m_sensors, m_plans})
        card->setEditable(editable);
    m_addSetup->setEnabled(editable);
    showEmpty();
    m_editPrices->setEnabled(editable);
    m_editRounds->setEnabled(editable);
    fillSetups();
    fillLists();
    m_subtitle = QStringList{Words::counted("%n setups", "%n setup", equipment.setups.size()),
                             Words::counted("%n meters", "%n meter", equipment.meters.size()),
                             Words::counted("%n sensors", "%n sensor", equipment.sensors.size())}
                     .join(QStringLiteral(" · "));
    Q_EMIT equipmentShown();
}

} // namespace holdband::ui
