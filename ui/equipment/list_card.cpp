#include "ui/equipment/list_card.h"

#include "ui/equipment/card_heading.h"
#include "ui/theme/elided_label.h"
#include "ui/theme/theme.h"
#include "ui/words/words.h"

#include <QHBoxLayout>
#include <QPushButton>
#include <QScrollBar>
#include <QVBoxLayout>
#include <algorithm>

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

QString retireTip(const QString& name, bool retired)
{
    return retired ? Words::tr("Restore: %1 is offered again for new batches.").arg(name)
                   : Words::tr("Retire: %1 is no longer offered for new batches, but stays with "
                               "the batches that used it.")
                         .arg(name);
}

QString removeTip(const QString& name)
{
    return Words::tr("Remove: %1 is deleted from the logbook, which is possible only while no "
                     "batch uses it.")
        .arg(name);
}

ListCard::ListCard(const QString& title, const QString& what, int wide, Can can, QWidget* parent)
    : TableCard(title, wide, parent), m_can(can), m_choice(new ElidedLabel({}, this)),
      m_add(makeButton(Words::tr("Add…"), Words::tr("Add a %1").arg(what))),
      m_edit(makeButton(Words::tr("Edit…"), Words::tr("Edit the %1").arg(what))),
      m_retire(makeButton(Words::tr("Retire"), Words::tr("Retire the %1").arg(what))),
      m_remove(makeButton(Words::tr("Remove"), Words::tr("Remove the %1").arg(what)))
{
    addToHeading(*this, m_add);
    auto* buttons = new QHBoxLayout;
    buttons->setSpacing(6);
    for (QPushButton* button : {m_edit, m_retire, m_remove})
        buttons->addWidget(button);
    buttons->addSpacing(6);
    buttons->addWidget(m_choice, 1);
    contents()->addLayout(buttons);
    setRole(m_choice, "muted");
    setTabOrder(m_add, table());
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
    const QString before = currentName();
    m_retired = std::move(retired);
    shortenCells(words);
    setWords(std::move(words));
    makeRoomForTheBar(0, table()->horizontalScrollBar()->maximum());
    if (!m_retired.empty())
        table()->setCurrentIndex(model()->index(std::max(0, rowNamed(before)), 0));
    showChoice();
}

void ListCard::setEditable(bool editable)
{
    m_editable = editable;
    showChoice();
}

int ListCard::currentRow() const
{
    const int row = table()->currentIndex().row();
    return row >= 0 && static_cast<std::size_t>(row) < m_retired.size() ? row : -1;
}

/// The whole name is the tooltip of the first cell.
QString ListCard::nameAt(int row) const
{
    return model()->index(row, 0).data(Qt::ToolTipRole).toString();
}

QString ListCard::currentName() const
{
    const int row = currentRow();
    return row < 0 ? QString() : nameAt(row);
}

int ListCard::rowNamed(const QString& name) const
{
    for (int row = 0; row < model()->rowCount(); ++row) {
        if (nameAt(row) == name)
            return row;
    }
    return -1;
}

void ListCard::showChoice()
{
    const int row = currentRow();
    const bool any = row >= 0;
    m_add->setEnabled(m_editable);
    for (QPushButton* button : {m_edit, m_retire, m_remove})
        button->setEnabled(m_editable && any);
    m_choice->setWholeText(currentName());
    const bool retired = any && m_retired[static_cast<std::size_t>(row)];
    m_retire->setText(retired ? Words::tr("Restore") : Words::tr("Retire"));
    if (any)
        nameButtons(currentName(), retired);
}

void ListCard::nameButtons(const QString& name, bool retired)
{
    m_edit->setToolTip(Words::tr("Edit %1").arg(name));
    m_retire->setToolTip(retireTip(name, retired));
    m_remove->setToolTip(m_can == Can::everything
                             ? removeTip(name)
                             : Words::tr("Remove: %1 is deleted from the logbook; batches that "
                                         "were pitched with it don't change.")
                                   .arg(name));
    for (QPushButton* button : {m_edit, m_retire, m_remove})
        button->setAccessibleName(button->text() + QLatin1Char(' ') + name);
}

} // namespace holdband::ui
