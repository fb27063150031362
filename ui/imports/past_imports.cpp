#include "ui/imports/past_imports.h"

#include "core/editing/import_withdrawal.h"
#include "core/store/history/history_text.h"
#include "core/text/name_suggestions.h"
#include "core/text/times.h"
#include "ui/imports/import_text.h"
#include "ui/imports/with_zone.h"
#include "ui/session/session.h"
#include "ui/words/words.h"

#include <QHBoxLayout>
#include <QPushButton>

namespace holdband::ui {

namespace {

TableText tableOf(const std::vector<store::ImportLine>& lines, const Zone& zone)
{
    TableText table;
    table.header = {Words::tr("imported"), Words::tr("file"), Words::tr("readings"),
                    Words::tr("of"), QStringLiteral("")};
    table.numeric = {false, false, true, false, false};
    for (const store::ImportLine& line : lines)
        table.rows.push_back({{shown(localText(line.at, zone)), {}, false},
                              {shown(line.file), {}, !line.withdrawnAt},
                              {countText(line.readings), {}, false},
                              {shown(joined(line.into)), {}, false},
                              {line.withdrawnAt ? Words::tr("withdrawn") : QString(), {}, false}});
    return table;
}

} // namespace

PastImports::PastImports(Session& session, QWidget* parent)
    : TableCard(Words::tr("Past imports"), 3, parent), m_session(&session),
      m_button(new QPushButton(Words::tr("W&ithdraw"), this))
{
    auto* row = new QHBoxLayout;
    row->addWidget(m_button);
    row->addStretch();
    contents()->addLayout(row);
    connect(table()->selectionModel(), &QItemSelectionModel::currentChanged, this,
            &PastImports::showButton);
    connect(table()->selectionModel(), &QItemSelectionModel::currentChanged, this, [this] {
        if (!m_filling && chosen())
            m_picked = chosen()->id;
    });
    connect(m_button, &QPushButton::clicked, this, &PastImports::turn);
    hide();
}

void PastImports::refresh()
{
    using Lines = WithZone<std::vector<store::ImportLine>>;
    const auto read = [](const store::LogbookFile& file) {
        return readWithZone(file, store::listImports);
    };
    m_session->ask<Lines>(this, read, [this](Result<Lines> lines) {
        if (!lines)
            return Q_EMIT failed(sentence(lines.error()));
        takeLines(std::move(lines->value), lines->zone);
    });
}

void PastImports::takeLines(std::vector<store::ImportLine> lines, const Zone& zone)
{
    const int row = table()->currentIndex().row();
    m_lines = std::move(lines);
    m_filling = true;
    setWords(tableOf(m_lines, zone));
    setVisible(!m_lines.empty());
    // Selects the same import as before, wherever it is now; else the newest, or the one in its
    // row.
    const auto same =
        std::find_if(m_lines.begin(), m_lines.end(), [&](const store::ImportLine& line) {
            return m_picked && line.id == *m_picked;
        });
    const int at = same != m_lines.end() ? static_cast<int>(same - m_lines.begin())
                                         : std::clamp(row, 0, static_cast<int>(m_lines.size()) - 1);
    if (!m_lines.empty())
        table()->setCurrentIndex(model()->index(at, 0));
    m_filling = false;
    showButton();
    Q_EMIT filled();
}

const store::ImportLine* PastImports::chosen() const
{
    const int row = table()->currentIndex().row();
    return row >= 0 && row < static_cast<int>(m_lines.size())
               ? &m_lines[static_cast<std::size_t>(row)]
               : nullptr;
}

void PastImports::showButton()
{
    const store::ImportLine* line = chosen();
    m_button->setEnabled(line && !m_session->readOnly());
    if (line)
        m_button->setText(
            (line->withdrawnAt ? Words::tr("&Restore %1") : Words::tr("W&ithdraw %1"))
                .arg(shown(line->file).replace(QLatin1Char('&'), QStringLiteral("&&"))));
}

void PastImports::turn()
{
    const store::ImportLine* line = chosen();
    if (!line)
        return;
    const bool back = !line->withdrawnAt;
    const store::HistoryEntry entry{back ? store::HistoryVerb::importWithdrawn
                                         : store::HistoryVerb::importRestored,
                                    {line->file}};
    m_button->setEnabled(false);
    m_session->change<bool>(
        this,
        [entry, back, id = line->id](const store::LogbookFile& file) -> Result<bool> {
            auto change = store::Change::begin(file, entry);
            HOLDBAND_TRY(change);
            HOLDBAND_TRY(back ? intake::withdrawImport(*change, id)
                              : intake::restoreImport(*change, id, decimalSign()));
            HOLDBAND_TRY(change->commit());
            return true;
        },
        [this, entry](Result<bool> turned) {
            showButton();
            if (!turned)
                return Q_EMIT failed(sentence(turned.error()));
            Q_EMIT done(capitalised(shown(store::historyText(entry))) + QLatin1Char('.'));
            m_session->announceChange();
        });
}

} // namespace holdband::ui
