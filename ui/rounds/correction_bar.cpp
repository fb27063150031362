#include "ui/rounds/correction_bar.h"

#include "core/editing/rounds.h"
#include "core/text/numbers.h"
#include "core/text/times.h"
#include "ui/forms/day_picker.h"
#include "ui/forms/typed_time.h"
#include "ui/rounds/round_entry.h"
#include "ui/session/session.h"
#include "ui/theme/theme.h"
#include "ui/words/words.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

namespace holdband::ui {

namespace {

QString addedText()
{
    return Words::counted("Saved %n readings.", "Saved %n reading.", 1);
}

QString correctedText()
{
    return Words::tr("Corrected; the old value stays in the history.");
}

} // namespace

CorrectionBar::CorrectionBar(Session& session, QWidget* parent)
    : QWidget(parent), m_session(&session), m_words(makeLabel({}, "field", this)),
      m_value(new QLineEdit(this)), m_time(new QLineEdit(this)), m_why(new QLineEdit(this)),
      m_note(new QLineEdit(this)), m_save(new QPushButton(Words::tr("&Save"), this)),
      m_delete(new QPushButton(Words::tr("&Delete"), this)), m_message(makeLabel({}, "warn", this)),
      m_question(new ReadingQuestion(this))
{
    m_value->setAccessibleName(Words::tr("The right reading"));
    m_time->setAccessibleName(Words::tr("When it was read"));
    m_why->setAccessibleName(Words::tr("Why"));
    m_why->setPlaceholderText(Words::tr("why: digits swapped, other meter read …"));
    m_note->setAccessibleName(Words::tr("Note"));
    m_note->setPlaceholderText(Words::tr("note"));
    m_value->setAlignment(Qt::AlignRight);
    m_value->setMaximumWidth(140);
    m_time->setFixedWidth(widthForTimes(*m_time));
    new DayPicker(m_time);
    layOut();
    connect(m_value, &QLineEdit::returnPressed, this, &CorrectionBar::enterValue);
    connect(m_time, &QLineEdit::returnPressed, m_why, qOverload<>(&QWidget::setFocus));
    connect(m_why, &QLineEdit::returnPressed, this, &CorrectionBar::save);
    connect(m_note, &QLineEdit::returnPressed, this, &CorrectionBar::save);
    connect(m_save, &QPushButton::clicked, this, &CorrectionBar::save);
    connect(m_delete, &QPushButton::clicked, this, &CorrectionBar::deleteReading);
    connect(m_question, &ReadingQuestion::answered, this, &CorrectionBar::takeAnswer);
    connect(m_value, &QLineEdit::textEdited, this, [this] {
        m_event.reset();
        m_question->hide();
    });
    hide();
}

void CorrectionBar::layOut()
{
    auto* close = new QPushButton(Words::tr("Cancel"), this);
    connect(close, &QPushButton::clicked, this, &CorrectionBar::hideBar);
    auto* fields = new QHBoxLayout;
    fields->setSpacing(8);
    for (QWidget* widget : {static_cast<QWidget*>(m_value), static_cast<QWidget*>(m_time)})
        fields->addWidget(widget);
    fields->addWidget(m_why, 1);
    fields->addWidget(m_note, 1);
    for (QPushButton* button : {m_save, m_delete, close})
        fields->addWidget(button);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 6, 0, 4);
    column->addWidget(m_words);
    column->addLayout(fields);
    column->addWidget(m_message);
    column->addWidget(m_question);
    m_question->hide();
}

void CorrectionBar::take(const results::RoundRow& row, const results::RoundCell& cell,
                         const Zone& zone)
{
    m_row = row;
    m_cell = cell;
    m_zone = zone;
    const bool hasValue = cell.value.has_value();
    const QString when = shown(localText(cell.at, zone));
    QString words = shown(row.name) + QStringLiteral(" · ") + when;
    if (hasValue)
        words += Words::tr(" · reads %1").arg(numberText(*cell.value, cell.decimals));
    else
        words += Words::tr(" · no reading: type what you wrote down");
    if (!cell.history.empty())
        words += QStringLiteral(" (") + shown(cell.history) + QLatin1Char(')');
    m_words->setText(words);
    m_value->setText(storedText());
    m_time->setText(typedTime(cell.at, zone));
    m_time->setVisible(!hasValue);
    m_why->clear();
    m_note->setText(shown(cell.note));
    m_note->setVisible(hasValue);
    m_delete->setVisible(hasValue);
    m_message->clear();
    m_message->hide();
    m_question->hide();
    m_event.reset();
    m_asked.clear();
    show();
    m_value->setFocus();
    m_value->selectAll();
}

/// The value as it was typed; empty without one.
QString CorrectionBar::storedText() const
{
    return m_cell.value ? numberText(*m_cell.value, m_cell.storedDecimals) : QString();
}

/// A correction wants a reason; a reading that was missed does not.
void CorrectionBar::enterValue()
{
    if (m_cell.value)
        m_why->setFocus();
    else
        save();
}

QString CorrectionBar::message() const
{
    return m_message->text();
}

void CorrectionBar::hideBar()
{
    hide();
    Q_EMIT closed();
}

void CorrectionBar::refuse(const Problem& problem)
{
    say(sentence(problem));
}

void CorrectionBar::say(const QString& words)
{
    m_message->setText(words);
    m_message->show();
}

/// True if the same value was already asked about; otherwise asks.
bool CorrectionBar::confirmed(const QString& question)
{
    if (m_asked == m_value->text())
        return true;
    m_asked = m_value->text();
    say(question);
    return false;
}

/// The time of the corrected reading, or the typed one; absent, with a message, if that is no time.
std::optional<Instant> CorrectionBar::instant()
{
    if (m_cell.value)
        return m_cell.at;
    const auto at = readTypedTime(m_time->text(), m_zone, m_session->now());
    if (at)
        return *at;
    refuse(at.error());
    m_time->setFocus();
    return std::nullopt;
}

void CorrectionBar::save()
{
    m_typed = true;
    const bool sameValue = m_cell.value && m_value->text() == storedText();
    if (sameValue && core(m_note->text().trimmed()) != m_cell.note)
        saveNote();
    else if (m_row.kind == results::RoundKind::meter)
        saveTypedRegister();
    else
        saveHand();
}

void CorrectionBar::saveTypedRegister()
{
    const auto at = instant();
    if (!at)
        return;
    auto reading =
        parseReading(m_value->text(), *at, m_cell.value ? QString() : m_why->text(), decimalSign());
    if (!reading) {
        refuse(reading.error());
        m_value->setFocus();
        return;
    }
    reading->event = m_cell.value ? std::nullopt : m_event;
    checkRegister(*reading);
}

/// Checks the reading against its neighbours in time, as in a round.
void CorrectionBar::checkRegister(const MeterReading& reading)
{
    const auto work = [name = m_row.name, id = m_cell.id, late = !m_cell.value,
                       reading](const store::LogbookFile& file) {
        return late ? intake::checkReading(file, {name, reading}, decimalSign())
                    : intake::checkCorrection(file, name, {id},
                                              reading.registerReading.kilowattHours(),
                                              reading.decimals, decimalSign());
    };
    m_session->ask<intake::ReadingCheck>(
        this, work, [this, reading, asked = m_value->text()](Result<intake::ReadingCheck> check) {
            if (m_value->text() != asked || !isVisible()) // the answer is about an old value
                return;
            if (check)
                takeCheck(reading, *check);
            else
                refuse(check.error());
        });
}

void CorrectionBar::takeCheck(const MeterReading& reading, const intake::ReadingCheck& check)
{
    const bool fell = check.doubt && check.doubt->doubt == intake::ReadingDoubt::belowBefore;
    if (fell && !m_cell.value) {
        m_question->ask(Words::tr("%1 is below the reading before it. What happened?")
                            .arg(m_value->text().trimmed()),
                        m_row.topKnown);
        return;
    }
    if (check.doubt) {
        refuse(check.doubt->problem);
        m_value->setFocus();
        return;
    }
    if (check.unusual.empty() || confirmed(askOnce(check.unusual)))
        saveRegister(reading);
}

void CorrectionBar::takeAnswer(Answer answer)
{
    m_question->hide();
    if (answer == Answer::anotherMeter)
        return replaceMeter();
    if (answer == Answer::mistyped) {
        m_value->setFocus();
        m_value->selectAll();
        return;
    }
    m_event = eventAnswered(answer);
    m_why->setFocus();
    save();
}

void CorrectionBar::saveRegister(const MeterReading& reading)
{
    if (m_cell.value)
        change(correctingRegister(stored(), reading, typedNote()), correctedText());
    else
        change(addingRegister(m_row, reading), addedText());
}

void CorrectionBar::replaceMeter()
{
    const auto at = instant();
    if (!at)
        return;
    if (const auto first = parseReading(m_value->text(), *at, m_why->text(), decimalSign()))
        change(replacingMeter(m_row, *first),
               Words::tr("Another meter took its place with this reading."));
}

void CorrectionBar::saveHand()
{
    const auto at = instant();
    if (!at)
        return;
    const auto reading = parseHandReading(
        m_value->text(), *at, m_cell.value ? QString() : m_why->text(), decimalSign(), m_row.unit);
    if (!reading) {
        refuse(reading.error());
        m_value->setFocus();
        return;
    }
    if (farOutside(m_row, valueInUnitOf(m_row, *reading)) &&
        !confirmed(askFarOutside(m_value->text(), m_row)))
        return;
    if (m_cell.value)
        change(correctingHand(stored(), *reading, typedNote()), correctedText());
    else
        change(addingHand(m_row, *reading), addedText());
}

/// Saves a change of the note alone.
void CorrectionBar::saveNote()
{
    change(settingNote(stored(), core(m_note->text().trimmed())),
           Words::tr("The note is changed."));
}

void CorrectionBar::deleteReading()
{
    m_typed = false;
    change(deletingReading(stored(), core(m_why->text().trimmed())),
           Words::tr("Deleted. Undo restores it."));
}

RowReading CorrectionBar::stored() const
{
    return {m_row, m_cell.id};
}

CorrectionNote CorrectionBar::typedNote() const
{
    std::string note = core(m_note->text().trimmed());
    return {core(m_why->text().trimmed()),
            note != m_cell.note ? std::optional(std::move(note)) : std::nullopt};
}

/// `words`: shown after it is done.
void CorrectionBar::change(const ReadingChange& work, const QString& words)
{
    m_session->change<bool>(
        this, work, [this, words](Result<bool> result) { finish(std::move(result), words); });
}

void CorrectionBar::finish(Result<bool> result, const QString& words)
{
    if (!result) {
        refuse(result.error());
        m_value->setFocus();
        return;
    }
    hide();
    Q_EMIT saved(words);
    if (m_typed)
        Q_EMIT typed();
    Q_EMIT closed();
    m_session->announceChange();
}

void CorrectionBar::keyPressEvent(QKeyEvent* event)
{
    if (event->key() == Qt::Key_Escape)
        return hideBar();
    QWidget::keyPressEvent(event);
}

} // namespace holdband::ui
