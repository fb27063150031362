#include "ui/equipment/setup_dialog.h"

#include "core/store/records/equipment.h"
#include "core/text/phrase.h"
#include "ui/equipment/part_rows.h"
#include "ui/forms/choices.h"
#include "ui/forms/edit_table.h"
#include "ui/forms/quantity_field.h"
#include "ui/theme/theme.h"
#include "ui/words/words.h"

#include <QLabel>
#include <QLineEdit>
#include <QSpinBox>

namespace holdband::ui {

SetupDialog::SetupDialog(Session& session, const UnitFormat& format, const Setup& setup,
                         QWidget* parent)
    : EquipmentDialog(session,
                      setup.name.empty() ? Words::tr("New setup")
                                         : Words::tr("Setup %1").arg(shown(setup.name)),
                      Words::tr("Save setup"), parent),
      m_format(format), m_setup(setup), m_name(makeLine(Words::tr("Name"))),
      m_kind(makeLine(Words::tr("Kind"))), m_vessels(new QSpinBox(this)),
      m_power(new QuantityField(Quantity::power, Words::tr("Rated power"), this)),
      m_parts(new EditTable(Words::tr("part"), partColumns(format), 0, this)),
      m_sum(makeLabel({}, "muted", this)),
      m_ratings(new EditTable(Words::tr("rating"), ratingColumns(format), 0, this))
{
    addParts();
    m_name->setText(shown(setup.name));
    m_kind->setText(shown(setup.kind));
    m_vessels->setValue(setup.vessels);
    m_power->set(setup.ratedPower);
    m_parts->model()->setRows(partRows(setup.parts, format));
    m_ratings->model()->setRows(ratingRows(setup.ratings, format));
    m_sum->setText(partsSumText(m_parts->model()->rows(), format));
    connect(m_parts, &EditTable::edited, this,
            [this] { m_sum->setText(partsSumText(m_parts->model()->rows(), m_format)); });
    m_name->setFocus();
    resize(620, height());
    watchFields();
}

void SetupDialog::addParts()
{
    addRow(Words::tr("&Name"), m_name);
    m_kind->setPlaceholderText(Words::tr("coolant loop, cabinet, …"));
    addRow(Words::tr("&Kind"), m_kind);
    m_vessels->setRange(1, 99);
    m_vessels->setAccessibleName(Words::tr("Vessels"));
    addRow(Words::tr("&Vessels"), m_vessels);
    m_power->setFormat(m_format);
    m_power->setOptional(true);
    m_power->setRule(aboveZero);
    addRow(Words::tr("Rated &power"), m_power);
    addHeading(Words::tr("Parts"));
    addWide(m_parts);
    addWide(m_sum);
    addHeading(Words::tr("Ratings"));
    const QString scale = Words::tr("1 is poor and 5 is good, for every criterion: for noise, 5 is "
                                    "quiet. A blank is not rated.");
    m_ratings->setToolTip(scale);
    addWide(makeLabel(scale, "muted", this));
    addWide(m_ratings);
    m_ratings->setVisibleRows(2, 5);
    m_ratings->hideMoves(); // ratings are ordered by name
}

QString SetupDialog::sumText() const
{
    return m_sum->text();
}

Result<Setup> SetupDialog::typedSetup()
{
    Setup setup = m_setup;
    setup.name = core(m_name->text().trimmed());
    setup.kind = core(m_kind->text().trimmed());
    setup.vessels = m_vessels->value();
    if (setup.name.empty()) {
        m_name->setFocus();
        return dataProblem(Phrase::tr("the setup needs a name"));
    }
    HOLDBAND_TRY(readField(m_power, setup.ratedPower));
    auto parts = partsOf(m_parts->model()->rows(), m_setup.parts, m_format);
    if (!parts) {
        m_parts->check();
        return failure(parts.error());
    }
    auto ratings = ratingsOf(m_ratings->model()->rows(), m_format);
    if (!ratings) {
        m_ratings->check();
        return failure(ratings.error());
    }
    setup.parts = std::move(*parts);
    setup.ratings = std::move(*ratings);
    return setup;
}

void SetupDialog::save()
{
    saveThing<Setup>(typedSetup(), m_setup.name,
                     {store::HistoryVerb::setupAdded, store::HistoryVerb::setupChanged,
                      store::addSetup, store::updateSetup});
}

} // namespace holdband::ui
