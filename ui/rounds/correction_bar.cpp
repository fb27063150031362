#include "ui/rounds/correction_bar.h"

#include "core/intake/rounds.h"
#include "core/text/numbers.h"
#include "core/text/phrase.h"
#include "core/text/times.h"
#include "ui/forms/instant_field.h"
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

store::HandOwner ownerOf(const review::RoundRow& row)
{
    return {row.kind == review::RoundKind::gravity ? store::HandOwner::Kind::batch
                                                   : store::HandOwner::Kind::sensor,
            row.name};
}

/// A change that gives nothing back, as one that says it was done.
std::function<Result<bool>(const store::LogbookFile&)>
done(std::function<Done(const store::LogbookFile&)> work)
{
    return [work = std::move(work)](const store::LogbookFile& file) -> Result<bool> {
        HOLDBAND_TRY(work(file));
        return true;
    };
}

} // namespace

CorrectionBar::CorrectionBar(Session& session, QWidget* parent)
    : QWidget(parent), m_session(&session), m_words(makeLabel({}, "field", this)),
      m_value(new QLineEdit(this)), m_time(new QLineEdit(this)), m_why(new QLineEdit(this)),
      m_note(new QLineEdit(this)), m_keep(new QPushButton(Words::tr("&Keep"), this)),
      m_away(new QPushButton(Words::tr("Take it &away"), this)),
      m_message(makeLabel({}, "warn", this))
{
    m_value->setAccessibleName(Words::tr("The right reading"));
    m_time->setAccessibleName(Words::tr("When it was read"));
    m_why->setAccessibleName(Words::tr("Why"));
    m_why->setPlaceholderText(Words::tr("why: digits swapped, other meter read …"));
    m_note->setAccessibleName(Words::tr("Note"));
    m_note->setPlaceholderText(Words::tr("note"));
    m_value->setAlignment(Qt::AlignRight);
    m_value->setMaximumWidth(140);
    m_time->setMaximumWidth(180);
    layOut();
    connect(m_value, &QLineEdit::returnPressed, m_why, qOverload<>(&QWidget::setFocus));
    connect(m_time, &QLineEdit::returnPressed, m_why, qOverload<>(&QWidget::setFocus));
    connect(m_why, &QLineEdit::returnPressed, this, &CorrectionBar::keep);
    connect(m_note, &QLineEdit::returnPressed, this, &CorrectionBar::keep);
    connect(m_keep, &QPushButton::clicked, this, &CorrectionBar::keep);
    connect(m_away, &QPushButton::clicked, this, &CorrectionBar::takeAway);
    hide();
}

void CorrectionBar::layOut()
{
    auto* close = new QPushButton(Words::tr("Leave it"), this);
    connect(close, &QPushButton::clicked, this, &CorrectionBar::putAway);
    auto* fields = new QHBoxLayout;
    fields->setSpacing(8);
    for (QWidget* widget : {static_cast<QWidget*>(m_value), static_cast<QWidget*>(m_time)})
        fields->addWidget(widget);
    fields->addWidget(m_why, 1);
    fields->addWidget(m_note, 1);
    for (QPushButton* button : {m_keep, m_away, close})
        fields->addWidget(button);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 6, 0, 4);
    column->addWidget(m_words);
    column->addLayout(fields);
    column->addWidget(m_message);
}

void CorrectionBar::take(const review::RoundRow& row, const review::RoundCell& cell,
                         const Zone& zone)
{
    m_row = row;
    m_cell = cell;
    m_zone = zone;
    const bool stands = cell.value.has_value();
    const QString when = shown(localText(cell.at, zone));
    QString words = shown(row.name) + QStringLiteral(" · ") + when;
    if (stands)
        words += Words::tr(" · reads %1").arg(numberText(*cell.value, cell.decimals));
    else
        words += Words::tr(" · not read: type what you noted");
    if (!cell.history.empty())
        words += QStringLiteral(" (") + shown(cell.history) + QLatin1Char(')');
    m_words->setText(words);
    m_value->setText(stands ? numberText(*cell.value, cell.decimals) : QString());
    m_time->setText(typedTime(cell.at, zone));
    m_time->setVisible(!stands);
    m_why->clear();
    m_note->setText(shown(cell.note));
    m_note->setVisible(stands);
    m_away->setVisible(stands);
    m_message->clear();
    m_message->hide();
    show();
    m_value->setFocus();
    m_value->selectAll();
}

QString CorrectionBar::message() const
{
    return m_message->text();
}

void CorrectionBar::putAway()
{
    hide();
    Q_EMIT closed();
}

void CorrectionBar::refuse(const Problem& problem)
{
    m_message->setText(sentence(problem));
    m_message->show();
}

void CorrectionBar::keep()
{
    const auto number = parseTypedNumber(core(m_value->text().trimmed()), decimalSign());
    if (!number || (m_row.kind == review::RoundKind::meter && number->value < 0.0)) {
        refuse(number ? Problem{ProblemKind::data,
                                Phrase::tr("a register can't read below 0"),
                                {},
                                Phrase::tr("check the number")}
                      : number.error());
        m_value->setFocus();
        return;
    }
    const bool sameValue =
        m_cell.value && core(m_value->text()) == core(numberText(*m_cell.value, m_cell.decimals));
    if (sameValue && core(m_note->text().trimmed()) != m_cell.note)
        keepNote();
    else if (m_cell.value)
        correct(number->value, number->decimals);
    else
        addLate(number->value, number->decimals);
}

/// Only the note was changed.
void CorrectionBar::keepNote()
{
    const review::RoundRow row = m_row;
    const std::int64_t id = m_cell.id;
    const std::string note = core(m_note->text().trimmed());
    const auto work = [row, id, note](const store::LogbookFile& file) -> Done {
        if (row.kind == review::RoundKind::meter)
            return intake::setRegisterNote(file, row.name, {id}, note);
        return intake::setHandNote(file, ownerOf(row), {id}, note);
    };
    m_session->change<bool>(this, done(work), [this](Result<bool> result) {
        finish(std::move(result), Words::tr("The note is changed."));
    });
}

void CorrectionBar::correct(double value, int decimals)
{
    const std::string why = core(m_why->text().trimmed());
    const review::RoundRow row = m_row;
    const std::int64_t id = m_cell.id;
    const std::string note = core(m_note->text().trimmed());
    const bool noted = note != m_cell.note;
    const auto work = [=](const store::LogbookFile& file) -> Done {
        const bool meter = row.kind == review::RoundKind::meter;
        if (noted)
            HOLDBAND_TRY(meter ? intake::setRegisterNote(file, row.name, {id}, note)
                               : intake::setHandNote(file, ownerOf(row), {id}, note));
        if (meter)
            return intake::correctRegister(file, row.name, {id}, value, decimals, why,
                                           decimalSign());
        return intake::correctHand(file, ownerOf(row), {id}, value, decimals, row.unit, why);
    };
    m_session->change<bool>(this, done(work), [this](Result<bool> result) {
        finish(std::move(result), Words::tr("Corrected; what was there is kept."));
    });
}

void CorrectionBar::addLate(double value, int decimals)
{
    const auto at = parseTime(core(m_time->text()), m_zone);
    if (!at) {
        refuse(at.error());
        m_time->setFocus();
        return;
    }
    intake::TypedRound round;
    const std::string note = core(m_why->text().trimmed());
    if (m_row.kind == review::RoundKind::meter)
        round.meters.push_back(
            {m_row.name, {*at, Energy::kilowattHours(value), decimals, {}, note}});
    else
        round.hand.push_back({ownerOf(m_row), {*at, value, m_row.unit, decimals, {}, note}});
    const auto work = [round](const store::LogbookFile& file) -> Done {
        HOLDBAND_TRY(intake::saveRound(file, round, decimalSign()));
        return {};
    };
    m_session->change<bool>(this, done(work), [this](Result<bool> result) {
        finish(std::move(result), Words::counted("Kept %n readings.", "Kept %n reading.", 1));
    });
}

void CorrectionBar::takeAway()
{
    const review::RoundRow row = m_row;
    const std::int64_t id = m_cell.id;
    const std::string why = core(m_why->text().trimmed());
    const auto work = [row, id, why](const store::LogbookFile& file) -> Done {
        if (row.kind == review::RoundKind::meter)
            return intake::takeAwayRegister(file, row.name, {id}, why);
        return intake::takeAwayHand(file, ownerOf(row), {id}, why);
    };
    m_session->change<bool>(this, done(work), [this](Result<bool> result) {
        finish(std::move(result), Words::tr("Taken away. Undo brings it back."));
    });
}

void CorrectionBar::finish(Result<bool> result, const QString& words)
{
    if (!result) {
        refuse(result.error());
        m_value->setFocus();
        return;
    }
    hide();
    Q_EMIT kept(words);
    Q_EMIT closed();
    m_session->announceChange();
}

void CorrectionBar::keyPressEvent(QKeyEvent* event)
{
    if (event->key() == Qt::Key_Escape)
        return putAway();
    QWidget::keyPressEvent(event);
}

} // namespace holdband::ui
