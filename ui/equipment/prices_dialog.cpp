#include "ui/equipment/prices_dialog.h"

#include "core/store/records/equipment.h"
#include "core/text/phrase.h"
#include "core/text/times.h"
#include "ui/equipment/tariff_page.h"
#include "ui/forms/edit_table.h"
#include "ui/forms/instant_field.h"
#include "ui/forms/quantity_field.h"
#include "ui/forms/save_row.h"
#include "ui/session/session.h"
#include "ui/words/words.h"

#include <QLineEdit>
#include <QPushButton>
#include <QTabWidget>
#include <algorithm>

namespace holdband::ui {

PricesDialog::PricesDialog(Session& session, const Equipment& equipment, QWidget* parent)
    : FormDialog(session, Words::tr("Price of energy"), Words::tr("Save prices"), parent),
      m_format(unitFormatOf(equipment.settings, equipment.zone)), m_settings(equipment.settings),
      m_currency(makeLine(Words::tr("Currency"))),
      m_add(new QPushButton(Words::tr("&Another price from a date on"), this)),
      m_tabs(new QTabWidget(this))
{
    m_tabs->setDocumentMode(true); // no second background behind the fields
    m_currency->setText(shown(m_settings.currency));
    m_currency->setPlaceholderText(QStringLiteral("USD, EUR, …"));
    m_add->setAutoDefault(false);
    m_add->setSizePolicy(QSizePolicy::Maximum, QSizePolicy::Fixed);
    addRow(Words::tr("&Currency"), m_currency);
    addWide(m_tabs);
    addWide(m_add);
    addPage(std::nullopt, m_settings.tariff);
    for (const TariffChange& change : m_settings.tariffChanges)
        addPage(change.from, change.tariff);
    m_tabs->setCurrentIndex(0);
    connect(m_add, &QPushButton::clicked, this, [this] {
        const auto last = page(m_tabs->count() - 1)->tariff();
        addPage(this->session().now(), last ? *last : Tariff{});
        setDirty();
        QMetaObject::invokeMethod(
            this, [this] { fitToScreen(); }, Qt::QueuedConnection); // after the layout is done
    });
    resize(680, height());
    watchFields();
}

TariffPage* PricesDialog::page(int index) const
{
    return qobject_cast<TariffPage*>(m_tabs->widget(index));
}

void PricesDialog::addPage(std::optional<Instant> from, const Tariff& tariff)
{
    auto* made = new TariffPage(
        m_format, [this] { return session().now(); }, from, tariff);
    m_tabs->addTab(made, QString());
    m_tabs->setCurrentWidget(made);
    connect(made->windows(), &EditTable::edited, this, &PricesDialog::setDirty);
    connect(made->price(), &QuantityField::edited, this, &PricesDialog::setDirty);
    if (from) {
        connect(made->fromField(), &InstantField::edited, this, &PricesDialog::nameTabs);
        connect(made->fromField(), &InstantField::edited, this, &PricesDialog::setDirty);
        connect(made->removeButton(), &QPushButton::clicked, this,
                [this, made] { removePage(made); });
    }
    nameTabs();
}

void PricesDialog::removePage(TariffPage* page)
{
    m_tabs->removeTab(m_tabs->indexOf(page));
    page->deleteLater();
    setDirty();
}

void PricesDialog::nameTabs()
{
    for (int i = 0; i < m_tabs->count(); ++i) {
        const bool first = page(i)->isFirst();
        m_tabs->setTabText(
            i, first ? Words::tr("At first")
                     : Words::tr("From %1").arg(page(i)->fromField()->edit()->text().left(10)));
    }
}

Result<LogbookSettings> PricesDialog::typedSettings()
{
    LogbookSettings settings = m_settings;
    settings.currency = core(m_currency->text().trimmed().toUpper());
    if (!settings.currency.empty() && settings.currency.size() != 3) {
        m_currency->setFocus();
        return dataProblem(Phrase::tr("a currency has three letters"), {},
                           Phrase::tr("write it such as USD or EUR"));
    }
    settings.tariffChanges.clear();
    for (int i = 0; i < m_tabs->count(); ++i) {
        m_tabs->setCurrentIndex(i);
        auto tariff = page(i)->tariff();
        HOLDBAND_TRY(tariff);
        if (page(i)->isFirst()) {
            settings.tariff = std::move(*tariff);
            continue;
        }
        const auto from = page(i)->from();
        HOLDBAND_TRY(from);
        settings.tariffChanges.push_back({*from, std::move(*tariff)});
    }
    auto& changes = settings.tariffChanges;
    const auto earlier = [](const TariffChange& a, const TariffChange& b) {
        return a.from < b.from;
    };
    std::sort(changes.begin(), changes.end(), earlier);
    for (std::size_t i = 1; i < changes.size(); ++i) {
        if (changes[i].from == changes[i - 1].from)
            return dataProblem(Phrase::tr("two prices hold from the same time on"), {},
                               Phrase::tr("change one of them"));
    }
    return settings;
}

namespace {

/// Saves only the prices: other settings may have changed meanwhile.
Done savePrices(const store::Change& change, const LogbookSettings& typed)
{
    auto settings = store::readSettings(change.logbook());
    HOLDBAND_TRY(settings);
    settings->currency = typed.currency;
    settings->tariff = typed.tariff;
    settings->tariffChanges = typed.tariffChanges;
    return store::writeSettings(change, *settings);
}

} // namespace

void PricesDialog::save()
{
    const int seen = m_tabs->currentIndex();
    const auto settings = typedSettings();
    if (!settings)
        return foot()->refuse(sentence(settings.error()));
    m_tabs->setCurrentIndex(seen);
    commitChange(
        {store::HistoryVerb::pricesChanged},
        [typed = *settings](const store::Change& change) { return savePrices(change, typed); });
}

} // namespace holdband::ui
