// What the page of the rounds does with typed readings: each is checked when its row is left, and
// the round is saved as one change once all are checked.
#include "core/editing/meter_swap.h"
#include "core/editing/rounds.h"
#include "ui/rounds/round_line.h"
#include "ui/rounds/round_time.h"
#include "ui/rounds/rounds_page.h"
#include "ui/session/session.h"
#include "ui/words/words.h"

#include <QLineEdit>
#include <QPointer>
#include <QPushButton>
#include <algorithm>
#include <map>

namespace holdband::ui {

void RoundsPage::check(RoundLine* row)
{
    if (!row->isMeter())
        return checkHand(row);
    const intake::TypedReading typed = row->typed();
    m_session->ask<intake::ReadingCheck>(
        row,
        [typed](const store::LogbookFile& file) {
            return intake::checkReading(file, typed, decimalSign());
        },
        [row, asked = row->texts().value](Result<intake::ReadingCheck> checked) {
            if (row->texts().value != asked) // the answer is for a value that has changed since
                return;
            if (checked)
                row->takeCheck(*checked);
            else
                row->refuse(sentence(checked.error()));
        });
}

void RoundsPage::checkHand(RoundLine* row)
{
    const intake::TypedHandReading typed = row->typedHand();
    m_session->ask<bool>(
        row,
        [typed](const store::LogbookFile& file) -> Result<bool> {
            HOLDBAND_TRY(intake::checkHandReading(file, typed));
            return true;
        },
        [row, asked = row->texts().value](Result<bool> checked) {
            if (row->texts().value != asked)
                return;
            if (checked)
                return row->takePossible();
            Problem problem = checked.error();
            problem.place.clear();
            row->refuse(sentence(problem));
        });
}

/// The new meter begins with the typed reading; the rest of the round doesn't change.
void RoundsPage::replaceMeter(RoundLine* row)
{
    const intake::TypedReading typed = row->typed();
    m_session->change<std::string>(
        this,
        [typed](const store::LogbookFile& file) {
            return intake::replaceMeter(file, typed.meter, typed.reading);
        },
        [this, row = QPointer<RoundLine>(row)](Result<std::string> made) {
            if (!made && row)
                return row->refuse(sentence(made.error()));
            if (!made)
                return say(sentence(made.error()), true);
            if (row)
                row->clearTyped();
            say(Words::tr("%1 replaced it with this reading. Undo reverses that.")
                    .arg(shown(*made)),
                false);
            focusFirst();
            m_session->announceChange();
        });
}

void RoundsPage::enterRow(RoundLine* row)
{
    const auto at = m_time->at(m_session->now());
    if (!at) {
        say(sentence(at.error()), true);
        m_time->field()->setFocus();
        return;
    }
    m_entered = row;
    row->commit(*at, !m_time->typed());
    if (row->state() == RoundLine::State::empty)
        moveOn(row);
}

void RoundsPage::rowSettled(RoundLine* row)
{
    if (m_saveWanted)
        return continueSave();
    if (m_entered == row && row->state() == RoundLine::State::fine)
        moveOn(row);
}

void RoundsPage::moveOn(RoundLine* row)
{
    m_entered = nullptr;
    const auto found = std::find(m_rows.begin(), m_rows.end(), row);
    if (found != m_rows.end() && found + 1 != m_rows.end())
        (*(found + 1))->field()->setFocus();
    else
        m_save->setFocus();
}

void RoundsPage::save()
{
    if (m_session->readOnly() || m_saving)
        return;
    const auto at = m_time->at(m_session->now());
    if (!at) {
        say(sentence(at.error()), true);
        m_time->field()->setFocus();
        return;
    }
    m_saveWanted = true;
    for (RoundLine* row : m_rows) {
        if (row->state() != RoundLine::State::question)
            row->commit(*at, !m_time->typed());
    }
    if (m_saveWanted)
        continueSave();
}

void RoundsPage::continueSave()
{
    using State = RoundLine::State;
    int typed = 0;
    for (RoundLine* row : m_rows) {
        if (row->state() == State::waiting || row->state() == State::unchecked)
            return;
        typed += row->state() != State::empty;
    }
    m_saveWanted = false;
    for (RoundLine* row : m_rows) {
        if (row->state() == State::empty || row->state() == State::fine)
            continue;
        if (row->state() != State::question)
            row->troubled()->setFocus();
        return say(Words::tr("Nothing is saved yet: check one reading first."), true);
    }
    if (typed == 0)
        return say(Words::tr("Nothing was typed."), true);
    storeRound();
}

void RoundsPage::storeRound()
{
    intake::TypedRound round;
    std::map<QString, RoundLine::Texts> saved;
    for (RoundLine* row : m_rows) {
        if (row->state() != RoundLine::State::fine)
            continue;
        saved[row->name()] = row->texts();
        if (row->isMeter())
            round.meters.push_back(row->typed());
        else
            round.hand.push_back(row->typedHand());
    }
    m_saving = true;
    m_session->change<int>(
        this,
        [round](const store::LogbookFile& file) {
            return intake::saveRound(file, round, decimalSign());
        },
        [this, saved](Result<int> stored) {
            m_saving = false;
            if (!stored)
                return say(sentence(stored.error()), true);
            for (RoundLine* row : m_rows) {
                const auto texts = saved.find(row->name());
                if (texts != saved.end() && texts->second == row->texts())
                    row->clearTyped(); // text typed meanwhile is not lost
            }
            m_time->backToNow();
            say(Words::counted("Saved %n readings.", "Saved %n reading.",
                               static_cast<std::uint64_t>(*stored)),
                false);
            focusFirst();
            m_session->announceChange();
        });
}

} // namespace holdband::ui
