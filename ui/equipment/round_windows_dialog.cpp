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
#include <QTableView>

namespace holdband::ui {

namespace {

/// Saves only the rounds: other settings may have changed meanwhile.
Done saveRounds(const store::Change& change, const std::vector<RoundWindow>& rounds)
{
    LogbookSettings settings;
    HOLDBAND_TRY(assignResult(store::readSettings(change.logbook()), settings));
    settings.rounds = rounds;
    return store::writeSettings(change, settings);
}

} // namespace

RoundWindowsDialog::RoundWindowsDialog(Session& session, const LogbookSettings& settings,
                                       QWidget* parent)
    : FormDialog(session, Words::tr("Rounds"), Words::tr("Save rounds"), parent),
      m_rounds(new EditTable(Words::tr("round"), roundColumns(), 0, this))
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
    commitChange(
        {store::HistoryVerb::roundsChanged},
        [rounds = *rounds](const store::Change& change) { return saveRounds(change, rounds); });
}

} // namespace holdband::ui
