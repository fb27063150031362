#include "ui/tables/list_table.h"

#include <QHeaderView>

namespace holdband::ui {

QTableView* makeListTable(const QString& name, QAbstractItemModel* model, QWidget* parent)
{
    auto* table = new QTableView(parent);
    table->setAccessibleName(name);
    table->setModel(model);
    table->setShowGrid(false);
    table->setAlternatingRowColors(true);
    table->setEditTriggers(QAbstractItemView::NoEditTriggers);
    table->setSelectionBehavior(QAbstractItemView::SelectRows);
    table->setTabKeyNavigation(false);
    table->setWordWrap(false);
    table->verticalHeader()->hide();
    table->verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    table->verticalHeader()->setDefaultSectionSize(table->fontMetrics().height() + 6);
    table->horizontalHeader()->setHighlightSections(false);
    table->horizontalHeader()->setSectionsClickable(false);
    return table;
}

void widen(QTableView& table, int column)
{
    const auto fit = [&table, column] {
        QHeaderView* header = table.horizontalHeader();
        for (int i = 0; i < header->count(); ++i) {
            const bool wide = i == column;
            header->setSectionResizeMode(i, wide ? QHeaderView::Stretch : QHeaderView::Interactive);
            if (!wide)
                table.resizeColumnToContents(i);
        }
    };
    QObject::connect(table.model(), &QAbstractItemModel::modelReset, &table, fit);
    fit();
}

} // namespace holdband::ui
