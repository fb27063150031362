#include "ui/equipment/list_card.h"

#include "ui/words/words.h"

#include <QHBoxLayout>
#include <QPushButton>
#include <QScrollBar>
#include <QVBoxLayout>

namespace holdband::ui {

namespace {

/// Long texts (names are shortened already) would push the other columns out of a small window; the
/// tooltip has the full text.
void shortenCells(TableText& words)
{
    constexpr qsizetype longest = 26;
    for (auto& row : words.rows) {
        for (TableCell& cell : row) {
            if (cell.strong || cell.text.size() <= longest)
                continue;
            if (cell.why.isEmpty())
                cell.why = cell.text;
            cell.text = cell.text.left(longest - 1) + QStringLiteral("…");
        }
    }
}

} // namespace

ListCard::ListCard(const QString& title, const QString& what, int wide, Can can, QWidget* parent)
    : TableCard(title, wide, parent),
      m_add(makeButton(Words::tr("Add…"), Words::tr("Add a %1").arg(what))),
      m_edit(makeButton(Words::tr("Edit…"), Words::tr("Edit the %1").arg(what))),
      m_retire(makeButton(Words::tr("Retire"), Words::tr("Retire the %1").arg(what))),
      m_remove(makeButton(Words::tr("Remove"), Words::tr("Remove the %1").arg(what)))
{
    auto* buttons = new QHBoxLayout;
    buttons->setSpacing(6);
    for (QPushButton* button : {m_add, m_edit, m_retire, m_remove})
        buttons->addWidget(button);
    buttons->addStretch();
    contents()->addLayout(buttons);
    m_retire->setVisible(can == Can::everything);
    connect(m_add, &QPushButton::clicked, this, &ListCard::addWanted);
    connect(m_edit, &QPushButton::clicked, this, [this] { Q_EMIT editWanted(currentRow()); });
    connect(m_retire, &QPushButton::clicked, this, [this] { Q_EMIT retireWanted(currentRow()); });
    connect(m_remove, &QPushButton::clicked, this, [this] { Q_EMIT removeWanted(currentRow()); });
    connect(table(), &QAbstractItemView::activated, this, [this](const QModelIndex& index) {
        if (m_editable)
            Q_EMIT editWanted(index.row());
    });
    connect(table()->selectionModel(), &QItemSelectionModel::currentChanged, this,
            &ListCard::showChoice);
    connect(table()->horizontalScrollBar(), &QScrollBar::rangeChanged, this,
            &ListCard::makeRoomForTheBar);
    showChoice();
}

void ListCard::makeRoomForTheBar(int, int farthest)
{
    const int bar = table()->horizontalScrollBar()->sizeHint().height();
    table()->setMinimumHeight(table()->sizeHint().height() + (farthest > 0 ? bar : 0));
}

QPushButton* ListCard::makeButton(const QString& words, const QString& name)
{
    auto* button = new QPushButton(words, this);
    button->setAccessibleName(name);
    button->setToolTip(name);
    return button;
}

void ListCard::setItems(TableText words, std::vector<bool> retired)
{
    m_retired = std::move(retired);
    shortenCells(words);
    setWords(std::move(words));
    makeRoomForTheBar(0, table()->horizontalScrollBar()->maximum());
    if (!m_retired.empty())
        table()->setCurrentIndex(model()->index(0, 0));
    showChoice();
}

void ListCard::setEditable(bool editable)
{
    m_editable = editable;
    showChoice();
}

int ListCard::currentRow() const
{
    return table()->currentIndex().row();
}

void ListCard::showChoice()
{
    const int row = currentRow();
    const bool any = row >= 0 && static_cast<std::size_t>(row) < m_retired.size();
    m_add->setEnabled(m_editable);
    for (QPushButton* button : {m_edit, m_retire, m_remove})
        button->setEnabled(m_editable && any);
    const bool retired = any && m_retired[static_cast<std::size_t>(row)];
    m_retire->setText(retired ? Words::tr("Restore") : Words::tr("Retire"));
}

} // namespace holdband::ui
