#include "ui/window/first_steps.h"

#include "core/store/readings/meter_readings.h"
#include "core/store/records/batches.h"
#include "core/store/records/equipment.h"
#include "ui/theme/theme.h"
#include "ui/words/words.h"

#include <QGridLayout>
#include <QLabel>
#include <QPushButton>
#include <algorithm>

namespace holdband::ui {

Result<StepsTaken> readStepsTaken(const store::LogbookFile& logbook)
{
    StepsTaken taken;
    auto setups = store::readSetups(logbook);
    HOLDBAND_TRY(setups);
    auto sensors = store::readSensors(logbook);
    HOLDBAND_TRY(sensors);
    auto meters = store::readMeters(logbook);
    HOLDBAND_TRY(meters);
    auto batches = store::readBatches(logbook);
    HOLDBAND_TRY(batches);
    taken.setup = !setups->empty();
    taken.sensor = !sensors->empty();
    taken.meter = !meters->empty();
    taken.batch = !batches->empty();
    for (const Meter& meter : *meters) {
        auto readings = store::readMeterReadings(logbook, meter.name);
        HOLDBAND_TRY(readings);
        taken.reading = taken.reading || !readings->empty();
    }
    return taken;
}

FirstSteps::FirstSteps(QWidget* parent) : QWidget(parent)
{
    auto* grid = new QGridLayout(this);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setHorizontalSpacing(12);
    grid->setVerticalSpacing(8);
    grid->setColumnStretch(2, 1);
    addStep(grid, FirstStep::setup, Words::tr("1  Your cooling arrangement"),
            Words::tr("what chills the beer, its parts and what they cost"));
    addStep(grid, FirstStep::meter, Words::tr("2  Its watt-hour meter"),
            Words::tr("the plug-in meter that you read by eye"));
    addStep(grid, FirstStep::sensor, Words::tr("3  The probe in the beer"),
            Words::tr("and one for the room; how far each can be trusted"));
    addStep(grid, FirstStep::batch, Words::tr("4  The batch and its plan"),
            Words::tr("target temperatures stage by stage, and when it was pitched"));
    addStep(grid, FirstStep::reading, Words::tr("5  The first reading"),
            Words::tr("what the meter shows now; logs can be dropped on the window any time"));
}

void FirstSteps::addStep(QGridLayout* grid, FirstStep step, const QString& words,
                         const QString& reason)
{
    const int row = static_cast<int>(m_lines.size());
    auto* mark = new QLabel(this);
    mark->setMinimumWidth(20);
    auto* button = new QPushButton(words, this);
    button->setProperty("wordsLeft", true);
    grid->addWidget(mark, row, 0);
    grid->addWidget(button, row, 1);
    grid->addWidget(makeLabel(reason, "muted", this), row, 2);
    connect(button, &QPushButton::clicked, this, [this, step] { Q_EMIT wanted(step); });
    m_lines.push_back({mark, button});
}

QPushButton* FirstSteps::button(FirstStep step) const
{
    return m_lines[static_cast<std::size_t>(step)].button;
}

void FirstSteps::setTaken(const StepsTaken& taken)
{
    const bool done[] = {taken.setup, taken.meter, taken.sensor, taken.batch, taken.reading};
    bool nextFound = false;
    for (std::size_t i = 0; i < m_lines.size(); ++i) {
        m_lines[i].mark->setText(done[i] ? QStringLiteral("✓") : QStringLiteral("·"));
        m_lines[i].mark->setAccessibleName(done[i] ? Words::tr("done") : Words::tr("to do"));
        const bool next = !done[i] && !nextFound;
        nextFound = nextFound || next;
        setRole(m_lines[i].button, next ? "main" : "field");
        if (next)
            m_lines[i].button->setFocus();
    }
}

} // namespace holdband::ui
