#include "ui/equipment/ice_panel.h"

#include "core/text/phrase.h"
#include "core/text/times.h"
#include "ui/equipment/offset_rows.h"
#include "ui/forms/buddy.h"
#include "ui/forms/quantity_field.h"
#include "ui/theme/theme.h"
#include "ui/words/words.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QRadioButton>
#include <QVBoxLayout>

namespace holdband::ui {

namespace {

QString howTo()
{
    return Words::tr(
        "Crushed ice with just enough water to fill the gaps, stirred, the probe in the middle for "
        "some minutes. Type what it shows, three times or more.");
}

} // namespace

IcePanel::IcePanel(const UnitFormat& format, QWidget* parent)
    : QWidget(parent), m_format(format), m_readings(new QLineEdit(this)),
      m_step(new QuantityField(Quantity::difference, Words::tr("Last digit shown"), this)),
      m_use(new QPushButton(Words::tr("&Use as an offset"), this)),
      m_fromNow(new QRadioButton(Words::tr("&From now on"), this)),
      m_alsoEarlier(new QRadioButton(this)), m_words(makeLabel(howTo(), "muted", this))
{
    layOut();
    const auto typed = [this] {
        if (m_readings->text().trimmed().isEmpty())
            return m_words->setText(howTo());
        say(typedPoint());
    };
    connect(m_readings, &QLineEdit::textEdited, this, typed);
    connect(m_step, &QuantityField::edited, this, typed);
    connect(m_use, &QPushButton::clicked, this, [this] {
        const auto point = typedPoint();
        say(point);
        if (point)
            Q_EMIT offsetFound(*point);
    });
}

void IcePanel::layOut()
{
    m_readings->setAccessibleName(Words::tr("Readings in ice water"));
    const bool us = m_format.units == UnitSystem::us;
    m_readings->setPlaceholderText(
        us ? QStringLiteral("32.4 32.5 32.4")
           : QStringLiteral("0.0 0.2 0.1").replace(QLatin1Char('.'), QLatin1Char(m_format.sign)));
    m_step->setFormat(m_format);
    m_step->setRule(notNegative);
    m_step->set(std::optional(us ? TemperatureDifference::fahrenheitDegrees(0.1)
                                 : TemperatureDifference::kelvins(0.1)));
    m_use->setAutoDefault(false);
    auto* top = new QHBoxLayout;
    top->addWidget(m_readings, 1, Qt::AlignTop);
    auto* label = new QLabel(Words::tr("last &digit"), this);
    setBuddyOf(*label, *m_step);
    label->setMargin(4);
    top->addWidget(label, 0, Qt::AlignTop);
    top->addWidget(m_step);
    top->addWidget(m_use, 0, Qt::AlignTop);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(4);
    layout->addLayout(top);
    layout->addWidget(m_fromNow);
    layout->addWidget(m_alsoEarlier);
    layout->addWidget(m_words);
    m_fromNow->setChecked(true);
    m_fromNow->hide();
    m_alsoEarlier->hide();
}

void IcePanel::offerEarlier(Instant first, const std::optional<Instant>& lastCheck)
{
    const QString day = shown(dateText(m_format.zone.localDate(lastCheck.value_or(first))));
    m_firstEarlier = first;
    m_alsoEarlier->setText(
        lastCheck ? Words::tr("Also for &earlier readings, since the last check on %1").arg(day)
                  : Words::tr("Also for all &earlier readings, since %1").arg(day));
    m_fromNow->show();
    m_alsoEarlier->show();
}

std::optional<Instant> IcePanel::from() const
{
    return m_alsoEarlier->isChecked() ? std::optional(m_firstEarlier) : std::nullopt;
}

Result<results::IcePoint> IcePanel::typedPoint()
{
    const auto readings = typedReadings(m_readings->text(), m_format);
    if (!readings)
        return failure(readings.error());
    const auto step = m_step->value<TemperatureDifference>();
    if (!step || !*step)
        return step ? dataProblem(Phrase::tr("the last digit shown is missing"))
                    : failure(step.error());
    return results::icePoint(*readings, **step);
}

void IcePanel::say(const Result<results::IcePoint>& point)
{
    setRole(m_words, point ? "muted" : "warn");
    if (!point)
        return m_words->setText(sentence(point.error()));
    QStringList lines;
    for (const std::string& line :
         results::icePointText(*point, m_format.temperature(), m_format.sign))
        lines << shown(line);
    m_words->setText(lines.join(QLatin1Char(' ')));
}

QString IcePanel::words() const
{
    return m_words->text();
}

} // namespace holdband::ui
