#include "ui/forms/instant_field.h"

#include "core/store/logbook_file.h"
#include "core/text/times.h"
#include "ui/forms/day_picker.h"
#include "ui/theme/theme.h"
#include "ui/words/words.h"

#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

namespace holdband::ui {

namespace {

QString spaced(std::string iso)
{
    return shown(iso).replace(10, 1, QLatin1Char(' '));
}

} // namespace

InstantField::InstantField(const QString& name, QWidget* parent)
    : QWidget(parent), m_edit(new QLineEdit(this)),
      m_nowButton(new QPushButton(Words::tr("Now"), this)), m_first(new QPushButton(this)),
      m_second(new QPushButton(this)), m_problem(makeLabel({}, "warn", this))
{
    layOut();
    m_edit->setAccessibleName(name);
    m_days = new DayPicker(m_edit);
    m_nowButton->setAccessibleName(Words::tr("%1: now").arg(name));
    connect(m_edit, &QLineEdit::textEdited, this, [this] {
        showProblem({});
        offerReadings();
        Q_EMIT edited();
    });
    connect(m_edit, &QLineEdit::editingFinished, this, [this] { instant(); });
    connect(m_nowButton, &QPushButton::clicked, this, [this] {
        if (m_now)
            setInstant(m_now());
        Q_EMIT edited();
    });
    for (QPushButton* button : {m_first, m_second})
        connect(button, &QPushButton::clicked, this,
                [this, button] { take(button->property("text_of").toString()); });
}

void InstantField::layOut()
{
    auto* layout = new QGridLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setHorizontalSpacing(6);
    layout->setVerticalSpacing(2);
    layout->addWidget(m_edit, 0, 0);
    layout->addWidget(m_nowButton, 0, 1);
    layout->setColumnStretch(2, 1);
    layout->addWidget(m_problem, 1, 0, 1, 3);
    layout->addWidget(m_first, 2, 0);
    layout->addWidget(m_second, 2, 1, 1, 2, Qt::AlignLeft);
    m_edit->setPlaceholderText(sampleTime());
    m_edit->setFixedWidth(widthForTimes(*m_edit));
    setFocusProxy(m_edit);
    for (QPushButton* button : {m_nowButton, m_first, m_second})
        button->setAutoDefault(false);
    m_first->hide();
    m_second->hide();
    m_problem->hide();
}

/// A field that is a window of its own is hidden while it is destroyed; the edit then loses the
/// focus and says that it is finished.
InstantField::~InstantField()
{
    m_edit->disconnect(this);
}

void InstantField::setZone(const Zone& zone)
{
    m_zone = zone;
    if (m_set)
        setInstant(m_set);
}

void InstantField::setInstant(std::optional<Instant> at)
{
    m_set = at;
    m_setText = at ? typedTime(*at, m_zone) : QString();
    m_edit->setText(m_setText);
    showProblem({});
    offerReadings();
}

Result<std::optional<Instant>> InstantField::read() const
{
    if (m_set && m_edit->text() == m_setText)
        return m_set;
    if (m_edit->text().trimmed().isEmpty() && m_optional)
        return std::optional<Instant>();
    const auto at = readTypedTime(m_edit->text(), m_zone, now());
    if (!at)
        return failure(at.error());
    return std::optional(*at);
}

Instant InstantField::now() const
{
    return m_now ? m_now() : store::systemNow();
}

Result<std::optional<Instant>> InstantField::instant()
{
    auto read = this->read();
    showProblem(read ? QString() : sentence(read.error()));
    return read;
}

void InstantField::offerReadings()
{
    const auto time = typedLocalTime(m_edit->text(), m_zone.localDate(now()));
    const bool local = time && !time->hasOffset && !(m_set && m_edit->text() == m_setText);
    const Resolved resolved = local ? m_zone.resolve(time->local) : Resolved{};
    const bool asked = local && resolved.kind != LocalKind::unique;
    const auto offer = [&](QPushButton* button, Instant at) {
        const QString text = spaced(localIso(at, m_zone));
        button->setProperty("text_of", text);
        button->setText(Words::tr("It is %1").arg(text));
        button->setVisible(asked);
    };
    offer(m_first, resolved.earlier);
    offer(m_second, resolved.later);
}

void InstantField::take(const QString& text)
{
    m_edit->setText(text);
    m_edit->setFocus();
    instant();
    offerReadings();
    Q_EMIT edited();
}

QString InstantField::problem() const
{
    return m_problem->text();
}

void InstantField::showProblem(const QString& sentence)
{
    m_problem->setText(sentence);
    m_problem->setVisible(!sentence.isEmpty());
    setRole(m_edit, sentence.isEmpty() ? "" : "refused");
}

} // namespace holdband::ui
