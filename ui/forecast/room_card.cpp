#include "ui/forecast/room_card.h"

#include "ui/forms/buddy.h"
#include "ui/forms/choices.h"
#include "ui/forms/instant_field.h"
#include "ui/forms/quantity_field.h"
#include "ui/theme/theme.h"
#include "ui/words/words.h"

#include <QComboBox>
#include <QDate>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QLocale>
#include <QPushButton>
#include <QSignalBlocker>
#include <QVBoxLayout>
#include <algorithm>

namespace holdband::ui {

namespace {

QString monthText(std::chrono::year_month month)
{
    const QDate first(static_cast<int>(month.year()),
                      static_cast<int>(static_cast<unsigned>(month.month())), 1);
    return Words::tr("%1, from the room's log")
        .arg(QLocale().toString(first, QStringLiteral("MMMM yyyy")));
}

} // namespace

RoomCard::RoomCard(QWidget* parent)
    : Card(Words::tr("The room it will stand in"), parent),
      m_choice(makeChoice(Words::tr("Room like"), this)), m_stretch(new QWidget(this)),
      m_from(new InstantField(Words::tr("From"), this)),
      m_to(new InstantField(Words::tr("To"), this)),
      m_mean(new QuantityField(Quantity::temperature, Words::tr("Mean of the room"), this)),
      m_swing(new QuantityField(Quantity::difference, Words::tr("Daily swing of the room"), this)),
      m_words(makeLabel({}, "muted", this))
{
    m_swing->setRule(notNegative);
    m_swing->setToolTip(Words::tr("From the lowest to the highest temperature of a day."));
    for (InstantField* field : {m_from, m_to})
        field->nowButton()->hide();
    layOut();
    connect(m_choice, &QComboBox::activated, this, [this] {
        showFields();
        Q_EMIT changed();
    });
    for (QLineEdit* edit : {m_mean->edit(), m_swing->edit(), m_from->edit(), m_to->edit()})
        connect(edit, &QLineEdit::editingFinished, this, &RoomCard::changed);
}

void RoomCard::layOut()
{
    const auto addField = [this](QFormLayout* form, const QString& text, QWidget* field) {
        auto* label = new QLabel(text, this);
        setBuddyOf(*label, *field);
        form->addRow(label, field);
    };
    auto* form = new QFormLayout;
    form->setFieldGrowthPolicy(QFormLayout::AllNonFixedFieldsGrow);
    addField(form, Words::tr("Li&ke"), m_choice);
    contents()->addLayout(form);
    auto* stretch = new QFormLayout(m_stretch);
    stretch->setContentsMargins(0, 0, 0, 0);
    addField(stretch, Words::tr("F&rom"), m_from);
    addField(stretch, Words::tr("To"), m_to);
    contents()->addWidget(m_stretch);
    auto* numbers = new QFormLayout;
    addField(numbers, Words::tr("&Mean"), m_mean);
    addField(numbers, Words::tr("Daily &swing"), m_swing);
    contents()->addLayout(numbers);
    contents()->addWidget(m_words);
}

void RoomCard::setOffer(const results::NextBatchOffer& offer, const UnitFormat& format, Instant now)
{
    m_mean->setFormat(format);
    m_swing->setFormat(format);
    m_from->setZone(format.zone);
    m_to->setZone(format.zone);
    offerMonths(offer);
    if (!m_offered) {
        m_offered = true;
        m_mean->set(offer.roomNow ? offer.roomNow : std::optional(Temperature::celsius(20.0)));
        m_swing->set(std::optional(TemperatureDifference::kelvins(0.0)));
        if (!m_months.empty()) {
            m_from->setInstant(m_months.back().span.start);
            m_to->setInstant(m_months.back().span.end);
        }
        chooseFirst(offer, now);
    }
    showFields();
}

/// The latest month first, then a stretch, then typed; without a record only typed.
void RoomCard::offerMonths(const results::NextBatchOffer& offer)
{
    const QString before = m_choice->currentText();
    const QSignalBlocker quiet(m_choice);
    m_choice->clear();
    m_months = offer.months;
    std::reverse(m_months.begin(), m_months.end());
    for (const results::RoomMonth& month : m_months)
        m_choice->addItem(monthText(month.month));
    if (!m_months.empty())
        m_choice->addItem(Words::tr("a stretch of the room's log"));
    m_choice->addItem(Words::tr("typed"));
    m_choice->setCurrentIndex(std::max(0, m_choice->findText(before)));
}

void RoomCard::chooseFirst(const results::NextBatchOffer& offer, Instant now)
{
    const auto wanted = offer.zone.localDate(now).month();
    auto first = std::find_if(m_months.begin(), m_months.end(),
                              [&](const auto& month) { return month.month.month() == wanted; });
    if (first == m_months.end())
        first = std::find_if(m_months.begin(), m_months.end(),
                             [](const auto& month) { return month.whole; });
    const QSignalBlocker quiet(m_choice);
    m_choice->setCurrentIndex(first == m_months.end() ? 0
                                                      : static_cast<int>(first - m_months.begin()));
}

bool RoomCard::isTyped() const
{
    return m_choice->currentIndex() == m_choice->count() - 1;
}

bool RoomCard::isStretch() const
{
    return !m_months.empty() && m_choice->currentIndex() == static_cast<int>(m_months.size());
}

/// Mean and swing can be typed only where nothing is picked; else they show what was.
void RoomCard::showFields()
{
    m_stretch->setVisible(isStretch());
    m_mean->setEnabled(isTyped());
    m_swing->setEnabled(isTyped());
}

Result<RoomChoice> RoomCard::room()
{
    if (isTyped()) {
        std::optional<Temperature> mean;
        std::optional<TemperatureDifference> swing;
        HOLDBAND_TRY(readField<Temperature>(m_mean, mean));
        HOLDBAND_TRY(readField<TemperatureDifference>(m_swing, swing));
        return RoomChoice(analysis::TypedRoom{mean->celsius(), swing->kelvins()});
    }
    if (!isStretch())
        return RoomChoice(results::RoomStretch{
            m_months[static_cast<std::size_t>(m_choice->currentIndex())].span, {}});
    const auto from = m_from->instant();
    HOLDBAND_TRY(from);
    const auto to = m_to->instant();
    HOLDBAND_TRY(to);
    return RoomChoice(results::RoomStretch{{**from, **to}, {}});
}

void RoomCard::showRoom(const results::NextRoom& room, const QString& words)
{
    if (!isTyped()) {
        m_mean->set(std::optional(Temperature::celsius(room.meanCelsius)));
        m_swing->set(std::optional(TemperatureDifference::kelvins(room.swingK)));
    }
    m_words->setText(words);
}

void RoomCard::clearRoom()
{
    m_words->clear();
}

} // namespace holdband::ui
