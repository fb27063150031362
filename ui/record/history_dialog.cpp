#include "ui/record/history_dialog.h"

#include "core/store/records/equipment.h"
#include "ui/record/history_text.h"
#include "ui/session/session.h"
#include "ui/tables/list_table.h"
#include "ui/tables/table_model.h"
#include "ui/theme/theme.h"
#include "ui/words/words.h"

#include <QDialogButtonBox>
#include <QHBoxLayout>
#include <QItemSelectionModel>
#include <QLabel>
#include <QPushButton>
#include <QTableView>
#include <QVBoxLayout>

namespace holdband::ui {

namespace {

constexpr int actsAtOnce = 200;

struct History {
    std::vector<store::StoredHistoryEntry> entries;
    Zone zone;
};

Result<History> readAll(const store::LogbookFile& file, int most)
{
    auto settings = store::readSettings(file);
    HOLDBAND_TRY(settings);
    auto zone = Zone::named(settings->zone);
    HOLDBAND_TRY(zone);
    auto entries = store::readHistory(file, most);
    HOLDBAND_TRY(entries);
    return History{std::move(*entries), *zone};
}

} // namespace

HistoryDialog::HistoryDialog(Session& session, QWidget* parent)
    : QDialog(parent), m_session(&session), m_entryModel(new TableModel(this)),
      m_rows(new TableModel(this)),
      m_entryTable(makeListTable(Words::tr("Changes, the newest first"), m_entryModel, this)),
      m_rowTable(makeListTable(Words::tr("What the change did"), m_rows, this)),
      m_remark(makeLabel({}, "muted", this)),
      m_more(new QPushButton(Words::tr("&Older ones"), this)), m_most(actsAtOnce)
{
    setWindowTitle(Words::tr("What was changed, when and why"));
    resize(860, 620);
    widen(*m_entryTable, 1);
    widen(*m_rowTable, 3);
    layOut();
    connect(m_entryTable->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
            [this](const QModelIndex& current) { showRows(current.row()); });
    connect(m_more, &QPushButton::clicked, this, [this] {
        m_most += actsAtOnce;
        refresh();
    });
    connect(&session, &Session::changed, this, &HistoryDialog::refresh);
    refresh();
}

void HistoryDialog::layOut()
{
    auto* close = new QDialogButtonBox(QDialogButtonBox::Close, this);
    connect(close, &QDialogButtonBox::rejected, this, &QDialog::reject);
    auto* foot = new QHBoxLayout;
    foot->addWidget(m_more);
    foot->addWidget(close, 1);
    auto* column = new QVBoxLayout(this);
    column->addWidget(m_entryTable, 3);
    column->addWidget(m_remark);
    column->addWidget(m_rowTable, 2);
    column->addLayout(foot);
}

void HistoryDialog::refresh()
{
    m_session->ask<History>(
        this, [most = m_most](const store::LogbookFile& file) { return readAll(file, most); },
        [this](Result<History> history) {
            if (history)
                take(std::move(history->entries), history->zone);
            else
                m_remark->setText(sentence(history.error()));
        });
}

void HistoryDialog::take(std::vector<store::StoredHistoryEntry> entries, const Zone& zone)
{
    m_entries = std::move(entries);
    m_entryModel->setWords(historyTable(m_entries, zone));
    m_more->setEnabled(static_cast<int>(m_entries.size()) == m_most);
    if (!m_entries.empty())
        m_entryTable->setCurrentIndex(m_entryModel->index(0, 0));
    m_entryTable->setFocus();
}

void HistoryDialog::showRows(int row)
{
    if (row < 0 || row >= static_cast<int>(m_entries.size()))
        return;
    const store::HistoryEntryId id = m_entries[static_cast<std::size_t>(row)].id;
    m_session->ask<TableText>(
        this,
        [id](const store::LogbookFile& file) -> Result<TableText> {
            auto settings = store::readSettings(file);
            HOLDBAND_TRY(settings);
            auto zone = Zone::named(settings->zone);
            HOLDBAND_TRY(zone);
            auto rows = store::readChangedRows(file, id);
            HOLDBAND_TRY(rows);
            return rowText(*rows, unitFormatOf(*settings, *zone));
        },
        [this](Result<TableText> words) {
            if (!words)
                return m_remark->setText(sentence(words.error()));
            m_remark->setText(words->rows.empty() ? Words::tr("No single rows are on record.")
                                                  : QString());
            m_rows->setWords(std::move(*words));
        });
}

} // namespace holdband::ui
