#include "ui/imports/rows_panel.h"

#include "ui/words/words.h"

#include <QHBoxLayout>
#include <QHeaderView>
#include <QPushButton>
#include <QTableView>
#include <algorithm>

namespace holdband::ui {

QTableView* makeLogTable(const QString& name, TableModel* model, QWidget* parent)
{
    auto* table = new QTableView(parent);
    table->setModel(model);
    table->setAccessibleName(name);
    table->setShowGrid(false);
    table->setEditTriggers(QAbstractItemView::NoEditTriggers);
    table->setSelectionBehavior(QAbstractItemView::SelectRows);
    table->setSelectionMode(QAbstractItemView::SingleSelection);
    table->setTabKeyNavigation(false);
    table->setWordWrap(false);
    table->setHorizontalScrollMode(QAbstractItemView::ScrollPerPixel);
    table->setCornerWidget(new QWidget(table));
    table->verticalHeader()->hide();
    table->verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    table->verticalHeader()->setDefaultSectionSize(table->fontMetrics().height() + 5);
    table->horizontalHeader()->setHighlightSections(false);
    table->horizontalHeader()->setSectionsClickable(false);
    return table;
}

namespace {

/// As wide as the first rows' texts.
int widthOf(const QTableView& table, int column)
{
    constexpr int measured = 60; // columns and rows measured; more are not visible at first
    if (column > measured)
        return 0;
    int width = table.horizontalHeader()->sectionSizeHint(column);
    const QAbstractItemModel& model = *table.model();
    for (int row = 0; row < std::min(model.rowCount(), measured); ++row)
        width = std::max(width, table.fontMetrics().horizontalAdvance(
                                    model.index(row, column).data().toString()));
    return width;
}

} // namespace

void fitColumns(QTableView& table, int least, int most)
{
    constexpr int air = 16;
    const int count = table.model() ? table.model()->columnCount() : 0;
    for (int i = 0; i < count; ++i) {
        const int wanted = widthOf(table, i) + air;
        table.setColumnWidth(i, i == 0 ? wanted : std::clamp(wanted, least, most));
    }
}

RowsPanel::RowsPanel(QWidget* parent)
    : Card(Words::tr("Rows"), parent), m_model(new TableModel(this)),
      m_table(makeLogTable(Words::tr("Rows behind the count"), m_model, this)),
      m_save(new QPushButton(Words::tr("&Save these as a file…"), this))
{
    auto* back = new QPushButton(Words::tr("Back to the col&umns"), this);
    auto* row = new QHBoxLayout;
    row->addWidget(back);
    row->addWidget(m_save);
    row->addStretch();
    contents()->addWidget(m_table, 1);
    contents()->addLayout(row);
    connect(back, &QPushButton::clicked, this, &RowsPanel::closed);
    connect(m_save, &QPushButton::clicked, this, &RowsPanel::saveWanted);
}

void RowsPanel::showRows(const intake::ImportReport& report, RowOutcome outcome, const Zone& zone)
{
    setTitle(outcomeTitle(report, outcome));
    m_model->setWords(outcomeTable(report, outcome, zone));
    fitColumns(*m_table, 60, 420);
    m_save->setVisible(outcome == RowOutcome::rejected);
}

} // namespace holdband::ui
