#include "ui/forms/edit_table.h"

#include "ui/forms/edit_delegate.h"
#include "ui/theme/theme.h"
#include "ui/words/words.h"

#include <QHBoxLayout>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>
#include <QTableView>

namespace holdband::ui {

EditTable::EditTable(const QString& what, std::vector<EditColumn> columns, int wide,
                     QWidget* parent)
    : QWidget(parent), m_what(what), m_model(new EditTableModel(std::move(columns), this)),
      m_view(new QTableView(this)),
      m_add(addButtonFor(Words::tr("Add"), Words::tr("Add a %1").arg(what))),
      m_remove(addButtonFor(Words::tr("Remove"), Words::tr("Remove the %1").arg(what))),
      m_up(addButtonFor(Words::tr("Up"), Words::tr("Move the %1 up").arg(what))),
      m_down(addButtonFor(Words::tr("Down"), Words::tr("Move the %1 down").arg(what))),
      m_problem(makeLabel({}, "warn", this)), m_wide(wide)
{
    prepareView();
    layOut();
    connect(m_add, &QPushButton::clicked, this, &EditTable::addRow);
    connect(m_remove, &QPushButton::clicked, this, &EditTable::removeRow);
    connect(m_up, &QPushButton::clicked, this, [this] { moveRow(-1); });
    connect(m_down, &QPushButton::clicked, this, [this] { moveRow(+1); });
    connect(m_model, &EditTableModel::edited, this, &EditTable::edited);
    for (const auto signal : {&QAbstractItemModel::rowsInserted, &QAbstractItemModel::rowsRemoved})
        connect(m_model, signal, this, &EditTable::fit);
    connect(m_model, &QAbstractItemModel::modelReset, this, &EditTable::fit);
    connect(m_model, &QAbstractItemModel::dataChanged, this, &EditTable::showProblem);
    connect(m_view->selectionModel(), &QItemSelectionModel::currentChanged, this,
            [this](const QModelIndex& now) {
                showProblem();
                Q_EMIT rowChosen(now.row());
            });
    m_add->setAutoDefault(true); // Enter moves from the last cell to this button, and adds
    fit();
}

QPushButton* EditTable::addButtonFor(const QString& words, const QString& name)
{
    auto* button = new QPushButton(words, this);
    button->setAccessibleName(name);
    button->setToolTip(name);
    button->setAutoDefault(false);
    return button;
}

void EditTable::prepareView()
{
    m_view->setModel(m_model);
    auto* delegate = new EditDelegate(m_view);
    m_view->setItemDelegate(delegate);
    connect(delegate, &QAbstractItemDelegate::closeEditor, this,
            [this](QWidget*, QAbstractItemDelegate::EndEditHint hint) {
                if (hint == QAbstractItemDelegate::SubmitModelCache) // by Enter
                    goOn();
            });
    connect(delegate, &EditDelegate::tabbed, this, [this] {
        goOn();
        const QModelIndex now = m_view->currentIndex();
        if (!m_add->hasFocus() && now.flags() & Qt::ItemIsEditable)
            m_view->edit(now);
    });
    m_view->setAccessibleName(Words::tr("List: each row is a %1").arg(m_what));
    m_view->setShowGrid(false);
    m_view->setAlternatingRowColors(true);
    m_view->setTabKeyNavigation(false);
    m_view->setWordWrap(false);
    m_view->setSelectionMode(QAbstractItemView::SingleSelection);
    m_view->setSelectionBehavior(QAbstractItemView::SelectItems);
    m_view->setEditTriggers(QAbstractItemView::EditTriggers(QAbstractItemView::AllEditTriggers) &
                            ~QAbstractItemView::CurrentChanged);
    m_view->setHorizontalScrollMode(QAbstractItemView::ScrollPerPixel);
    m_view->verticalHeader()->hide();
    m_view->verticalHeader()->setDefaultSectionSize(m_view->fontMetrics().height() + 11);
    QHeaderView* header = m_view->horizontalHeader();
    header->setHighlightSections(false);
    header->setSectionsClickable(false);
    header->setMinimumSectionSize(44);
    m_view->installEventFilter(this);
    m_add->installEventFilter(this);
}

void EditTable::layOut()
{
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(4);
    layout->addWidget(m_view);
    layout->addWidget(m_problem);
    auto* buttons = new QHBoxLayout;
    buttons->setSpacing(6);
    for (QPushButton* button : {m_add, m_remove, m_up, m_down})
        buttons->addWidget(button);
    buttons->addStretch();
    layout->addLayout(buttons);
    m_problem->hide();
    setFocusProxy(m_view);
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Maximum);
}

void EditTable::hideMoves()
{
    m_up->hide();
    m_down->hide();
}

void EditTable::setVisibleRows(int least, int most)
{
    m_leastRows = least;
    m_mostRows = most;
    fit();
}

/// The view updates its column widths only on request.
void EditTable::fitColumns()
{
    for (int i = 0; i < m_model->columnCount(); ++i)
        m_view->horizontalHeader()->setSectionResizeMode(
            i, i == m_wide ? QHeaderView::Stretch : QHeaderView::ResizeToContents);
}

void EditTable::fit()
{
    fitColumns();
    const int rows = std::clamp(m_model->rowCount(), m_leastRows, m_mostRows);
    const int header = m_view->horizontalHeader()->sizeHint().height();
    m_view->setFixedHeight(header + rows * m_view->verticalHeader()->defaultSectionSize() + 4);
    const bool any = m_model->rowCount() > 0;
    m_remove->setEnabled(any);
    m_up->setEnabled(m_model->rowCount() > 1);
    m_down->setEnabled(m_model->rowCount() > 1);
    showProblem();
}

QString EditTable::problem() const
{
    return m_problem->text();
}

void EditTable::showProblem()
{
    const QModelIndex current = m_view->currentIndex();
    QModelIndex refused = current;
    if (!current.isValid() || m_model->refusalAt(current.row(), current.column()).isEmpty())
        refused = m_model->firstRefused();
    QString words;
    if (refused.isValid())
        words = Words::tr("Row %1, %2: %3.")
                    .arg(refused.row() + 1)
                    .arg(m_model->columns()[static_cast<std::size_t>(refused.column())].title,
                         m_model->refusalAt(refused.row(), refused.column()));
    m_problem->setText(words);
    m_problem->setVisible(!words.isEmpty());
}

bool EditTable::check()
{
    m_model->judgeUntouched();
    const QModelIndex refused = m_model->firstRefused();
    if (!refused.isValid())
        return true;
    m_view->setCurrentIndex(refused);
    m_view->setFocus();
    showProblem();
    return false;
}

int EditTable::currentRow() const
{
    return m_view->currentIndex().row();
}

void EditTable::chooseRow(int row)
{
    if (row >= 0 && row < m_model->rowCount() && row != currentRow())
        m_view->setCurrentIndex(m_model->index(row, std::max(0, m_view->currentIndex().column())));
}

void EditTable::addRow()
{
    const int at = currentRow() < 0 ? m_model->rowCount() : currentRow() + 1;
    m_model->insertBlank(at);
    m_view->setCurrentIndex(m_model->index(at, 0));
    m_view->setFocus();
}

void EditTable::removeRow()
{
    const int row = currentRow() < 0 ? m_model->rowCount() - 1 : currentRow();
    m_model->removeAt(row);
    if (m_model->rowCount() > 0)
        m_view->setCurrentIndex(m_model->index(std::min(row, m_model->rowCount() - 1), 0));
}

void EditTable::moveRow(int by)
{
    m_model->moveTo(currentRow(), currentRow() + by);
    showProblem();
}

/// The first empty cell of the row; else the first cell.
int EditTable::firstToType(int row) const
{
    for (int column = 0; column < m_model->columnCount(); ++column) {
        const QModelIndex at = m_model->index(row, column);
        if (at.flags() & Qt::ItemIsEditable && at.data(Qt::EditRole).toString().isEmpty())
            return column;
    }
    return 0;
}

void EditTable::goOn()
{
    const QModelIndex now = m_view->currentIndex();
    if (!now.isValid())
        return addRow();
    for (int column = now.column() + 1; column < m_model->columnCount(); ++column) {
        if (m_model->flags(m_model->index(now.row(), column)) & Qt::ItemIsEditable)
            return m_view->setCurrentIndex(m_model->index(now.row(), column));
    }
    if (now.row() + 1 < m_model->rowCount())
        m_view->setCurrentIndex(m_model->index(now.row() + 1, firstToType(now.row() + 1)));
    else
        m_add->setFocus();
}

bool EditTable::actOn(int key, Qt::KeyboardModifiers modifiers)
{
    if (key == Qt::Key_Insert)
        addRow();
    else if (key == Qt::Key_Delete && modifiers & Qt::ControlModifier)
        removeRow();
    else if (key == Qt::Key_Up && modifiers & Qt::AltModifier)
        moveRow(-1);
    else if (key == Qt::Key_Down && modifiers & Qt::AltModifier)
        moveRow(+1);
    else if (key == Qt::Key_Delete && m_view->currentIndex().flags() & Qt::ItemIsEditable)
        m_model->setData(m_view->currentIndex(), QString(), Qt::EditRole);
    else if ((key == Qt::Key_Return || key == Qt::Key_Enter) && !modifiers)
        goOn();
    else
        return false;
    return true;
}

/// Ctrl+Enter saves the dialog; the button that has the focus shall not take it for Enter.
bool EditTable::passOnSaving(QEvent& event) const
{
    if (event.type() != QEvent::KeyPress)
        return false;
    const auto& key = static_cast<const QKeyEvent&>(event);
    const bool enter = key.key() == Qt::Key_Return || key.key() == Qt::Key_Enter;
    if (!enter || !(key.modifiers() & Qt::ControlModifier))
        return false;
    event.ignore();
    return true;
}

bool EditTable::eventFilter(QObject* watched, QEvent* event)
{
    if (watched == m_add)
        return passOnSaving(*event);
    // A key that the cell's own editor has not used arrives here as well; it is not for the table.
    const QWidget* focused = m_view->window()->focusWidget();
    const bool typing = focused && m_view->viewport()->isAncestorOf(focused);
    if (event->type() == QEvent::KeyPress && !typing) {
        const auto* key = static_cast<const QKeyEvent*>(event);
        if (actOn(key->key(), key->modifiers()))
            return true;
    }
    return QWidget::eventFilter(watched, event);
}

} // namespace holdband::ui
