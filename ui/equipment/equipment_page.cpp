#include "ui/equipment/equipment_page.h"

#include "core/review/cautions.h"
#include "core/store/equipment.h"
#include "ui/equipment/equipment_tables.h"
#include "ui/session/session.h"
#include "ui/tables/notes_card.h"
#include "ui/tables/table_card.h"
#include "ui/theme/theme.h"
#include "ui/words/words.h"

#include <QLabel>
#include <QScrollArea>
#include <QVBoxLayout>

namespace holdband::ui {

namespace {

template <typename T>
bool take(Result<T> read, T& into, std::optional<Problem>& problem)
{
    if (read)
        into = std::move(*read);
    else
        problem = read.error();
    return read.has_value();
}

Result<Equipment> readEquipment(const store::LogbookFile& file)
{
    Equipment all;
    std::optional<Problem> problem;
    const bool read = take(store::readSettings(file), all.settings, problem) &&
                      take(Zone::named(all.settings.zone), all.zone, problem) &&
                      take(store::readSetups(file), all.setups, problem) &&
                      take(store::readSensors(file), all.sensors, problem) &&
                      take(store::readMeters(file), all.meters, problem);
    if (!read)
        return failure(*problem);
    return all;
}

} // namespace

EquipmentPage::EquipmentPage(Session& session, QWidget* parent)
    : QWidget(parent), m_session(&session), m_left(new QVBoxLayout), m_right(new QVBoxLayout)
{
    auto* inner = new QWidget;
    inner->setObjectName(QStringLiteral("inner"));
    auto* columns = new QHBoxLayout(inner);
    columns->setContentsMargins(0, 0, 0, 0);
    columns->setSpacing(spacing::gap);
    for (QVBoxLayout* column : {m_left, m_right}) {
        column->setSpacing(spacing::gap);
        columns->addLayout(column, 1);
    }
    auto* area = new QScrollArea(this);
    area->setWidget(inner);
    area->setWidgetResizable(true);
    area->setFocusPolicy(Qt::NoFocus);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(area);
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
    clearLayout(m_left);
    clearLayout(m_right);
    m_subtitle.clear();
}

void EquipmentPage::addSetup(const Setup& setup, const Equipment& equipment, QVBoxLayout* column)
{
    auto* card = new TableCard(shown(setup.name), 0);
    card->setAside(setupWords(setup));
    card->setWords(partsTable(setup, equipment.settings));
    QString remark = ratingsWords(setup);
    if (setup.parts.empty())
        remark = QStringLiteral("No parts are on record. ") + remark;
    card->setRemark(remark);
    column->addWidget(card);
    auto* care = new NotesCard(QStringLiteral("Care: %1").arg(shown(setup.name)));
    QStringList cautions;
    for (const std::string& text : review::cautionsFor(setup))
        cautions << capitalised(shown(text));
    column->addWidget(care);
    care->setSentences(cautions);
}

void EquipmentPage::fill(const Equipment& equipment)
{
    clear();
    for (std::size_t i = 0; i < equipment.setups.size(); ++i)
        addSetup(equipment.setups[i], equipment, i % 2 == 0 ? m_left : m_right);
    auto* meters = new TableCard(QStringLiteral("Meters"), 5);
    meters->setWords(metersTable(equipment));
    meters->setRemark(priceWords(equipment.settings));
    auto* sensors = new TableCard(QStringLiteral("Sensors"), 5);
    sensors->setWords(sensorsTable(equipment));
    (equipment.setups.size() % 2 == 0 ? m_left : m_right)->addWidget(meters);
    m_right->addWidget(sensors);
    m_left->addStretch();
    m_right->addStretch();
    m_subtitle = QStringLiteral("%1 setups · %2 meters · %3 sensors")
                     .arg(equipment.setups.size())
                     .arg(equipment.meters.size())
                     .arg(equipment.sensors.size());
    Q_EMIT equipmentShown();
}

} // namespace holdband::ui
