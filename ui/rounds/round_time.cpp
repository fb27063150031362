#include "ui/rounds/round_time.h"

#include "core/text/durations.h"
#include "core/text/times.h"
#include "ui/forms/day_picker.h"
#include "ui/forms/typed_time.h"
#include "ui/theme/theme.h"
#include "ui/words/words.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

namespace holdband::ui {

RoundTime::RoundTime(QWidget* parent)
    : QWidget(parent), m_words(makeLabel({}, "muted", this)), m_field(new QLineEdit(this)),
      m_change(new QPushButton(Words::tr("Change the &time"), this))
{
    auto* layout = new QHBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_words);
    layout->addWidget(m_field);
    layout->addWidget(m_change);
    m_words->setWordWrap(false);
    m_field->setAccessibleName(Words::tr("Time of the round"));
    m_field->setPlaceholderText(sampleTime());
    m_field->setFixedWidth(widthForTimes(*m_field));
    new DayPicker(m_field);
    m_field->hide();
    connect(m_field, &QLineEdit::returnPressed, this, &RoundTime::entered);
    connect(m_change, &QPushButton::clicked, this, [this] {
        if (m_field->isVisibleTo(this))
            backToNow();
        else
            startTyping();
    });
}

void RoundTime::setNow(Instant now, const Zone& zone, Milliseconds doubt)
{
    m_now = now;
    m_doubt = doubt;
    m_zone = zone;
    if (!m_field->isVisibleTo(this))
        m_words->setText(Words::tr("all readings count for %1").arg(shown(localClockText(now, zone))));
}

void RoundTime::startTyping()
{
    m_words->setText(m_doubt == Milliseconds{0}
                         ? Words::tr("the time for all:")
                         : Words::tr("the time for all, taken as good to %1:")
                               .arg(shown(durationText(m_doubt, decimalSign()))));
    m_words->setToolTip(Words::tr("How far a typed time may be off is set with the rounds, on the "
                                  "page Equipment. Ranges of energy widen by it."));
    m_field->setText(typedTime(m_now, m_zone));
    m_field->show();
    m_field->setFocus();
    const auto clock = m_field->text().indexOf(u' ') + 1;
    m_field->setSelection(static_cast<int>(clock), static_cast<int>(m_field->text().size()));
    m_change->setText(Words::tr("&Use current time"));
}

void RoundTime::backToNow()
{
    m_field->hide();
    m_change->setText(Words::tr("Change the &time"));
    m_words->setToolTip({});
    setNow(m_now, m_zone, m_doubt);
    Q_EMIT changed();
}

std::optional<Instant> RoundTime::typed() const
{
    const auto at = this->at(m_now);
    return m_field->isVisibleTo(this) && at ? std::optional(*at) : std::nullopt;
}

Result<Instant> RoundTime::at(Instant now) const
{
    if (!m_field->isVisibleTo(this))
        return now;
    return readTypedTime(m_field->text(), m_zone, now);
}

} // namespace holdband::ui
