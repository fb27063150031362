#include "ui/imports/import_choices.h"

#include "core/intake/import.h"
#include "ui/theme/elided_label.h"
#include "ui/theme/theme.h"
#include "ui/words/words.h"

#include <QComboBox>
#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>
#include <QSignalBlocker>
#include <QTimeZone>
#include <QVBoxLayout>

namespace holdband::ui {

namespace {

const QString byItself = QStringLiteral("as the file says");
const QString byName = QStringLiteral("by its name");

} // namespace

ImportChoices::ImportChoices(QWidget* parent)
    : Card(QStringLiteral("What the file means"), parent), m_dateOrder(new QComboBox(this)),
      m_unit(new QComboBox(this)), m_zone(new QComboBox(this)), m_columns(new QGridLayout)
{
    m_dateOrder->addItems({byItself, QStringLiteral("year, month, day"),
                           QStringLiteral("month, day, year"), QStringLiteral("day, month, year")});
    m_unit->addItems({byItself, QStringLiteral("°C"), QStringLiteral("°F")});
    m_zone->addItem(QStringLiteral("the logbook’s"));
    for (const QByteArray& zone : QTimeZone::availableTimeZoneIds())
        m_zone->addItem(QString::fromLatin1(zone));
    m_zone->setEditable(true);
    m_zone->setInsertPolicy(QComboBox::NoInsert);
    m_zone->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    m_zone->setMinimumContentsLength(14);
    auto* grid = new QGridLayout;
    addRow(grid, 0, QStringLiteral("Date order"), m_dateOrder);
    addRow(grid, 1, QStringLiteral("Temperatures"), m_unit);
    addRow(grid, 2, QStringLiteral("Zone of local times"), m_zone);
    contents()->addLayout(grid);
    contents()->addSpacing(6);
    contents()->addWidget(makeLabel(QStringLiteral("Columns"), "title", this));
    contents()->addLayout(m_columns);
    contents()->addStretch();
    connect(m_zone->lineEdit(), &QLineEdit::editingFinished, this, &ImportChoices::changed);
}

void ImportChoices::addRow(QGridLayout* grid, int row, const QString& label, QComboBox* box)
{
    box->setAccessibleName(label);
    grid->addWidget(makeLabel(label, "muted", this), row, 0);
    grid->addWidget(box, row, 1);
    grid->setColumnStretch(1, 1);
    connect(box, &QComboBox::activated, this, &ImportChoices::changed);
}

void ImportChoices::setColumns(const LogHead& head, const QStringList& targets)
{
    m_boxes.clear();
    clearLayout(m_columns);
    int row = 0;
    for (const std::string& header : head.timeHeaders) {
        m_columns->addWidget(new ElidedLabel(shown(header), this), row, 0);
        m_columns->addWidget(makeLabel(QStringLiteral("time"), "muted", this), row++, 1);
    }
    for (const std::string& header : head.headers) {
        auto* box = new QComboBox(this);
        box->addItem(byName);
        box->addItems(targets);
        box->setAccessibleName(shown(header) + QStringLiteral(" is"));
        box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
        box->setMinimumContentsLength(14);
        connect(box, &QComboBox::activated, this, &ImportChoices::changed);
        m_columns->addWidget(new ElidedLabel(shown(header), this), row, 0);
        m_columns->addWidget(box, row++, 1);
        m_boxes.emplace_back(shown(header), box);
    }
    m_columns->setColumnStretch(0, 1);
    m_columns->setColumnStretch(1, 1);
}

QComboBox* ImportChoices::column(const QString& header) const
{
    for (const auto& [name, box] : m_boxes) {
        if (name == header)
            return box;
    }
    return nullptr;
}

void ImportChoices::showTaken(const intake::ImportReport& report)
{
    for (const auto& [header, box] : m_boxes) {
        QString taken = QStringLiteral("ignored");
        for (const intake::ImportedColumn& each : report.columns) {
            if (shown(each.header) == header)
                taken = shown(each.name) + QStringLiteral(" (by its name)");
        }
        box->setItemText(0, taken);
    }
}

void ImportChoices::pointAt(Decision decision)
{
    switch (decision) {
    case Decision::dateOrder:
        return m_dateOrder->setFocus();
    case Decision::unit:
        return m_unit->setFocus();
    case Decision::zone:
        return m_zone->setFocus();
    case Decision::columns:
        if (!m_boxes.empty())
            m_boxes.front().second->setFocus();
        return;
    case Decision::none:
        return;
    }
}

void ImportChoices::fillIn(intake::ImportOptions& options) const
{
    constexpr DateOrder orders[] = {DateOrder::yearMonthDay, DateOrder::monthDayYear,
                                    DateOrder::dayMonthYear};
    if (const int index = m_dateOrder->currentIndex(); index > 0)
        options.dateOrder = orders[index - 1];
    if (const int index = m_unit->currentIndex(); index > 0)
        options.unit = index == 1 ? TemperatureUnit::celsius : TemperatureUnit::fahrenheit;
    if (m_zone->currentText() != m_zone->itemText(0))
        options.zone = core(m_zone->currentText().trimmed());
    for (const auto& [header, box] : m_boxes) {
        if (box->currentIndex() > 0)
            options.columns.emplace_back(core(box->currentText()), core(header));
    }
}

void ImportChoices::reset()
{
    for (QComboBox* box : {m_dateOrder, m_unit, m_zone}) {
        const QSignalBlocker quiet(box);
        box->setCurrentIndex(0);
    }
    setColumns({}, {});
}

} // namespace holdband::ui
