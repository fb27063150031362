#include "ui/comparison/money_card.h"

#include "ui/charts/picture_view.h"
#include "ui/charts/total_cost.h"
#include "ui/comparison/side_tables.h"
#include "ui/forms/quantity_field.h"
#include "ui/tables/plain_table.h"
#include "ui/tables/table_model.h"
#include "ui/theme/theme.h"
#include "ui/words/words.h"

#include <QComboBox>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QSignalBlocker>
#include <QVBoxLayout>

namespace holdband::ui {

namespace {

constexpr double unknown = -1.0; ///< no comparison has been shown yet

} // namespace

MoneyCard::MoneyCard(QWidget* parent)
    : Card(Words::tr("Money"), parent), m_scenario(new QComboBox(this)),
      m_sentence(makeLabel({}, "plain", this)),
      m_picture(new PictureView(Words::tr("Total cost over batches"), this, false)),
      m_figures(new TableModel(this)),
      m_table(new PlainTable(Words::tr("Parts and energy of a batch"), this)),
      m_perYear(new QuantityField(Quantity::number, Words::tr("Batches a year"), this)),
      m_otherPrice(new QuantityField(Quantity::money, Words::tr("Another price of a kWh"), this)),
      m_remarks(makeLabel({}, "muted", this))
{
    layOut();
    for (QuantityField* field : {m_perYear, m_otherPrice}) {
        field->setOptional(true);
        field->setRule(aboveZero);
        field->edit()->setMaximumWidth(90);
        connect(field->edit(), &QLineEdit::editingFinished, this, &MoneyCard::takeFields);
    }
    connect(m_scenario, &QComboBox::activated, this, &MoneyCard::draw);
}

void MoneyCard::layOut()
{
    m_scenario->setAccessibleName(Words::tr("Price"));
    m_table->setModel(m_figures);
    m_table->setWideColumn(2);
    m_sentence->setTextInteractionFlags(Qt::TextSelectableByMouse);
    contents()->addWidget(m_sentence);
    contents()->addWidget(m_picture);
    contents()->addWidget(m_table);
    auto* form = new QFormLayout;
    form->addRow(Words::tr("Price"), m_scenario);
    form->addRow(Words::tr("Another price of a kWh"), m_otherPrice);
    form->addRow(Words::tr("Batches a year"), m_perYear);
    contents()->addLayout(form);
    contents()->addWidget(m_remarks);
    contents()->addStretch();
    setTabOrder(m_table, m_scenario);
    setTabOrder(m_scenario, m_otherPrice->edit());
    setTabOrder(m_otherPrice->edit(), m_perYear->edit());
}

void MoneyCard::setComparison(const results::SideBySide* comparison, const UnitFormat& format,
                              const PairSides& sides)
{
    setVisible(comparison != nullptr);
    if (!comparison)
        return;
    m_money = comparison->money;
    m_text = comparison->text.money;
    m_weighing = comparison->weighing;
    m_sides = sides;
    m_currency = shown(comparison->settings.currency);
    const QSignalBlocker quiet(m_scenario);
    const QString before = m_scenario->currentText();
    const bool priced = m_shownPrice != m_weighing.otherPricePerKwh && m_shownPrice != unknown;
    m_shownPrice = m_weighing.otherPricePerKwh;
    m_scenario->clear();
    for (const results::CostScenarioText& each : m_text.scenarios)
        m_scenario->addItem(capitalised(shown(each.name)));
    // Switches to the second price if it was just typed.
    const int other = m_scenario->count() > 1 ? 1 : 0;
    m_scenario->setCurrentIndex(
        priced && m_weighing.otherPricePerKwh ? other : std::max(m_scenario->findText(before), 0));
    m_scenario->setEnabled(m_scenario->count() > 1);
    for (QuantityField* field : {m_perYear, m_otherPrice})
        field->setFormat(format);
    if (!m_perYear->edit()->hasFocus() || !m_perYear->edit()->isModified())
        m_perYear->setNumber(m_weighing.batchesPerYear);
    if (!m_otherPrice->edit()->hasFocus() || !m_otherPrice->edit()->isModified())
        m_otherPrice->setNumber(m_weighing.otherPricePerKwh);
    m_remarks->setText(sentences({m_text.timeOfUse, m_text.why}).join(QLatin1Char(' ')));
    m_remarks->setVisible(!m_remarks->text().isEmpty());
    draw();
}

void MoneyCard::draw()
{
    TableText table;
    table.header = {{}, QStringLiteral("A"), QStringLiteral("B")};
    table.numeric = {false, true, true};
    table.rows.push_back({{Words::tr("Parts"), {}, false},
                          {shown(m_text.partsA), {}, true},
                          {shown(m_text.partsB), {}, true}});
    const auto which = static_cast<std::size_t>(std::max(m_scenario->currentIndex(), 0));
    if (which >= m_text.scenarios.size()) {
        m_sentence->clear();
        m_sentence->hide();
        m_picture->setPicture(nullptr);
        m_figures->setWords(std::move(table));
        return;
    }
    const results::CostScenarioText& scenario = m_text.scenarios[which];
    table.rows.push_back({{Words::tr("Each batch"), {}, false},
                          {shown(scenario.perBatchA), {}, true},
                          {shown(scenario.perBatchB), {}, true}});
    m_figures->setWords(std::move(table));
    m_sentence->setText(
        sentences({scenario.sentence, scenario.yearSentence}).join(QLatin1Char(' ')));
    m_sentence->show();
    m_picture->setPicture(std::make_shared<TotalCostPicture>(m_money, which, shown(scenario.name),
                                                             m_currency, m_sides),
                          m_sentence->text());
}

void MoneyCard::takeFields()
{
    const auto perYear = m_perYear->number();
    const auto price = m_otherPrice->number();
    if (!perYear || !price)
        return;
    Weighing wanted = m_weighing;
    wanted.batchesPerYear = *perYear;
    wanted.otherPricePerKwh = *price;
    if (wanted != m_weighing)
        Q_EMIT weighingWanted(wanted);
}

QString MoneyCard::sentence() const
{
    return m_sentence->text();
}

} // namespace holdband::ui
