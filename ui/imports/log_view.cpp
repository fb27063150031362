#include "ui/imports/log_view.h"

#include "ui/imports/column_heads.h"
#include "ui/imports/ignored_line.h"
#include "ui/imports/import_text.h"
#include "ui/imports/log_choices.h"
#include "ui/imports/name_choices.h"
#include "ui/imports/rows_panel.h"
#include "ui/imports/sheet_choice.h"
#include "ui/theme/card.h"
#include "ui/theme/theme.h"
#include "ui/words/words.h"

#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QScrollBar>
#include <QSplitter>
#include <QStackedWidget>
#include <QTableView>

namespace holdband::ui {

using intake::Meaning;

LogView::LogView(QWidget* parent)
    : QWidget(parent), m_raw(new TableModel(this)), m_result(new TableModel(this)),
      m_rawTable(makeLogTable(Words::tr("The file’s first rows"), m_raw, this)),
      m_resultTable(makeLogTable(Words::tr("Preview"), m_result, this)),
      m_heads(new ColumnHeads(m_rawTable, this)), m_sheet(new SheetChoice(this)),
      m_choices(new LogChoices(this)), m_names(new NameChoices(this)),
      m_ignored(new IgnoredLine(this)), m_rows(new RowsPanel(this)),
      m_stack(new QStackedWidget(this)), m_remarks(makeLabel({}, "muted", this)),
      m_forget(new QPushButton(Words::tr("&Detect again"), this))
{
    auto* choices = new QHBoxLayout;
    choices->addWidget(m_choices, 1);
    choices->addWidget(m_forget);
    m_forget->setToolTip(Words::tr("Without what was chosen for the last file of this shape"));
    m_stack->addWidget(makePreview());
    m_stack->addWidget(m_rows);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(spacing::gap);
    layout->addWidget(m_sheet);
    layout->addLayout(choices);
    layout->addWidget(m_names);
    layout->addWidget(m_ignored);
    layout->addWidget(m_stack, 1);
    layout->addWidget(m_remarks);
    layout->addWidget(makeCounts());
    connectParts();
    showCounts();
}

QWidget* LogView::makePreview()
{
    auto* left = new Card(Words::tr("The file’s first rows"), this);
    left->contents()->addWidget(m_heads);
    left->contents()->addWidget(m_rawTable, 1);
    auto* right = new Card(Words::tr("Preview"), this);
    m_waits =
        makeLabel(Words::tr("The preview appears after every question about the file is answered."),
                  "muted", right);
    m_waits->setAlignment(Qt::AlignLeft | Qt::AlignTop);
    right->contents()->addWidget(m_waits, 1);
    right->contents()->addWidget(m_resultTable, 1);
    auto* splitter = new QSplitter(this);
    splitter->addWidget(left);
    splitter->addWidget(right);
    splitter->setStretchFactor(0, 3);
    splitter->setStretchFactor(1, 2);
    splitter->setChildrenCollapsible(false);
    return splitter;
}

QWidget* LogView::makeCounts()
{
    auto* row = new QWidget(this);
    m_countRow = row;
    auto* layout = new QHBoxLayout(row);
    layout->setContentsMargins(0, 0, 0, 0);
    for (const RowOutcome outcome : {RowOutcome::added, RowOutcome::alreadyThere,
                                     RowOutcome::conflicting, RowOutcome::rejected}) {
        auto* button = new QPushButton(row);
        button->setToolTip(Words::tr("Opens these rows"));
        connect(button, &QPushButton::clicked, this, [this, outcome] { open(outcome); });
        layout->addWidget(button);
        m_counts[static_cast<std::size_t>(outcome)] = button;
    }
    layout->addStretch();
    return row;
}

void LogView::connectParts()
{
    const auto chosen = [this] { Q_EMIT mapChosen(map()); };
    connect(m_heads, &ColumnHeads::changed, this, chosen);
    connect(m_names, &NameChoices::changed, this, chosen);
    connect(m_choices, &LogChoices::changed, this, chosen);
    connect(m_sheet, &SheetChoice::chosen, this, &LogView::sheetChosen);
    connect(m_ignored, &IgnoredLine::columnWanted, this, [this](int column) {
        m_stack->setCurrentIndex(0);
        if (column < m_heads->columnCount())
            m_heads->box(column)->setFocus();
    });
    connect(m_choices, &LogChoices::registerDropChosen, this, &LogView::registerDropChosen);
    connect(m_choices, &LogChoices::patternTyped, this, &LogView::checkPattern);
    connect(m_heads, &ColumnHeads::newSensorWanted, this,
            [this](int column) { Q_EMIT newTargetWanted(false, column, {}); });
    connect(m_heads, &ColumnHeads::newMeterWanted, this,
            [this](int column) { Q_EMIT newTargetWanted(true, column, {}); });
    connect(m_names, &NameChoices::newSensorWanted, this,
            [this](const QString& name) { Q_EMIT newTargetWanted(false, -1, name); });
    connect(m_names, &NameChoices::newMeterWanted, this,
            [this](const QString& name) { Q_EMIT newTargetWanted(true, -1, name); });
    connect(m_rows, &RowsPanel::closed, this, [this] { m_stack->setCurrentIndex(0); });
    connect(m_rows, &RowsPanel::saveWanted, this, &LogView::saveRejectsWanted);
    connect(m_forget, &QPushButton::clicked, this, &LogView::forgetWanted);
    connect(m_rawTable->verticalScrollBar(), &QScrollBar::valueChanged,
            m_resultTable->verticalScrollBar(), &QScrollBar::setValue);
    connect(m_resultTable->verticalScrollBar(), &QScrollBar::valueChanged,
            m_rawTable->verticalScrollBar(), &QScrollBar::setValue);
}

void LogView::showLog(const LogState& log, const std::vector<intake::Target>& targets,
                      const Zone& zone)
{
    const bool other = m_log.source.path != log.source.path ||
                       m_log.source.text != log.source.text ||
                       m_log.source.sheet != log.source.sheet;
    const bool rows = other || !m_log.preview || m_raw->rowCount() == 0 ||
                      (log.preview && (log.preview->layout != m_log.preview->layout ||
                                       log.preview->rows != m_log.preview->rows));
    m_log = log;
    m_zone = zone;
    if (other)
        m_stack->setCurrentIndex(0);
    if (rows || !log.preview) {
        m_raw->setWords(log.preview ? rawTable(*log.preview) : TableText{});
        fitColumns(*m_rawTable, 200, 300);
    }
    m_result->setWords(resultTable(log, zone));
    fitResult();
    m_waits->setVisible(m_result->rowCount() == 0);
    m_resultTable->setVisible(m_result->rowCount() > 0);
    m_heads->showLog(log, targets);
    m_names->showLog(log, targets);
    m_ignored->showLog(log);
    m_sheet->showLog(log);
    m_choices->showLog(log, zone);
    m_choices->setVisible(log.preview.has_value());
    m_forget->setVisible(log.remembered);
    m_remarks->setText(remarksOn(log).join(QLatin1Char(' ')));
    showCounts();
}

/// A text about an entire row spans all columns.
void LogView::fitResult()
{
    const int columns = m_result->columnCount();
    m_resultTable->clearSpans();
    fitColumns(*m_resultTable, 90, 260);
    if (columns < 2)
        return;
    const QString time = QStringLiteral("30 Mar 2026 00:00  ");
    m_resultTable->setColumnWidth(
        0, std::max(m_resultTable->fontMetrics().horizontalAdvance(time) + 16,
                    m_resultTable->horizontalHeader()->sectionSizeHint(0)));
    for (int row = 0; row < m_result->rowCount(); ++row) {
        bool whole = true;
        for (int column = 1; column < columns; ++column)
            whole = whole && m_result->index(row, column).data().toString().isEmpty();
        if (whole)
            m_resultTable->setSpan(row, 0, 1, columns);
    }
}

void LogView::showCounts()
{
    for (const RowOutcome outcome : {RowOutcome::added, RowOutcome::alreadyThere,
                                     RowOutcome::conflicting, RowOutcome::rejected}) {
        const bool known = m_log.report && !m_log.problem;
        const std::int64_t count = known ? countOf(*m_log.report, outcome) : 0;
        QPushButton* button = m_counts[static_cast<std::size_t>(outcome)];
        button->setText(countWords(count, outcome));
        button->setEnabled(count > 0);
    }
    m_countRow->setVisible(m_log.report && !m_log.problem);
}

void LogView::open(RowOutcome outcome)
{
    if (!m_log.report)
        return;
    m_rows->showRows(*m_log.report, outcome, m_zone);
    m_stack->setCurrentIndex(1);
    m_rows->table()->setFocus();
}

void LogView::pointAt(Decision decision)
{
    if (!m_log.preview && m_sheet->isVisibleTo(this))
        return m_sheet->box()->setFocus();
    if (m_choices->pointAt(decision))
        return;
    if (decision == Decision::none || m_heads->columnCount() == 0)
        return;
    const bool unit = decision == Decision::unit || decision == Decision::headerUnit;
    int column = 0;
    for (int i = m_heads->columnCount() - 1; i >= 0; --i) {
        const bool open = unit ? m_heads->box(i)->meaning() == Meaning::reading
                               : m_heads->box(i)->meaning() == Meaning::ignored;
        column = open ? i : column;
    }
    if (unit && m_heads->unitBox(column)->isVisible())
        m_heads->unitBox(column)->setFocus();
    else
        m_heads->box(column)->setFocus();
}

void LogView::setChoosable(bool choosable)
{
    for (QWidget* widget : std::initializer_list<QWidget*>{m_heads, m_choices, m_names, m_forget})
        widget->setEnabled(choosable);
}

void LogView::setSheetChoosable(bool choosable)
{
    m_sheet->setEnabled(choosable);
}

intake::ColumnMap LogView::map() const
{
    intake::ColumnMap map = m_log.map;
    map.columns = m_heads->choices();
    if (m_log.map.columnOf(Meaning::name))
        map.names = m_names->choices();
    m_choices->fillIn(map);
    settleTime(map);
    return map;
}

void LogView::settleTime(intake::ColumnMap& map) const
{
    for (const Meaning meaning :
         {Meaning::time, Meaning::clock, Meaning::name, Meaning::value, Meaning::unit}) {
        const auto before = m_log.map.columnOf(meaning);
        for (std::size_t i = 0; i < map.columns.size(); ++i) {
            if (map.columns[i].meaning == meaning && i != before && before &&
                map.columns[*before].meaning == meaning)
                map.columns[*before].meaning = Meaning::ignored;
        }
    }
    if (map.columnOf(Meaning::time) != m_log.map.columnOf(Meaning::time)) {
        map.timeUnit.reset();
        map.start.reset();
    }
}

void LogView::checkPattern(const QString& pattern)
{
    if (m_log.preview)
        m_choices->showPatternCheck(intake::tryPattern(*m_log.preview, map(), core(pattern)));
}

} // namespace holdband::ui
