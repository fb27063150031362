#include "ui/charts/chart_tables_dialog.h"

#include "core/text/times.h"
#include "ui/charts/chart_tables.h"
#include "ui/tables/list_table.h"
#include "ui/theme/theme.h"
#include "ui/words/words.h"

#include <QDialogButtonBox>
#include <QLabel>
#include <QTabWidget>
#include <QTableView>
#include <QVBoxLayout>

namespace holdband::ui {

ChartTablesDialog::ChartTablesDialog(const RunChart& chart, Span shown, QWidget* parent)
    : QDialog(parent), m_temperature(new TableModel(this)), m_energy(new TableModel(this))
{
    setWindowTitle(Words::tr("%1 as tables").arg(ui::shown(chart.batch)));
    resize(760, 560);
    m_temperature->setWords(temperatureTable(chart, shown));
    m_energy->setWords(energyReadingsTable(chart, shown));
    auto* tabs = new QTabWidget(this);
    QTableView* temperature =
        makeListTable(Words::tr("Temperature and deviation"), m_temperature, this);
    QTableView* energy = makeListTable(Words::tr("Energy"), m_energy, this);
    widen(*temperature, 0);
    widen(*energy, 0);
    tabs->addTab(temperature, Words::tr("&Temperature and deviation"));
    tabs->addTab(energy, Words::tr("&Energy"));
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close, this);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    auto* column = new QVBoxLayout(this);
    column->addWidget(makeLabel(Words::tr("What the panels show, from %1 to %2.")
                                    .arg(ui::shown(localShortText(shown.start, chart.zone)),
                                         ui::shown(localShortText(shown.end, chart.zone))),
                                "muted", this));
    column->addWidget(tabs, 1);
    column->addWidget(buttons);
    temperature->setFocus();
}

} // namespace holdband::ui
