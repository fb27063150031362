#include "ui/imports/column_heads.h"

#include "ui/theme/theme.h"
#include "ui/words/words.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QScrollBar>
#include <QSignalBlocker>
#include <QTableView>
#include <algorithm>

namespace holdband::ui {

using intake::Meaning;

namespace {

/// The column's result of the last reading, with its unit and the reason.
const intake::ImportedColumn* takenAs(const LogState& log, const std::string& name)
{
    if (!log.report)
        return nullptr;
    for (const intake::ImportedColumn& column : log.report->columns) {
        if (column.name == name)
            return &column;
    }
    return nullptr;
}

QString reasonText(const LogState& log, std::size_t column)
{
    const intake::ColumnGuess& guess = log.preview->columns[column];
    const intake::ColumnChoice& choice = log.map.columns[column];
    if (choice.meaning != guess.choice.meaning || choice.of != guess.choice.of)
        return Words::tr("as chosen");
    QString words = shown(guess.reason);
    // A given layout is no reason; dates, patterns and a start have their own.
    const bool decided =
        log.report && (log.report->file.dateOrder || log.map.timePattern || log.map.start);
    if (choice.meaning == Meaning::time && decided)
        words = shown(log.report->file.timeReason);
    else if (choice.meaning == Meaning::time && !log.preview->orderReason.empty())
        words = shown(log.preview->orderReason);
    return words;
}

} // namespace

ColumnHeads::ColumnHeads(QTableView* table, QWidget* parent) : QWidget(parent), m_table(table)
{
    setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed);
    connect(table->horizontalScrollBar(), &QScrollBar::valueChanged, this, &ColumnHeads::place);
    connect(table->horizontalHeader(), &QHeaderView::sectionResized, this, &ColumnHeads::place);
    connect(table->horizontalHeader(), &QHeaderView::geometriesChanged, this, &ColumnHeads::place);
}

QSize ColumnHeads::sizeHint() const
{
    const int height =
        m_heads.empty() ? fontMetrics().height() * 4 : m_heads.front().frame->sizeHint().height();
    return {200, height};
}

ColumnHeads::Head ColumnHeads::makeHead(int column)
{
    Head head{new QWidget(this), nullptr, nullptr, nullptr};
    auto* layout = new QVBoxLayout(head.frame);
    layout->setContentsMargins(0, 0, 6, 2);
    layout->setSpacing(2);
    auto* row = new QHBoxLayout;
    row->setSpacing(3);
    head.box = new TargetBox(true, head.frame);
    head.unit = new UnitBox(head.frame);
    head.reason = makeLabel({}, "muted", head.frame);
    head.reason->setAlignment(Qt::AlignLeft | Qt::AlignTop);
    head.reason->setFixedHeight(2 * fontMetrics().lineSpacing() + 2);
    row->addWidget(head.box, 5);
    row->addWidget(head.unit, 2);
    layout->addLayout(row);
    layout->addWidget(head.reason);
    for (QWidget* widget : std::initializer_list<QWidget*>{head.box, head.unit})
        widget->installEventFilter(this);
    connect(head.box, &TargetBox::chosen, this, &ColumnHeads::changed);
    connect(head.unit, &QComboBox::activated, this, &ColumnHeads::changed);
    connect(head.box, &TargetBox::newSensorWanted, this,
            [this, column] { Q_EMIT newSensorWanted(column); });
    connect(head.box, &TargetBox::newMeterWanted, this,
            [this, column] { Q_EMIT newMeterWanted(column); });
    return head;
}

void ColumnHeads::makeHeads(int count)
{
    while (static_cast<int>(m_heads.size()) > count) {
        delete m_heads.back().frame;
        m_heads.pop_back();
    }
    while (static_cast<int>(m_heads.size()) < count) {
        m_heads.push_back(makeHead(static_cast<int>(m_heads.size())));
        m_heads.back().frame->show();
    }
}

void ColumnHeads::showLog(const LogState& log, const std::vector<intake::Target>& targets)
{
    const int count = log.preview ? static_cast<int>(log.map.columns.size()) : 0;
    makeHeads(std::min(count, mostColumns));
    m_rest.clear();
    for (int i = mostColumns; i < count; ++i)
        m_rest.push_back(log.map.columns[static_cast<std::size_t>(i)]);
    for (std::size_t i = 0; i < m_heads.size(); ++i)
        fill(m_heads[i], static_cast<int>(i), log, targets);
    updateGeometry();
    place();
}

void ColumnHeads::fill(Head& head, int column, const LogState& log,
                       const std::vector<intake::Target>& targets)
{
    const auto index = static_cast<std::size_t>(column);
    const intake::ColumnChoice& choice = log.map.columns[index];
    const QString header = shown(log.preview->columns[index].header);
    head.box->setTargets(targets);
    head.box->setChoice(choice.meaning, choice.of);
    head.box->setAccessibleName(Words::tr("%1 is").arg(header));
    const auto target =
        std::find_if(targets.begin(), targets.end(),
                     [&](const intake::Target& each) { return each.name == choice.of; });
    const bool reading = choice.meaning == Meaning::reading && target != targets.end();
    head.unit->setVisible(reading);
    QString words = reasonText(log, index);
    if (reading) {
        const intake::ImportedColumn* taken = takenAs(log, choice.of);
        head.unit->setKind(target->kind, taken ? std::optional(taken->unit) : std::nullopt);
        head.unit->setUnit(choice.unit);
        head.unit->setAccessibleName(Words::tr("Unit of %1").arg(header));
        const QString unit =
            taken ? shown(taken->unitReason) : shown(log.preview->columns[index].unitReason);
        if (!unit.isEmpty())
            words = unit + QStringLiteral("; ") + words;
    }
    head.reason->setText(words);
    head.reason->setToolTip(words);
    head.box->setAccessibleDescription(words);
}

std::vector<intake::ColumnChoice> ColumnHeads::choices() const
{
    std::vector<intake::ColumnChoice> choices;
    for (const Head& head : m_heads)
        choices.push_back(
            {head.box->meaning(), head.box->of(),
             head.box->meaning() == Meaning::reading ? head.unit->unit() : std::nullopt});
    choices.insert(choices.end(), m_rest.begin(), m_rest.end());
    return choices;
}

TargetBox* ColumnHeads::box(int column) const
{
    return m_heads[static_cast<std::size_t>(column)].box;
}

UnitBox* ColumnHeads::unitBox(int column) const
{
    return m_heads[static_cast<std::size_t>(column)].unit;
}

QString ColumnHeads::reason(int column) const
{
    return m_heads[static_cast<std::size_t>(column)].reason->text();
}

void ColumnHeads::place()
{
    const QHeaderView* header = m_table->horizontalHeader();
    const int left = m_table->viewport()->mapTo(m_table, QPoint(0, 0)).x();
    const int lines = header->sectionSize(0);
    for (std::size_t i = 0; i < m_heads.size(); ++i) {
        const int section = static_cast<int>(i) + 1;
        if (section >= header->count())
            break;
        const int x = left + header->sectionViewportPosition(section);
        m_heads[i].frame->setGeometry(x, 0, header->sectionSize(section), height());
        m_heads[i].frame->setVisible(x + header->sectionSize(section) > lines / 2);
    }
}

void ColumnHeads::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    place();
}

bool ColumnHeads::eventFilter(QObject* watched, QEvent* event)
{
    if (event->type() == QEvent::FocusIn)
        bringIntoView(qobject_cast<QWidget*>(watched));
    return QWidget::eventFilter(watched, event);
}

/// When the keyboard focus moves through the columns, the table scrolls with it.
void ColumnHeads::bringIntoView(const QWidget* widget)
{
    for (std::size_t i = 0; i < m_heads.size(); ++i) {
        if (m_heads[i].frame->isAncestorOf(widget) && m_table->model())
            m_table->scrollTo(m_table->model()->index(0, static_cast<int>(i) + 1));
    }
}

} // namespace holdband::ui
