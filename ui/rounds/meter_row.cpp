#include "ui/rounds/meter_row.h"

#include "core/intake/rounds.h"
#include "ui/rounds/round_entry.h"
#include "ui/theme/elided_label.h"
#include "ui/theme/theme.h"
#include "ui/words/words.h"

#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>
#include <QVBoxLayout>

namespace holdband::ui {

namespace {

class Stripe : public QWidget {
public:
    Stripe(const QColor& colour, QWidget* parent) : QWidget(parent)
    {
        setFixedWidth(4);
        setAutoFillBackground(true);
        QPalette own = palette();
        own.setColor(QPalette::Window, colour);
        setPalette(own);
    }
};

QVBoxLayout* twoLines(QWidget* first, QWidget* second)
{
    auto* layout = new QVBoxLayout;
    layout->setSpacing(0);
    layout->addWidget(first);
    layout->addWidget(second);
    return layout;
}

QFont enlarged(QFont font, double factor, QFont::Weight weight)
{
    font.setPointSizeF(font.pointSizeF() * factor);
    font.setWeight(weight);
    return font;
}

} // namespace

MeterRow::MeterRow(const QString& meter, int setup, QGridLayout* grid, int gridRow, QWidget* parent)
    : QObject(parent), m_meter(meter), m_last(new QLabel(parent)),
      m_lastTime(makeLabel({}, "muted", parent)), m_expected(makeLabel({}, "muted", parent)),
      m_mark(new QLabel(parent)), m_message(makeLabel({}, "warn", parent)),
      m_field(new QLineEdit(parent)), m_note(new QLineEdit(parent)),
      m_question(new ReadingQuestion(parent))
{
    addWidgets(grid, gridRow, parent, setup);
    connect(m_field, &QLineEdit::textEdited, this, [this] {
        m_event.reset();
        m_unusualSeen = false;
        setState(m_field->text().trimmed().isEmpty() ? State::empty : State::unchecked);
    });
    connect(m_field, &QLineEdit::returnPressed, this, &MeterRow::entered);
    connect(m_note, &QLineEdit::returnPressed, this, &MeterRow::entered);
    connect(m_question, &ReadingQuestion::answered, this, &MeterRow::takeAnswer);
}

void MeterRow::addWidgets(QGridLayout* grid, int gridRow, QWidget* parent, int setup)
{
    auto* name = new ElidedLabel(m_meter, parent);
    name->setFont(enlarged(name->font(), 1.0, QFont::DemiBold));
    auto* unit = makeLabel(QStringLiteral("kWh"), "muted", parent);
    m_lastTime->setWordWrap(false);
    m_expected->setWordWrap(false);
    m_field->setFont(enlarged(m_field->font(), 1.45, QFont::DemiBold));
    m_field->setAlignment(Qt::AlignRight);
    m_field->setMaximumWidth(220);
    m_field->setAccessibleName(m_meter + QStringLiteral(" reading, kWh"));
    m_note->setAccessibleName(m_meter + QStringLiteral(" note"));
    m_note->setPlaceholderText(QStringLiteral("note"));
    m_note->setMinimumHeight(m_field->sizeHint().height());
    m_mark->setMinimumWidth(18);
    grid->addWidget(new Stripe(setupColour(setup), parent), gridRow, 0);
    grid->addLayout(twoLines(name, unit), gridRow, 1);
    grid->addLayout(twoLines(m_last, m_lastTime), gridRow, 2);
    grid->addWidget(m_expected, gridRow, 3);
    grid->addWidget(m_field, gridRow, 4);
    grid->addWidget(m_mark, gridRow, 5);
    grid->addWidget(m_note, gridRow, 6);
    grid->addWidget(m_message, gridRow + 1, 3, 1, 4);
    grid->addWidget(m_question, gridRow + 1, 2, 1, 5);
    m_message->hide();
}

void MeterRow::setSheetRow(const review::RoundRow& row, Instant now, const Zone& zone)
{
    m_row = row;
    m_last->setText(lastText(row));
    m_lastTime->setText(lastTimeText(row, now, zone));
    m_expected->setText(expectedText(row));
    m_expected->setToolTip(shown(row.expectedWhy));
}

QString MeterRow::message() const
{
    return m_message->text();
}

void MeterRow::setState(State state, const QString& message)
{
    m_state = state;
    const bool trouble = state == State::refused || state == State::question;
    setRole(m_field, trouble ? "refused" : "field");
    m_mark->setText(state == State::fine ? QStringLiteral("✓")
                                         : (trouble ? QStringLiteral("!") : QString()));
    m_mark->setAccessibleName(state == State::fine ? QStringLiteral("can be kept") : message);
    m_message->setText(message);
    m_message->setVisible(!message.isEmpty());
    if (state != State::question)
        m_question->hide();
}

void MeterRow::commit(Instant at)
{
    if (m_state == State::waiting)
        return;
    if (m_field->text().trimmed().isEmpty()) {
        setState(State::empty);
        return;
    }
    const auto reading = parseReading(m_field->text(), at, m_note->text(), decimalSign());
    if (!reading)
        return refuse(sentence(reading.error()));
    m_reading = *reading;
    m_reading.event = m_event;
    m_unusualSeen = m_unusualSeen || m_state == State::unusual;
    setState(State::waiting);
    Q_EMIT checkWanted();
}

void MeterRow::refuse(const QString& sentence)
{
    setState(State::refused, sentence);
    Q_EMIT settled();
}

void MeterRow::takeCheck(const intake::ReadingCheck& check)
{
    if (m_state != State::waiting)
        return;
    const double kwh = m_reading.registerReading.kilowattHours();
    if (check.doubt)
        takeDoubt(*check.doubt);
    else if (!m_event && !m_unusualSeen && farOutside(m_row, kwh))
        setState(
            State::unusual,
            QStringLiteral("%1 is far more than the %2 expected. Press Enter again to keep it.")
                .arg(m_field->text().trimmed(), expectedText(m_row)));
    else
        setState(State::fine, check.takenAsRollover
                                  ? QStringLiteral("Taken as a rollover of the register.")
                                  : QString());
    Q_EMIT settled();
}

void MeterRow::takeDoubt(const intake::DoubtfulReading& doubt)
{
    if (doubt.doubt != intake::ReadingDoubt::belowBefore) {
        Problem problem = doubt.problem;
        problem.place.clear();
        setState(State::refused, sentence(problem));
        return;
    }
    setState(State::question);
    m_question->ask(QStringLiteral("%1 is below the %2 before it. What happened?")
                        .arg(m_field->text().trimmed(), lastText(m_row)),
                    true);
}

void MeterRow::takeAnswer(Answer answer)
{
    switch (answer) {
    case Answer::mistyped:
        setState(State::unchecked);
        m_field->setFocus();
        m_field->selectAll();
        return;
    case Answer::anotherMeter:
        setState(State::refused,
                 QStringLiteral("Then it belongs to a meter of its own: load a description with "
                                "the new meter and the day it took over, and read that one here."));
        m_field->setFocus();
        return;
    case Answer::restarted:
        m_event = MeterEvent::reset;
        break;
    case Answer::rolledOver:
        m_event = MeterEvent::rollover;
        break;
    }
    setState(State::unchecked);
    m_field->setFocus();
    Q_EMIT entered();
}

intake::TypedReading MeterRow::typed() const
{
    return {core(m_meter), m_reading};
}

void MeterRow::clearTyped()
{
    m_field->clear();
    m_note->clear();
    m_event.reset();
    m_unusualSeen = false;
    setState(State::empty);
}

void MeterRow::setEnabled(bool enabled)
{
    m_field->setEnabled(enabled);
    m_note->setEnabled(enabled);
}

} // namespace holdband::ui
