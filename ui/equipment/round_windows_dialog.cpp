#include "ui/equipment/round_windows_dialog.h"

#include "core/assign_result.h"
#include "core/store/records/equipment.h"
#include "ui/equipment/round_rows.h"
#include "ui/forms/edit_table.h"
#include "ui/forms/save_row.h"
#include "ui/theme/theme.h"
#include "ui/words/words.h"

#include <QLabel>
#include <QPushButton>
#include <QSpinBox>
#include <QTableView>

namespace holdband::ui {

namespace {

constexpr Milliseconds minute = std::chrono::minutes{1};

/// Saves only the rounds: other settings may have changed meanwhile.
Done saveRounds(const store::Change& change, const std::vector<RoundWindow>& rounds,
                Milliseconds timeDoubt)
{
    LogbookSettings settings;
    HOLDBAND_TRY(assignResult(store::readSettings(change.logbook()), settings));
    settings.rounds = rounds;
    settings.timeDoubt = timeDoubt;
    return store::writeSettings(change, settings);
}

} // namespace

RoundWindowsDialog::RoundWindowsDialog(Session& session, const LogbookSettings& settings,
                                       QWidget* parent)
    : FormDialog(session, Words::tr("Rounds"), Words::tr("Save rounds"), parent),
      m_rounds(new EditTable(Words::tr("round"), roundColumns(), 0, this)),
      m_timeDoubt(new QSpinBox(this))
{
    addWide(makeLabel(Words::tr("The times of day in which the meters are to be read, in "
                                "local time. A round that passes without a reading counts as "
                                "missed."),
                      "muted", this));
    addWide(m_rounds);
    m_rounds->hideMoves();
    m_rounds->setVisibleRows(2, static_cast<int>(mostRounds));
    m_rounds->model()->setRows(roundRows(settings.rounds));
    for (const auto signal : {&QAbstractItemModel::rowsInserted, &QAbstractItemModel::rowsRemoved})
        connect(m_rounds->model(), signal, this, &RoundWindowsDialog::limitRows);
    limitRows();
    m_timeDoubt->setRange(0, static_cast<int>(mostTimeDoubt / minute));
    m_timeDoubt->setSuffix(Words::tr(" min"));
    m_timeDoubt->setSpecialValueText(Words::tr("exact"));
    m_timeDoubt->setValue(static_cast<int>(settings.timeDoubt / minute));
    addRow(Words::tr("&Typed times are good to"), m_timeDoubt);
    addWide(makeLabel(Words::tr("A reading that is typed later, with a time from memory or from "
                                "paper, may have been read a while before or after. Ranges of "
                                "energy widen by this. Readings saved as \"now\" and imported ones "
                                "are exact."),
                      "muted", this));
    m_rounds->view()->setFocus();
    m_rounds->chooseRow(0);
    resize(460, height());
    watchFields();
}

void RoundWindowsDialog::limitRows()
{
    const bool full = static_cast<std::size_t>(m_rounds->model()->rowCount()) >= mostRounds;
    m_rounds->addButton()->setEnabled(!full);
    m_rounds->addButton()->setToolTip(full ? Words::tr("At most six rounds a day") : QString());
}

void RoundWindowsDialog::save()
{
    const auto rounds = roundsOf(m_rounds->model()->rows());
    if (!rounds) {
        m_rounds->check();
        return foot()->refuse(sentence(rounds.error()));
    }
    commitChange({store::HistoryVerb::roundsChanged},
                 [rounds = *rounds, doubt = m_timeDoubt->value() * minute](
                     const store::Change& change) { return saveRounds(change, rounds, doubt); });
}

} // namespace holdband::ui
