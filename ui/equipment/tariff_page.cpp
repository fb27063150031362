#include "ui/equipment/tariff_page.h"

#include "core/text/phrase.h"
#include "ui/equipment/window_rows.h"
#include "ui/forms/buddy.h"
#include "ui/forms/choices.h"
#include "ui/forms/edit_table.h"
#include "ui/forms/instant_field.h"
#include "ui/theme/theme.h"
#include "ui/words/words.h"

#include <QFormLayout>
#include <QLabel>
#include <QPushButton>

namespace holdband::ui {

TariffPage::TariffPage(const UnitFormat& format, std::function<Instant()> now,
                       std::optional<Instant> from, const Tariff& tariff, QWidget* parent)
    : QWidget(parent), m_format(format), m_tariff(tariff),
      m_price(new QuantityField(Quantity::money, Words::tr("A kilowatt-hour costs"), this)),
      m_windows(new EditTable(Words::tr("time-of-use window"), windowColumns(format), 0, this))
{
    if (from) {
        m_from = new InstantField(Words::tr("Holds from"), this);
        m_from->setZone(format.zone);
        m_from->setClock(std::move(now));
        m_from->setInstant(from);
        m_remove = new QPushButton(Words::tr("Remove this change of price"), this);
        m_remove->setAutoDefault(false);
        m_remove->setSizePolicy(QSizePolicy::Maximum, QSizePolicy::Fixed);
    }
    m_price->setFormat(format);
    m_price->setOptional(true);
    m_price->setRule(notNegative);
    m_price->set(tariff.pricePerKwh);
    m_windows->model()->setRows(windowRows(tariff.windows, format));
    layOut();
}

void TariffPage::layOut()
{
    auto* form = new QFormLayout(this);
    form->setContentsMargins(12, 10, 12, 8);
    form->setHorizontalSpacing(12);
    const auto add = [&](const QString& words, QWidget* field) {
        auto* label = new QLabel(words, this);
        label->setMargin(4);
        setBuddyOf(*label, *field);
        form->addRow(label, field);
    };
    if (m_from)
        add(Words::tr("Holds from"), m_from);
    add(Words::tr("A kWh costs"), m_price);
    form->addRow(makeLabel(
        Words::tr("In these windows of local time it costs something else; the first that "
                  "fits decides."),
        "muted", this));
    form->addRow(m_windows);
    if (m_remove)
        form->addRow(m_remove);
}

Result<Tariff> TariffPage::tariff()
{
    Tariff tariff;
    HOLDBAND_TRY(readField(m_price, tariff.pricePerKwh));
    auto windows = windowsOf(m_windows->model()->rows(), m_tariff.windows, m_format);
    if (!windows) {
        m_windows->check();
        return failure(windows.error());
    }
    tariff.windows = std::move(*windows);
    if (!tariff.windows.empty() && !tariff.pricePerKwh) {
        m_price->setFocus();
        return dataProblem(Phrase::tr("outside all windows there is no price"), {},
                           Phrase::tr("type what a kWh costs at other times"));
    }
    return tariff;
}

Result<Instant> TariffPage::from()
{
    const auto at = m_from->instant();
    if (at && *at)
        return **at;
    m_from->setFocus();
    return at ? dataProblem(Phrase::tr("the time from which this price holds is missing"))
              : failure(at.error());
}

} // namespace holdband::ui
