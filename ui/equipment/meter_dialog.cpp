#include "ui/equipment/meter_dialog.h"

#include "core/store/records/equipment.h"
#include "core/text/phrase.h"
#include "ui/equipment/move_rows.h"
#include "ui/forms/choices.h"
#include "ui/forms/edit_table.h"
#include "ui/forms/instant_field.h"
#include "ui/forms/quantity_field.h"
#include "ui/session/session.h"
#include "ui/theme/theme.h"
#include "ui/words/words.h"

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <cmath>

namespace holdband::ui {

namespace {

QString accuracyRule(double fraction)
{
    return fraction > 0.0 && fraction < 1.0
               ? QString()
               : Words::tr("the accuracy must be above 0 % and below 100 %");
}

} // namespace

MeterDialog::MeterDialog(Session& session, const Equipment& equipment, const Meter& meter,
                         QWidget* parent)
    : EquipmentDialog(session,
                      meter.name.empty() ? Words::tr("New meter")
                                         : Words::tr("Meter: %1").arg(shown(meter.name)),
                      Words::tr("Save meter"), parent),
      m_format(unitFormatOf(equipment.settings, equipment.zone)), m_equipment(equipment),
      m_meter(meter), m_name(makeLine(Words::tr("Name"))),
      m_setup(makeChoice(Words::tr("Setup"), this)),
      m_resolution(new QuantityField(Quantity::energy, Words::tr("Last digit shown"), this)),
      m_top(new QuantityField(Quantity::energy, Words::tr("Starts again at 0 above"), this)),
      m_topText(makeLabel({}, "muted", this)),
      m_accuracy(new QuantityField(Quantity::percent, Words::tr("Accuracy"), this)),
      m_from(new InstantField(Words::tr("In service from"), this)),
      m_to(new InstantField(Words::tr("In service to"), this)),
      m_moves(new EditTable(Words::tr("move"), moveColumns(equipment.setups, m_format), 1, this))
{
    addFields();
    fill();
    m_name->setFocus();
    watchFields();
}

void MeterDialog::addFields()
{
    addRow(Words::tr("&Name"), m_name);
    addRow(Words::tr("Counts &for"), m_setup);
    addRow(Words::tr("&Last digit shown"), m_resolution);
    addRow(Words::tr("Rolls &over at"), m_top);
    addRow({}, m_topText);
    addRow(Words::tr("&Accuracy ±"), m_accuracy);
    addRow(Words::tr("In &service from"), m_from);
    addRow(Words::tr("&To"), m_to);
    addHeading(Words::tr("Moves"));
    addWide(makeLabel(Words::tr("From a time on it counts for another setup, or is not in use."),
                      "muted", this));
    addWide(m_moves);
    m_moves->hideMoves();
    for (QuantityField* field : {m_resolution, m_top, m_accuracy}) {
        field->setFormat(m_format);
        field->setOptional(true);
    }
    m_resolution->setRule(aboveZero);
    m_top->setRule(aboveZero);
    m_accuracy->setRule(accuracyRule);
    for (InstantField* field : {m_from, m_to}) {
        field->setZone(m_format.zone);
        field->setOptional(true);
        field->setClock([this] { return session().now(); });
    }
    for (QuantityField* field : {m_top, m_resolution})
        connect(field, &QuantityField::edited, this, &MeterDialog::showTop);
    m_from->edit()->setPlaceholderText(Words::tr("always"));
    m_to->edit()->setPlaceholderText(Words::tr("still"));
}

void MeterDialog::fill()
{
    m_name->setText(shown(m_meter.name));
    offerSetups(m_setup, m_equipment, m_meter.setup);
    m_resolution->set(m_meter.resolution);
    m_top->set(m_meter.rollsOverAt);
    m_accuracy->set(m_meter.accuracy);
    showTop();
    m_from->setInstant(m_meter.from);
    m_to->setInstant(m_meter.to);
    m_moves->model()->setRows(moveRows(m_meter.moves, m_format));
}

/// Where the register rolls over. The user may type the highest value that it shows, such as
/// 999.99: then it rolls over one unit further.
std::optional<Energy> MeterDialog::topMeant() const
{
    const auto typed = m_top->value<Energy>();
    if (!typed || !*typed)
        return std::nullopt;
    const auto resolution = m_resolution->value<Energy>();
    const double unit = resolution && *resolution ? (*resolution)->kilowattHours() : lastDigit();
    const double beyond = (*typed)->kilowattHours() + unit;
    const double power = std::pow(10.0, std::round(std::log10(beyond)));
    return std::abs(beyond - power) < 1e-9 * power ? std::optional(Energy::kilowattHours(power))
                                                   : *typed;
}

/// The unit of the last digit of the typed highest value.
double MeterDialog::lastDigit() const
{
    const QString text = m_top->edit()->text().trimmed();
    const auto point = text.lastIndexOf(QLatin1Char(m_format.sign));
    return point < 0 ? 1.0 : std::pow(10.0, -static_cast<double>(text.size() - point - 1));
}

void MeterDialog::showTop()
{
    const auto top = topMeant();
    m_topText->setText(top ? Words::tr("The register starts again at 0 instead of %1 kWh.")
                                 .arg(numberText(top->kilowattHours(), 0))
                           : Words::tr("The highest reading it can show, all nines, or where it "
                                       "starts again at 0; optional."));
}

Done MeterDialog::readQuantities(Meter& into)
{
    HOLDBAND_TRY(readField(m_resolution, into.resolution));
    HOLDBAND_TRY(readField(m_top, into.rollsOverAt));
    into.rollsOverAt = topMeant();
    return readField(m_accuracy, into.accuracy);
}

Done MeterDialog::readTimes(Meter& into)
{
    const auto from = m_from->instant();
    const auto to = m_to->instant();
    if (!from || !to) {
        (from ? m_to : m_from)->setFocus();
        return failure(from ? to.error() : from.error());
    }
    if (*from && *to && **to <= **from) {
        m_to->setFocus();
        return dataProblem(Phrase::tr("the service ends before it begins"), {},
                           Phrase::tr("check both times"));
    }
    into.from = *from;
    into.to = *to;
    return {};
}

Result<Meter> MeterDialog::typedMeter()
{
    Meter meter = m_meter;
    meter.name = core(m_name->text().trimmed());
    meter.setup = chosenIn(m_setup);
    if (meter.name.empty()) {
        m_name->setFocus();
        return dataProblem(Phrase::tr("the meter needs a name"));
    }
    if (meter.setup.empty()) {
        m_setup->setFocus();
        return dataProblem(Phrase::tr("the meter needs a setup that it counts for"), {},
                           Phrase::tr("add a setup first"));
    }
    HOLDBAND_TRY(readQuantities(meter));
    HOLDBAND_TRY(readTimes(meter));
    auto moves = movesOf(m_moves->model()->rows(), m_meter.moves, m_format);
    if (!moves) {
        m_moves->check();
        return failure(moves.error());
    }
    meter.moves = std::move(*moves);
    return meter;
}

void MeterDialog::save()
{
    saveThing<Meter>(typedMeter(), m_meter.name,
                     {store::HistoryVerb::meterAdded, store::HistoryVerb::meterChanged,
                      store::addMeter, store::updateMeter});
}

} // namespace holdband::ui
