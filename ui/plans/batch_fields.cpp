#include "ui/plans/batch_fields.h"

#include "core/text/durations.h"
#include "core/text/phrase.h"
#include "ui/forms/buddy.h"
#include "ui/forms/choices.h"
#include "ui/forms/instant_field.h"
#include "ui/forms/number_rules.h"
#include "ui/forms/quantity_field.h"
#include "ui/words/band_times_text.h"
#include "ui/words/words.h"

#include <QComboBox>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>

namespace holdband::ui {

namespace {

QLineEdit* makeLine(const QString& name, QWidget* parent)
{
    auto* line = new QLineEdit(parent);
    line->setAccessibleName(name);
    return line;
}

QFormLayout* addColumn(QHBoxLayout* columns)
{
    auto* column = new QFormLayout;
    column->setHorizontalSpacing(10);
    column->setVerticalSpacing(6);
    column->setFieldGrowthPolicy(QFormLayout::ExpandingFieldsGrow);
    columns->addLayout(column, 1);
    return column;
}

void addField(QFormLayout* column, const QString& words, QWidget* field)
{
    auto* label = new QLabel(words);
    label->setMargin(4);
    setBuddyOf(*label, *field);
    column->addRow(label, field);
}

/// A field that is left empty has the usual length.
QString usualText(Milliseconds length)
{
    return Words::tr("%1 if empty").arg(shown(durationText(length, decimalSign())));
}

void hideRows(const QFormLayout* column, std::initializer_list<QWidget*> fields)
{
    for (QWidget* field : fields) {
        column->labelForField(field)->hide();
        field->hide();
    }
}

std::optional<Hours> hoursOf(const std::optional<Milliseconds>& length)
{
    return length ? std::optional<Hours>(*length) : std::nullopt;
}

} // namespace

BatchFields::BatchFields(For what, QWidget* parent)
    : QWidget(parent), m_name(makeLine(Words::tr("Name"), this)),
      m_setup(makeChoice(Words::tr("Setup"), this)), m_vessel(makeLine(Words::tr("Vessel"), this)),
      m_beer(makeChoice(Words::tr("Beer sensor"), this)),
      m_ambient(makeChoice(Words::tr("Ambient sensor"), this)),
      m_pitched(new InstantField(Words::tr("Pitched"), this)),
      m_ended(new InstantField(Words::tr("Ended"), this)),
      m_volume(new QuantityField(Quantity::volume, Words::tr("Volume"), this)),
      m_original(new QuantityField(Quantity::gravity, Words::tr("Original gravity"), this)),
      m_final(new QuantityField(Quantity::gravity, Words::tr("Final gravity"), this)),
      m_gap(new QuantityField(Quantity::hours, Words::tr("Gap limit"), this)),
      m_ignoreShorterThan(
          new QuantityField(Quantity::hours, Words::tr("Ignore shorter than"), this)),
      m_dwell(new QuantityField(Quantity::hours, Words::tr("Settled after"), this)),
      m_return(new QuantityField(Quantity::hours, Words::tr("Excursion ends after"), this))
{
    for (QuantityField* field :
         {m_volume, m_original, m_final, m_gap, m_ignoreShorterThan, m_dwell, m_return})
        field->setOptional(true);
    m_original->setRule(gravityRule);
    m_final->setRule(gravityRule);
    m_volume->setRule(aboveZero);
    m_gap->setRule(aboveZero);
    for (QuantityField* field : {m_ignoreShorterThan, m_dwell, m_return})
        field->setRule(notNegative);
    m_dwell->setToolTip(dwellTip());
    m_return->setToolTip(returnTip());
    m_ended->setOptional(true);
    m_ended->edit()->setPlaceholderText(Words::tr("still running"));
    m_vessel->setPlaceholderText(Words::tr("optional"));
    m_gap->edit()->setPlaceholderText(Words::tr("automatic"));
    const BandTimes usual;
    m_dwell->edit()->setPlaceholderText(usualText(usual.dwell));
    m_return->edit()->setPlaceholderText(usualText(usual.returnTime));
    layOut(what);
    connect(m_setup, &QComboBox::currentIndexChanged, this, &BatchFields::fillSensors);
}

void BatchFields::layOut(For what)
{
    auto* columns = new QHBoxLayout(this);
    columns->setContentsMargins(0, 0, 0, 0);
    columns->setSpacing(18);
    QFormLayout* left = addColumn(columns);
    addField(left, Words::tr("&Name"), m_name);
    addField(left, Words::tr("Set&up"), m_setup);
    addField(left, Words::tr("&Vessel"), m_vessel);
    addField(left, Words::tr("&Beer sensor"), m_beer);
    addField(left, Words::tr("&Ambient"), m_ambient);
    addField(left, Words::tr("Se&ttled after"), m_dwell);
    addField(left, Words::tr("Excurs&ion ends after"), m_return);
    QFormLayout* right = addColumn(columns);
    addField(right, Words::tr("&Pitched"), m_pitched);
    addField(right, Words::tr("&Ended"), m_ended);
    addField(right, Words::tr("Volu&me"), m_volume);
    addField(right, Words::tr("&Original gravity"), m_original);
    addField(right, Words::tr("&Final gravity"), m_final);
    addField(right, Words::tr("Gap &limit"), m_gap);
    addField(right, Words::tr("I&gnore shorter than"), m_ignoreShorterThan);
    if (what == For::newBatch) {
        hideRows(left, {m_dwell, m_return});
        hideRows(right, {m_ended, m_final, m_gap, m_ignoreShorterThan});
    }
}

void BatchFields::setFormData(const BatchFormData& formData, std::function<Instant()> now)
{
    m_formData = formData;
    for (InstantField* field : {m_pitched, m_ended}) {
        field->setZone(formData.format.zone);
        field->setClock(now);
    }
    for (QuantityField* field :
         {m_volume, m_original, m_final, m_gap, m_ignoreShorterThan, m_dwell, m_return})
        field->setFormat(formData.format);
}

void BatchFields::setBatch(const Batch& batch)
{
    m_batch = batch;
    m_name->setText(shown(batch.name));
    m_vessel->setText(shown(batch.vessel));
    offerChoices(m_setup, offeredSetups(m_formData, batch.setup), batch.setup, {});
    fillSensors();
    m_pitched->setInstant(batch.pitched);
    m_ended->setInstant(batch.ended);
    m_volume->set(batch.volume);
    m_original->set(batch.originalGravity);
    m_final->set(batch.finalGravity);
    m_gap->set(hoursOf(batch.gapLimit));
    m_ignoreShorterThan->set(
        batch.ignoreShorterThan.count() == 0 ? std::nullopt : hoursOf(batch.ignoreShorterThan));
    m_dwell->set(hoursOf(batch.bandTimes.dwell));
    m_return->set(hoursOf(batch.bandTimes.returnTime));
}

void BatchFields::fillSensors()
{
    const std::string setup = chosenIn(m_setup);
    const bool own = setup == m_batch.setup;
    const auto beer = offeredSensors(m_formData, SensorKind::beer, setup, m_batch.beerSensor);
    offerChoices(m_beer, beer, own ? m_batch.beerSensor : std::string("-"),
                 beer.empty() ? Words::tr("none yet") : QString());
    const std::string ambient = m_batch.ambientSensor.value_or(std::string());
    offerChoices(m_ambient, offeredSensors(m_formData, SensorKind::ambient, setup, ambient),
                 ambient, Words::tr("none"));
}

Result<Batch> BatchFields::readTimes(Batch into)
{
    const auto pitched = m_pitched->instant();
    if (!pitched || !*pitched) {
        m_pitched->setFocus();
        return pitched ? dataProblem(Phrase::tr("the time of pitching is missing"))
                       : failure(pitched.error());
    }
    into.pitched = **pitched;
    const auto ended = m_ended->instant();
    const bool early = ended && *ended && **ended <= into.pitched;
    if (!ended || early) {
        m_ended->setFocus();
        return ended ? dataProblem(Phrase::tr("the batch ends before it is pitched"), {},
                                   Phrase::tr("check both times"))
                     : failure(ended.error());
    }
    into.ended = *ended;
    return into;
}

Result<Batch> BatchFields::readQuantities(Batch into)
{
    std::optional<Hours> gap, ignoreShorterThan, dwell, returnTime;
    HOLDBAND_TRY(readField(m_volume, into.volume));
    HOLDBAND_TRY(readField(m_original, into.originalGravity));
    HOLDBAND_TRY(readField(m_final, into.finalGravity));
    HOLDBAND_TRY(readField(m_gap, gap));
    HOLDBAND_TRY(readField(m_ignoreShorterThan, ignoreShorterThan));
    HOLDBAND_TRY(readField(m_dwell, dwell));
    HOLDBAND_TRY(readField(m_return, returnTime));
    into.gapLimit = gap ? std::optional(toMilliseconds(*gap)) : std::nullopt;
    into.ignoreShorterThan =
        ignoreShorterThan ? toMilliseconds(*ignoreShorterThan) : Milliseconds{0};
    const BandTimes usual;
    into.bandTimes = {dwell ? toMilliseconds(*dwell) : usual.dwell,
                      returnTime ? toMilliseconds(*returnTime) : usual.returnTime};
    return into;
}

Result<Batch> BatchFields::read(Batch into)
{
    into.name = core(m_name->text().trimmed());
    into.setup = chosenIn(m_setup);
    into.vessel = core(m_vessel->text().trimmed());
    into.beerSensor = chosenIn(m_beer);
    const std::string ambient = chosenIn(m_ambient);
    into.ambientSensor = ambient.empty() ? std::nullopt : std::optional(ambient);
    if (into.name.empty()) {
        m_name->setFocus();
        return dataProblem(Phrase::tr("the batch needs a name"));
    }
    if (into.setup.empty()) {
        m_setup->setFocus();
        return dataProblem(Phrase::tr("the batch needs a setup"), {},
                           Phrase::tr("add one on the Equipment page"));
    }
    if (into.beerSensor.empty()) {
        m_beer->setFocus();
        return dataProblem(Phrase::tr("without a beer sensor there can be no verdict"), {},
                           Phrase::tr("add one on the Equipment page; one read by hand will do"));
    }
    auto timed = readTimes(std::move(into));
    return timed ? readQuantities(std::move(*timed)) : timed;
}

} // namespace holdband::ui
