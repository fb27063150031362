#include "ui/rounds/round_line.h"

#include "core/editing/rounds.h"
#include "core/text/quantities.h"
#include "ui/rounds/round_entry.h"
#include "ui/rounds/week_sparkline.h"
#include "ui/theme/theme.h"
#include "ui/words/words.h"

#include <QApplication>
#include <QClipboard>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>

namespace holdband::ui {

RoundLine::RoundLine(const results::RoundRow& row, QGridLayout* grid, int gridRow, QWidget* parent)
    : QObject(parent), m_name(shown(row.name)), m_row(row), m_last(new QLabel(parent)),
      m_lastTime(makeLabel({}, "muted", parent)), m_expected(makeLabel({}, "muted", parent)),
      m_week(isMeter() ? new WeekSparkline(m_name, parent) : nullptr), m_mark(new QLabel(parent)),
      m_message(makeLabel({}, "warn", parent)), m_field(new QLineEdit(parent)),
      m_sample(row.kind == results::RoundKind::gravity ? new QLineEdit(parent) : nullptr),
      m_note(new QLineEdit(parent)), m_question(new ReadingQuestion(parent))
{
    addWidgets(grid, gridRow, parent);
    m_field->installEventFilter(this);
    connect(m_field, &QLineEdit::textEdited, this, [this] {
        m_event.reset();
        m_unusualSeen = false;
        setState(m_field->text().trimmed().isEmpty() ? State::empty : State::unchecked);
        showUsed();
        Q_EMIT edited();
    });
    connect(m_field, &QLineEdit::returnPressed, this, &RoundLine::entered);
    connect(m_note, &QLineEdit::returnPressed, this, &RoundLine::entered);
    connect(m_question, &ReadingQuestion::answered, this, &RoundLine::takeAnswer);
}

void RoundLine::setTemperatureUnit(TemperatureUnit unit)
{
    if (!m_sample)
        return;
    m_temperatureUnit = unit;
    const QString name = shown(holdband::unitText(unit));
    m_sample->setPlaceholderText(Words::tr("sample at %1").arg(name));
    m_sample->setAccessibleName(Words::tr("%1 sample temperature, %2, optional").arg(m_name, name));
    showCorrected();
}

/// Shows the gravity corrected by the sample's temperature.
void RoundLine::showCorrected()
{
    if (m_sampleRefused)
        setState(m_field->text().trimmed().isEmpty() ? State::empty : State::unchecked);
    const QString corrected =
        correctedGravityText(m_field->text(), m_sample->text(), decimalSign(), m_temperatureUnit);
    m_sample->setToolTip(
        corrected.isEmpty()
            ? Words::tr("How warm the sample was, if you know: warm wort is thinner and the "
                        "hydrometer sinks deeper. It is stored beside the gravity as read.")
            : corrected);
    if (!corrected.isEmpty() && m_state != State::question) {
        setRole(m_message, "muted");
        m_message->setText(corrected);
        m_message->show();
    }
}

void RoundLine::setSheetRow(const results::RoundRow& row, Instant now, const Zone& zone)
{
    m_row = row;
    m_now = now;
    m_zone = zone;
    if (m_week)
        m_week->setWeek(row.week, row.setupIndex);
    m_last->setText(lastText(row));
    m_lastTime->setText(lastTimeText(row, now, zone));
    m_expected->setText(expectedText(row));
    m_expected->setToolTip(shown(row.expectedWhy));
    if (m_field->hasFocus())
        explainExpected(true);
    showUsed();
}

QString RoundLine::message() const
{
    return m_message->text();
}

void RoundLine::setState(State state, const QString& message)
{
    m_state = state;
    m_sampleRefused = false;
    if (m_sample)
        setRole(m_sample, "field");
    const bool trouble = state == State::refused || state == State::question;
    setRole(m_field, trouble ? "refused" : "field");
    m_mark->setText(state == State::fine ? QStringLiteral("✓")
                                         : (trouble ? QStringLiteral("!") : QString()));
    m_mark->setAccessibleName(state == State::fine ? Words::tr("can be saved") : message);
    setRole(m_message, "warn");
    m_message->setText(message);
    m_message->setVisible(!message.isEmpty());
    if (state != State::question)
        m_question->hide();
}

void RoundLine::commit(Instant at, bool isNow)
{
    if (m_state == State::waiting)
        return;
    if (m_field->text().trimmed().isEmpty()) {
        if (m_sample && !m_sample->text().trimmed().isEmpty())
            refuse(Words::tr("Type the gravity of the sample, or clear its temperature."));
        else
            setState(State::empty);
        return;
    }
    m_unusualSeen = m_unusualSeen || m_state == State::unusual;
    if (isMeter() ? !commitMeter(at, isNow) : !commitHand(at))
        return;
    setState(State::waiting);
    Q_EMIT checkWanted();
}

bool RoundLine::commitMeter(Instant at, bool isNow)
{
    const auto reading = parseReading(m_field->text(), at, m_note->text(), decimalSign());
    if (!reading) {
        refuse(sentence(reading.error()));
        return false;
    }
    m_reading = *reading;
    m_reading.event = m_event;
    if (isNow)
        m_reading.timeDoubt = Milliseconds{0};
    return true;
}

bool RoundLine::commitHand(Instant at)
{
    const auto reading =
        parseHandReading(m_field->text(), at, m_note->text(), decimalSign(), m_row.unit);
    if (!reading) {
        refuse(sentence(reading.error()));
        return false;
    }
    m_hand = *reading;
    if (!m_sample)
        return true;
    const auto sample = parseSample(m_sample->text(), decimalSign(), m_temperatureUnit);
    if (!sample)
        return refuseSample(sample.error());
    m_hand.sample = *sample;
    return true;
}

bool RoundLine::refuseSample(const Problem& problem)
{
    setState(State::refused, sentence(problem));
    m_sampleRefused = true;
    setRole(m_field, "field");
    setRole(m_sample, "refused");
    Q_EMIT settled();
    return false;
}

void RoundLine::takePossible()
{
    if (m_state != State::waiting)
        return;
    if (!m_unusualSeen && farOutside(m_row, valueInUnitOf(m_row, m_hand)))
        setState(State::unusual, askFarOutside(m_field->text(), m_row));
    else
        setState(State::fine);
    Q_EMIT settled();
}

bool RoundLine::eventFilter(QObject* watched, QEvent* event)
{
    if (event->type() == QEvent::KeyPress &&
        static_cast<QKeyEvent*>(event)->matches(QKeySequence::Paste)) {
        const QString text = QGuiApplication::clipboard()->text().trimmed();
        if (text.contains(QLatin1Char('\n'))) {
            Q_EMIT tablePasted(text);
            return true;
        }
    }
    if (event->type() == QEvent::KeyPress) {
        const int key = static_cast<QKeyEvent*>(event)->key();
        if (key == Qt::Key_Up || key == Qt::Key_Down) {
            Q_EMIT stepped(key == Qt::Key_Up ? -1 : +1);
            return true;
        }
    }
    if (event->type() == QEvent::FocusIn || event->type() == QEvent::FocusOut)
        explainExpected(event->type() == QEvent::FocusIn);
    return QObject::eventFilter(watched, event);
}

/// Below the focused field: how the expected range was computed.
void RoundLine::explainExpected(bool focused)
{
    if (m_state != State::empty)
        return;
    explain(focused ? shown(m_row.expectedWhy) : QString());
}

void RoundLine::explain(const QString& words)
{
    setRole(m_message, "muted");
    m_message->setText(words);
    m_message->setVisible(!words.isEmpty());
}

/// Below the field while a register is typed: the energy since the last reading.
void RoundLine::showUsed()
{
    if (isMeter() && m_state == State::unchecked)
        explain(usedText(m_row, m_field->text(), {m_now, m_zone, decimalSign()}));
}

void RoundLine::refuse(const QString& sentence)
{
    setState(State::refused, sentence);
    Q_EMIT settled();
}

void RoundLine::takeCheck(const intake::ReadingCheck& check)
{
    if (m_state != State::waiting)
        return;
    const double kwh = m_reading.registerReading.kilowattHours();
    if (check.doubt)
        takeDoubt(*check.doubt);
    else if (!m_event && !m_unusualSeen && farOutside(m_row, kwh))
        setState(State::unusual,
                 Words::tr("%1 is far more than the %2 expected. Press Enter again to save it.")
                     .arg(m_field->text().trimmed(), expectedText(m_row)));
    else if (!m_unusualSeen && !check.unusual.empty())
        setState(State::unusual, askOnce(check.unusual));
    else
        setState(State::fine, check.takenAsRollover
                                  ? Words::tr("Taken as a rollover of the register.")
                                  : QString());
    Q_EMIT settled();
}

void RoundLine::takeDoubt(const intake::DoubtfulReading& doubt)
{
    if (doubt.doubt != intake::ReadingDoubt::belowBefore) {
        Problem problem = doubt.problem;
        problem.place.clear();
        setState(State::refused, sentence(problem));
        return;
    }
    setState(State::question);
    m_question->ask(Words::tr("%1 is below the %2 before it. What happened?")
                        .arg(m_field->text().trimmed(), lastText(m_row)),
                    m_row.topKnown);
}

void RoundLine::takeAnswer(Answer answer)
{
    setState(State::unchecked);
    if (answer == Answer::anotherMeter)
        return Q_EMIT replaced();
    m_field->setFocus();
    if (answer == Answer::mistyped)
        return m_field->selectAll();
    m_event = eventAnswered(answer);
    Q_EMIT entered();
}

intake::TypedReading RoundLine::typed() const
{
    return {core(m_name), m_reading};
}

intake::TypedHandReading RoundLine::typedHand() const
{
    return {ownerOf(m_row), m_hand};
}

void RoundLine::clearTyped()
{
    // Not clear(): the saved reading is undone by the logbook's undo, not by the field's.
    m_field->setText({});
    m_note->setText({});
    if (m_sample)
        m_sample->setText({});
    m_event.reset();
    m_unusualSeen = false;
    setState(State::empty);
}

RoundLine::Texts RoundLine::texts() const
{
    return {m_field->text(), m_note->text(), m_sample ? m_sample->text() : QString()};
}

void RoundLine::putTyped(const Texts& texts)
{
    m_field->setText(texts.value);
    m_note->setText(texts.note);
    if (m_sample)
        m_sample->setText(texts.sample);
    setState(texts.value.trimmed().isEmpty() ? State::empty : State::unchecked);
}

bool RoundLine::hasFocus() const
{
    const auto has = [](const QWidget* widget) {
        return widget && (widget->hasFocus() || widget->isAncestorOf(QApplication::focusWidget()));
    };
    return has(m_field) || has(m_note) || has(m_sample) || has(m_question);
}

void RoundLine::setEnabled(bool enabled)
{
    m_field->setEnabled(enabled);
    if (m_sample)
        m_sample->setEnabled(enabled);
    m_note->setEnabled(enabled);
}

} // namespace holdband::ui
