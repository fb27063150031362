#include "ui/equipment/sensor_dialog.h"

#include "core/model/names.h"
#include "core/store/readings/reading_list.h"
#include "core/store/records/equipment.h"
#include "core/text/phrase.h"
#include "ui/equipment/ice_panel.h"
#include "ui/equipment/offset_rows.h"
#include "ui/forms/choices.h"
#include "ui/forms/edit_table.h"
#include "ui/session/session.h"
#include "ui/words/choice_text.h"
#include "ui/words/words.h"

#include <QCheckBox>
#include <QComboBox>
#include <QLineEdit>

namespace holdband::ui {

namespace {

const std::array allReads{SensorKind::beer,          SensorKind::ambient, SensorKind::chamber,
                          SensorKind::coolant,       SensorKind::gravity, SensorKind::power,
                          SensorKind::intervalEnergy};

QStringList usualPlacements()
{
    return {Words::tr("in the beer"), Words::tr("in a thermowell"), Words::tr("taped to the wall"),
            Words::tr("in the air")};
}

/// The first reading after the last check, up to now; of all where there was no check.
Result<std::optional<Instant>> firstReadingSince(const store::LogbookFile& file,
                                                 const std::string& sensor,
                                                 const std::optional<Instant>& lastCheck)
{
    const Span since{lastCheck ? *lastCheck + Milliseconds{1} : Instant{}, file.now()};
    const auto list = store::listReadings(file, sensor, since, 1);
    HOLDBAND_TRY(list);
    return list->readings.empty() ? std::nullopt : std::optional(list->readings.front().at);
}

QString kindTitle(const Sensor& sensor)
{
    return sensor.name.empty() ? Words::tr("New sensor")
                               : Words::tr("Sensor %1").arg(shown(sensor.name));
}

} // namespace

SensorDialog::SensorDialog(Session& session, const Equipment& equipment, const Sensor& sensor,
                           QWidget* parent)
    : EquipmentDialog(session, kindTitle(sensor), Words::tr("Save sensor"), parent),
      m_format(unitFormatOf(equipment.settings, equipment.zone)), m_equipment(equipment),
      m_sensor(sensor), m_name(makeLine(Words::tr("Name"))),
      m_reads(makeChoice(Words::tr("What it reads"), this)),
      m_intervalTime(makeChoice(Words::tr("Which end of its interval a time is"), this)),
      m_setup(makeChoice(Words::tr("Setup"), this)),
      m_placement(makeChoice(Words::tr("Where the probe sits"), this)),
      m_accuracy(new QuantityField(Quantity::difference, Words::tr("Accuracy"), this)),
      m_byHand(new QCheckBox(Words::tr("&read by eye in the rounds"), this)),
      m_offsets(new EditTable(Words::tr("offset"), offsetColumns(m_format), 3, this)),
      m_ice(new IcePanel(m_format, this))
{
    addFields();
    fill();
    connect(m_reads, &QComboBox::currentIndexChanged, this, &SensorDialog::offerWhatFitsKind);
    connect(m_ice, &IcePanel::offsetFound, this, &SensorDialog::takeIcePoint);
    offerEarlierReadings();
    m_name->setFocus();
    resize(720, height());
    watchFields();
}

void SensorDialog::addFields()
{
    addRow(Words::tr("&Name"), m_name);
    addRow(Words::tr("R&eads"), m_reads);
    addRow(Words::tr("Its times &mark"), m_intervalTime);
    addRow(Words::tr("Belongs &to"), m_setup);
    addRow(Words::tr("&Probe sits"), m_placement);
    addRow(Words::tr("&Accuracy ±"), m_accuracy);
    addRow(QString(), m_byHand);
    addHeading(Words::tr("Offsets, each from a time on"));
    addWide(m_offsets);
    m_offsets->hideMoves();
    addHeading(Words::tr("Ice point"));
    addWide(m_ice);
    m_accuracy->setFormat(m_format);
    m_accuracy->setOptional(true);
    m_accuracy->setRule(aboveZero);
    m_placement->setEditable(true);
    m_placement->addItems(usualPlacements());
    m_placement->lineEdit()->setAccessibleName(Words::tr("Where the probe sits"));
}

void SensorDialog::fill()
{
    m_name->setText(shown(m_sensor.name));
    for (const SensorKind reads : allReads)
        m_reads->addItem(readsWord(reads));
    m_intervalTime->addItems(
        {Words::tr("the start of each interval"), Words::tr("the end of each interval")});
    m_intervalTime->setCurrentIndex(m_sensor.intervalTime == IntervalTime::end ? 1 : 0);
    const auto at = std::find(allReads.begin(), allReads.end(), m_sensor.reads);
    m_reads->setCurrentIndex(static_cast<int>(at - allReads.begin()));
    offerSetups(m_setup, m_equipment, m_sensor.setup.value_or(std::string()),
                Words::tr("no setup"));
    m_placement->setEditText(shown(m_sensor.placement));
    m_accuracy->set(m_sensor.accuracy);
    m_byHand->setChecked(m_sensor.readByHand);
    offerWhatFitsKind();
    m_offsets->model()->setRows(offsetRows(m_sensor.offsets, m_format));
}

SensorKind SensorDialog::chosenKind() const
{
    return allReads[static_cast<std::size_t>(std::max(0, m_reads->currentIndex()))];
}

void SensorDialog::offerWhatFitsKind()
{
    const SensorKind kind = chosenKind();
    m_intervalTime->setEnabled(kind == SensorKind::intervalEnergy);
    m_byHand->setEnabled(readsTemperature(kind));
    m_byHand->setToolTip(kind == SensorKind::gravity
                             ? Words::tr("Each batch has a row for its gravity in the rounds.")
                             : QString());
}

/// A probe that is wrong today was probably wrong yesterday: where the sensor has readings since
/// its last check, the user chooses whether the new offset holds for them too.
void SensorDialog::offerEarlierReadings()
{
    if (m_sensor.name.empty())
        return;
    std::optional<Instant> lastCheck;
    if (!m_sensor.offsets.empty())
        lastCheck = m_sensor.offsets.back().from;
    session().ask<std::optional<Instant>>(
        this,
        [name = m_sensor.name, lastCheck](const store::LogbookFile& file) {
            return firstReadingSince(file, name, lastCheck);
        },
        [this, lastCheck](const Result<std::optional<Instant>>& first) {
            if (first && *first)
                m_ice->offerEarlier(**first, lastCheck);
        });
}

void SensorDialog::takeIcePoint(const results::IcePoint& point)
{
    const Offset offset{m_ice->from().value_or(session().now()), point.offset, point.doubt,
                        Phrase::counted("ice point, %n readings", "ice point, %n reading",
                                        static_cast<std::uint64_t>(point.count))};
    const EditRow row = offsetRow(offset, -1, m_format);
    EditTableModel* model = m_offsets->model();
    const int at = model->rowCount();
    model->insertBlank(at);
    for (int column = 0; column < row.cells.size(); ++column)
        model->setCell(at, column, row.cells[column]);
    m_offsets->chooseRow(at);
}

Result<Sensor> SensorDialog::typedSensor()
{
    Sensor sensor = m_sensor;
    sensor.name = core(m_name->text().trimmed());
    sensor.reads = chosenKind();
    sensor.intervalTime = m_intervalTime->isEnabled() && m_intervalTime->currentIndex() == 1
                              ? IntervalTime::end
                              : IntervalTime::start;
    const std::string setup = chosenIn(m_setup);
    sensor.setup = setup.empty() ? std::nullopt : std::optional(setup);
    sensor.placement = core(m_placement->currentText().trimmed());
    sensor.readByHand = m_byHand->isEnabled() && m_byHand->isChecked();
    if (sensor.name.empty()) {
        m_name->setFocus();
        return dataProblem(Phrase::tr("the sensor needs a name"));
    }
    HOLDBAND_TRY(readField(m_accuracy, sensor.accuracy));
    auto offsets = offsetsOf(m_offsets->model()->rows(), m_sensor.offsets, m_format);
    if (!offsets) {
        m_offsets->check();
        return failure(offsets.error());
    }
    sensor.offsets = std::move(*offsets);
    return sensor;
}

void SensorDialog::save()
{
    saveThing<Sensor>(typedSensor(), m_sensor.name,
                      {store::HistoryVerb::sensorAdded, store::HistoryVerb::sensorChanged,
                       store::addSensor, store::updateSensor});
}

} // namespace holdband::ui
