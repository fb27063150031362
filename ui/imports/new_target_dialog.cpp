#include "ui/imports/new_target_dialog.h"

#include "core/store/records/equipment.h"
#include "core/text/phrase.h"
#include "ui/session/session.h"
#include "ui/theme/theme.h"
#include "ui/words/words.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

namespace holdband::ui {

namespace {

constexpr SensorKind readsChoices[] = {
    SensorKind::beer,    SensorKind::ambient, SensorKind::chamber,       SensorKind::coolant,
    SensorKind::gravity, SensorKind::power,   SensorKind::intervalEnergy};

Done addTarget(const store::LogbookFile& file, NewTargetDialog::Kind kind, const std::string& name,
               SensorKind reads, const std::optional<std::string>& setup)
{
    auto change = store::Change::begin(file, {store::HistoryVerb::targetAdded, {name}});
    HOLDBAND_TRY(change);
    if (kind == NewTargetDialog::Kind::sensor) {
        Sensor sensor;
        sensor.name = name;
        sensor.reads = reads;
        sensor.setup = setup;
        HOLDBAND_TRY(store::addSensor(*change, sensor));
    } else {
        Meter meter;
        meter.name = name;
        meter.setup = setup.value_or("");
        HOLDBAND_TRY(store::addMeter(*change, meter));
    }
    return change->commit();
}

} // namespace

NewTargetDialog::NewTargetDialog(Session& session, Kind kind, const QString& name, QWidget* parent)
    : QDialog(parent), m_session(&session), m_kind(kind), m_name(new QLineEdit(name, this)),
      m_reads(new QComboBox(this)), m_setup(new QComboBox(this)),
      m_message(makeLabel({}, "warn", this))
{
    const bool sensor = kind == Kind::sensor;
    setWindowTitle(sensor ? Words::tr("A new sensor") : Words::tr("A new meter"));
    m_reads->addItems({Words::tr("the beer"), Words::tr("the room around it"),
                       Words::tr("the chamber"), Words::tr("the coolant"), Words::tr("gravity"),
                       Words::tr("power"), Words::tr("energy of each interval")});
    auto* form = new QFormLayout;
    form->addRow(Words::tr("&Name"), m_name);
    if (sensor)
        form->addRow(Words::tr("It &reads"), m_reads);
    form->addRow(sensor ? Words::tr("It belongs &to") : Words::tr("It &counts for"), m_setup);
    m_reads->setVisible(sensor);
    auto* buttons = new QDialogButtonBox(this);
    m_make = buttons->addButton(Words::tr("&Set it up"), QDialogButtonBox::AcceptRole);
    buttons->addButton(QDialogButtonBox::Cancel);
    setRole(m_make, "main");
    m_make->setDefault(true);
    auto* layout = new QVBoxLayout(this);
    layout->addLayout(form);
    layout->addWidget(m_message);
    layout->addWidget(buttons);
    m_message->hide();
    connect(buttons, &QDialogButtonBox::accepted, this, &NewTargetDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    m_name->selectAll();
    setMinimumWidth(360);
    fetchSetups();
}

void NewTargetDialog::fetchSetups()
{
    m_session->ask<std::vector<holdband::Setup>>(
        this, store::readSetups, [this](Result<std::vector<holdband::Setup>> setups) {
            QStringList names;
            for (const holdband::Setup& setup : setups ? *setups : std::vector<holdband::Setup>()) {
                if (!setup.retired)
                    names << shown(setup.name);
            }
            takeSetups(names);
        });
}

void NewTargetDialog::takeSetups(const QStringList& setups)
{
    m_setup->clear();
    if (m_kind == Kind::sensor)
        m_setup->addItem(Words::tr("no setup"));
    m_setup->addItems(setups);
    if (m_kind == Kind::meter && setups.isEmpty()) {
        m_make->setEnabled(false);
        m_message->setText(Words::tr("A meter counts for a setup, and there is none yet: add "
                                     "one on the page Equipment."));
        m_message->show();
    }
}

QString NewTargetDialog::message() const
{
    return m_message->text();
}

void NewTargetDialog::refuse(const Problem& problem)
{
    m_message->setText(sentence(problem));
    m_message->show();
    m_make->setEnabled(true);
    m_name->setFocus();
}

void NewTargetDialog::accept()
{
    if (!m_make->isEnabled())
        return;
    if (m_session->readOnly())
        return refuse(
            {ProblemKind::data, Phrase::tr("the logbook is open for reading only"), {}, {}});
    m_make->setEnabled(false);
    const bool none = m_kind == Kind::sensor && m_setup->currentIndex() <= 0;
    const auto setup = none ? std::nullopt : std::optional(core(m_setup->currentText()));
    const std::string name = core(m_name->text().trimmed());
    const SensorKind reads = readsChoices[std::max(m_reads->currentIndex(), 0)];
    // With a Result<bool>, because the session passes on values, not void.
    m_session->change<bool>(
        this,
        [kind = m_kind, name, reads, setup](const store::LogbookFile& file) -> Result<bool> {
            return addTarget(file, kind, name, reads, setup).map([] { return true; });
        },
        [this, name](Result<bool> added) {
            if (!added)
                return refuse(added.error());
            Q_EMIT made(shown(name));
            QDialog::accept();
        });
}

} // namespace holdband::ui
