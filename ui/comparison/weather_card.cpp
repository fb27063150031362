#include "ui/comparison/weather_card.h"

#include "ui/charts/picture_view.h"
#include "ui/charts/weather_points.h"
#include "ui/comparison/side_tables.h"
#include "ui/forms/quantity_field.h"
#include "ui/theme/flow_layout.h"
#include "ui/theme/theme.h"
#include "ui/words/words.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QVBoxLayout>

namespace holdband::ui {

WeatherCard::WeatherCard(QWidget* parent)
    : Card(Words::tr("In the same weather"), parent), m_sentence(makeLabel({}, "plain", this)),
      m_picture(
          new PictureView(Words::tr("Mean power over how much warmer the room was"), this, false)),
      m_lift(
          new QuantityField(Quantity::difference, Words::tr("Room warmer than the beer by"), this)),
      m_hours(new QuantityField(Quantity::hours, Words::tr("Hold of"), this))
{
    m_sentence->setTextInteractionFlags(Qt::TextSelectableByMouse);
    contents()->addWidget(m_sentence);
    contents()->addWidget(m_picture);
    auto* row = new FlowLayout(6, 4);
    row->addWidget(asked(Words::tr("Ask for a room warmer than the beer by"), m_lift));
    row->addWidget(asked(Words::tr("over"), m_hours));
    contents()->addLayout(row);
    contents()->addStretch();
    for (QuantityField* field : {m_lift, m_hours}) {
        field->setOptional(true);
        field->edit()->setPlaceholderText(Words::tr("mean"));
        field->edit()->setToolTip(Words::tr("Empty: the mean of both."));
        field->edit()->setMaximumWidth(90);
        connect(field->edit(), &QLineEdit::editingFinished, this, &WeatherCard::takeFields);
    }
    m_lift->setRule(notNegative);
    m_hours->setRule(aboveZero);
}

/// A field after its words.
QWidget* WeatherCard::asked(const QString& words, QuantityField* field)
{
    auto* pair = new QWidget(this);
    auto* row = new QHBoxLayout(pair);
    row->setContentsMargins(0, 0, 0, 0);
    QLabel* label = makeLabel(words, "muted", pair);
    label->setWordWrap(false);
    row->addWidget(label);
    row->addWidget(field);
    return pair;
}

void WeatherCard::setComparison(const results::SideBySide* comparison, const UnitFormat& format,
                                const PairSides& sides)
{
    setVisible(comparison != nullptr);
    if (!comparison)
        return;
    m_weighing = comparison->weighing;
    const results::SameWeather& weather = comparison->weather;
    const results::SameWeatherText& text = comparison->text.weather;
    m_sentence->setText(sentences({text.sentence, text.energySentence}).join(QLatin1Char(' ')));
    m_sentence->setAccessibleName(m_sentence->text());
    m_lift->setFormat(format);
    m_hours->setFormat(format);
    // Text being typed is not replaced.
    if (!m_lift->edit()->hasFocus() || !m_lift->edit()->isModified())
        m_lift->set(m_weighing.referenceLift);
    if (!m_hours->edit()->hasFocus() || !m_hours->edit()->isModified())
        m_hours->set(m_weighing.referenceHours);
    auto picture =
        std::make_shared<WeatherPicture>(weather, comparison->settings.temperatureUnit(), sides);
    m_picture->setPicture(picture->empty() ? nullptr : std::move(picture), m_sentence->text());
}

void WeatherCard::takeFields()
{
    const auto lift = m_lift->value<TemperatureDifference>();
    const auto hours = m_hours->value<Hours>();
    if (!lift || !hours)
        return;
    Weighing wanted = m_weighing;
    wanted.referenceLift = *lift;
    wanted.referenceHours = *hours;
    if (wanted != m_weighing)
        Q_EMIT weighingWanted(wanted);
}

QString WeatherCard::sentence() const
{
    return m_sentence->text();
}

} // namespace holdband::ui
