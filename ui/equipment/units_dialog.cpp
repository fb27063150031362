#include "ui/equipment/units_dialog.h"

#include "core/assign_result.h"
#include "core/store/records/equipment.h"
#include "core/text/zone.h"
#include "ui/forms/choices.h"
#include "ui/forms/save_row.h"
#include "ui/session/session.h"
#include "ui/theme/theme.h"
#include "ui/words/words.h"

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QTimeZone>

namespace holdband::ui {

namespace {

constexpr int usIndex = 0;

/// Saves only the settings of this dialog: others may have changed meanwhile.
Done saveUnits(const store::Change& change, const LogbookSettings& typed)
{
    LogbookSettings settings;
    HOLDBAND_TRY(holdband::assignResult(store::readSettings(change.logbook()), settings));
    settings.units = typed.units;
    settings.zone = typed.zone;
    settings.currency = typed.currency;
    return store::writeSettings(change, settings);
}

bool isCurrency(const QString& text)
{
    return text.isEmpty() ||
           (text.size() == 3 && std::all_of(text.begin(), text.end(), [](QChar letter) {
                return letter >= QLatin1Char('A') && letter <= QLatin1Char('Z');
            }));
}

} // namespace

UnitsDialog::UnitsDialog(Session& session, const LogbookSettings& settings, QWidget* parent)
    : FormDialog(session, Words::tr("Units, zone and currency"), Words::tr("Save settings"),
                 parent),
      m_units(makeChoice(Words::tr("Units"), this)), m_zone(makeChoice(Words::tr("Zone"), this)),
      m_currency(makeLine(Words::tr("Currency")))
{
    addWide(makeLabel(
        Words::tr("They set how everything is shown and typed. Stored readings are unchanged. The "
                  "zone also sets where days begin, and so when a round was due."),
        "muted", this));
    addRow(Words::tr("&Units"), m_units);
    addRow(Words::tr("&Zone"), m_zone);
    addRow(Words::tr("&Currency"), m_currency);
    m_units->addItems({Words::tr("°F and gallons"), Words::tr("°C and litres")});
    m_units->setCurrentIndex(settings.units == UnitSystem::us ? usIndex : usIndex + 1);
    m_zone->setEditable(true);
    for (const QByteArray& zone : QTimeZone::availableTimeZoneIds())
        m_zone->addItem(QString::fromLatin1(zone));
    m_zone->setCurrentText(shown(settings.zone));
    m_currency->setText(shown(settings.currency));
    m_currency->setPlaceholderText(Words::tr("three letters: USD, EUR, GBP …"));
    m_units->setFocus();
    watchFields();
}

void UnitsDialog::save()
{
    LogbookSettings typed;
    typed.units = m_units->currentIndex() == usIndex ? UnitSystem::us : UnitSystem::metric;
    typed.zone = core(m_zone->currentText().trimmed());
    const QString currency = m_currency->text().trimmed().toUpper();
    typed.currency = core(currency);
    if (const auto zone = Zone::named(typed.zone); !zone)
        return refuse(sentence(zone.error()), m_zone);
    if (!isCurrency(currency))
        return refuse(Words::tr("Three letters, such as USD or EUR, or leave it empty."),
                      m_currency);
    commitChange({store::HistoryVerb::settingsChanged},
                 [typed](const store::Change& change) { return saveUnits(change, typed); });
}

void openUnits(Session& session, QWidget* parent)
{
    if (!session.isOpen() || session.readOnly())
        return;
    session.ask<LogbookSettings>(parent, store::readSettings,
                                 [&session, parent](Result<LogbookSettings> settings) {
                                     if (settings)
                                         (new UnitsDialog(session, *settings, parent))->open();
                                 });
}

} // namespace holdband::ui
