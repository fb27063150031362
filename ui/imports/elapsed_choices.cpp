#include "ui/imports/elapsed_choices.h"

#include "core/intake/csv/time_numbers.h"
#include "ui/forms/buddy.h"
#include "ui/forms/instant_field.h"
#include "ui/theme/theme.h"
#include "ui/words/words.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

namespace holdband::ui {

namespace {

/// In the order of TimeUnit.
QString timeUnitName(TimeUnit unit)
{
    switch (unit) {
    case TimeUnit::seconds:
        return Words::tr("seconds");
    case TimeUnit::minutes:
        return Words::tr("minutes");
    case TimeUnit::hours:
        return Words::tr("hours");
    case TimeUnit::days:
        break;
    }
    return Words::tr("days of a spreadsheet’s calendar");
}

/// What is used if the user chooses nothing.
QString defaultTimeUnit(const LogState& log)
{
    const auto time = log.map.columnOf(intake::Meaning::time);
    if (!log.preview || !time || *time >= log.preview->columns.size())
        return Words::tr("not set yet");
    const auto named = timeUnitNamed(log.preview->columns[*time].header);
    return named ? Words::tr("as the header says: %1").arg(timeUnitName(*named))
                 : Words::tr("not set yet");
}

} // namespace

ElapsedChoices::ElapsedChoices(QWidget* parent)
    : QWidget(parent), m_unit(new QComboBox(this)),
      m_began(new InstantField(Words::tr("Began"), this))
{
    m_unit->addItem(Words::tr("not set yet"));
    for (const TimeUnit unit :
         {TimeUnit::seconds, TimeUnit::minutes, TimeUnit::hours, TimeUnit::days})
        m_unit->addItem(timeUnitName(unit));
    m_unit->setAccessibleName(Words::tr("Times count"));
    m_unit->setSizeAdjustPolicy(QComboBox::AdjustToContents);
    m_began->setOptional(true);
    m_began->setInstant(std::nullopt);
    m_began->nowButton()->hide();
    auto* unitLabel = makeLabel(Words::tr("Times count"), "muted", this);
    m_beganLabel = makeLabel(Words::tr("Began"), "muted", this);
    setBuddyOf(*unitLabel, *m_unit);
    setBuddyOf(*m_beganLabel, *m_began);
    auto* layout = new QHBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(6);
    const int height = m_began->edit()->sizeHint().height();
    for (QLabel* label : {unitLabel, m_beganLabel})
        label->setWordWrap(false);
    for (QWidget* each : std::initializer_list<QWidget*>{unitLabel, m_unit, m_beganLabel}) {
        each->setMinimumHeight(height); // in line with the first line of the other field
        layout->addWidget(each, 0, Qt::AlignTop);
        layout->addSpacing(each == m_unit ? 8 : 0);
    }
    layout->addWidget(m_began, 1, Qt::AlignTop);
    connect(m_unit, &QComboBox::activated, this, &ElapsedChoices::changed);
    connect(m_began->edit(), &QLineEdit::editingFinished, this, &ElapsedChoices::takeStart);
    for (QPushButton* button : {m_began->firstReading(), m_began->secondReading()})
        connect(button, &QPushButton::clicked, this, &ElapsedChoices::takeStart);
}

void ElapsedChoices::showLog(const LogState& log, const Zone& zone)
{
    m_began->setZone(zone);
    showUnit(log);
    showStart(log);
    const Decision open = log.problem ? log.problem->decision : Decision::none;
    const bool start = log.map.start || open == Decision::start;
    const bool unit = log.map.timeUnit || start || open == Decision::timeUnit;
    for (QWidget* widget : std::initializer_list<QWidget*>{m_beganLabel, m_began})
        widget->setVisible(start && log.map.timeUnit != TimeUnit::days);
    setVisible(unit && !log.map.timePattern);
}

void ElapsedChoices::showUnit(const LogState& log)
{
    m_unit->setItemText(0, defaultTimeUnit(log));
    m_unit->setCurrentIndex(log.map.timeUnit ? static_cast<int>(*log.map.timeUnit) + 1 : 0);
}

/// A start that was refused stays as it is typed, but not for another log.
void ElapsedChoices::showStart(const LogState& log)
{
    const bool same = m_source.path == log.source.path && m_source.text == log.source.text &&
                      m_source.sheet == log.source.sheet;
    m_source = log.source;
    const QString start = log.map.start ? shown(*log.map.start) : QString();
    if (same && (start == m_start || m_began->edit()->hasFocus()))
        return;
    m_start = start;
    m_began->setInstant(std::nullopt); // also closes what was asked about the last one
    m_began->edit()->setText(start);
}

void ElapsedChoices::takeStart()
{
    const QString typed = m_began->edit()->text().trimmed();
    if (typed == m_start || !m_began->instant())
        return;
    m_start = typed;
    Q_EMIT changed();
}

void ElapsedChoices::fillIn(intake::ColumnMap& map) const
{
    const int unit = m_unit->currentIndex();
    const QString start = m_began->edit()->text().trimmed();
    map.timeUnit = unit > 0 ? std::optional(static_cast<TimeUnit>(unit - 1)) : std::nullopt;
    const bool none = start.isEmpty() || map.timeUnit == TimeUnit::days || map.timePattern;
    map.start = none ? std::nullopt : std::optional(core(start));
}

bool ElapsedChoices::pointAt(Decision decision)
{
    if (decision == Decision::timeUnit)
        m_unit->setFocus();
    else if (decision == Decision::start)
        m_began->setFocus();
    else
        return false;
    return true;
}

} // namespace holdband::ui
