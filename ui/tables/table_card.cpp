#include "ui/tables/table_card.h"

#include "ui/theme/theme.h"

#include <QHeaderView>
#include <QLabel>
#include <QVBoxLayout>

namespace holdband::ui {

TableCard::TableCard(const QString& title, int wide, QWidget* parent)
    : Card(title, parent), m_wide(wide), m_model(new TableModel(this)),
      m_table(new PlainTable(title, this)), m_remark(makeLabel({}, "muted", this))
{
    m_table->setModel(m_model);
    contents()->addWidget(m_table);
    contents()->addWidget(m_remark);
    m_remark->hide();
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Maximum);
}

void TableCard::setWords(TableText words)
{
    const bool any = !words.rows.empty();
    m_model->setWords(std::move(words));
    m_table->setWideColumn(m_wide);
    m_table->setVisible(any);
}

void TableCard::setRemark(const QString& remark)
{
    m_remark->setText(remark);
    m_remark->setVisible(!remark.isEmpty());
}

void TableCard::setHeaderShown(bool wanted)
{
    m_table->horizontalHeader()->setVisible(wanted);
}

} // namespace holdband::ui
