#include "ui/forms/form_dialog.h"

#include "core/store/history/history_text.h"
#include "ui/forms/buddy.h"
#include "ui/forms/edit_table.h"
#include "ui/forms/instant_field.h"
#include "ui/forms/save_change.h"
#include "ui/forms/save_row.h"
#include "ui/session/session.h"
#include "ui/theme/theme.h"
#include "ui/words/words.h"

#include <QCheckBox>
#include <QComboBox>
#include <QFormLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QRadioButton>
#include <QScreen>
#include <QScrollArea>
#include <QScrollBar>
#include <QSpinBox>

namespace holdband::ui {

FormDialog::FormDialog(Session& session, const QString& title, const QString& saveText,
                       QWidget* parent)
    : QDialog(parent), m_session(&session), m_foot(new SaveRow(saveText, this))
{
    setWindowTitle(title);
    setModal(true);
    setAttribute(Qt::WA_DeleteOnClose);
    layOut();
    connect(m_foot, &SaveRow::saveWanted, this, [this] {
        for (const EditTable* table : findChildren<EditTable*>())
            table->model()->removeBlankAtEnd();
        save();
    });
    connect(m_foot, &SaveRow::cancelWanted, this, &FormDialog::reject);
}

void FormDialog::layOut()
{
    m_inner = new QWidget;
    m_inner->setObjectName(QStringLiteral("inner"));
    m_form = new QFormLayout(m_inner);
    m_form->setContentsMargins(0, 0, 6, 0);
    m_form->setHorizontalSpacing(12);
    m_form->setVerticalSpacing(8);
    m_form->setFieldGrowthPolicy(QFormLayout::ExpandingFieldsGrow);
    m_form->setRowWrapPolicy(QFormLayout::DontWrapRows);
    m_form->setLabelAlignment(Qt::AlignLeft | Qt::AlignTop);
    auto* area = new QScrollArea(this);
    area->setWidget(m_inner);
    area->setWidgetResizable(true);
    area->setFocusPolicy(Qt::NoFocus);
    area->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(14, 12, 14, 12);
    layout->setSpacing(10);
    layout->addWidget(area, 1);
    layout->addWidget(m_foot);
}

/// Puts the widget after all existing ones in the Tab order, whichever was created first.
void FormDialog::placeLastInTabOrder(QWidget& widget)
{
    widget.setParent(this);
    widget.setParent(m_inner);
}

void FormDialog::addRow(const QString& label, QWidget* field)
{
    auto* words = new QLabel(label, m_inner);
    words->setMargin(4);
    setBuddyOf(*words, *field);
    placeLastInTabOrder(*field);
    m_form->addRow(words, field);
}

void FormDialog::addWide(QWidget* widget)
{
    placeLastInTabOrder(*widget);
    m_form->addRow(widget);
}

void FormDialog::addHeading(const QString& words)
{
    m_form->addRow(makeLabel(words, "title", m_inner));
}

QLineEdit* FormDialog::makeLine(const QString& name)
{
    auto* line = new QLineEdit(m_inner);
    line->setAccessibleName(name);
    return line;
}

void FormDialog::refuse(const QString& sentence, QWidget* at)
{
    m_foot->refuse(sentence);
    if (at)
        at->setFocus();
}

void FormDialog::commitChange(const store::HistoryEntry& entry,
                              std::function<Done(const store::Change&)> work)
{
    m_foot->setBusy(true);
    saveChange(*m_session, this, entry, std::move(work), [this, entry](Done done) {
        m_foot->setBusy(false);
        if (!done)
            return m_foot->refuse(sentence(done.error()));
        m_dirty = false;
        Q_EMIT saved(shown(store::historyText(entry)));
        accept();
    });
}

void FormDialog::setDirty()
{
    m_dirty = m_dirty || m_watching;
    m_foot->reset();
}

void FormDialog::watchFields()
{
    if (std::exchange(m_watching, true))
        return;
    for (const QLineEdit* line : findChildren<QLineEdit*>())
        connect(line, &QLineEdit::textEdited, this, &FormDialog::setDirty);
    for (const QComboBox* list : findChildren<QComboBox*>())
        connect(list, &QComboBox::currentIndexChanged, this, &FormDialog::setDirty);
    for (const QAbstractButton* button : findChildren<QAbstractButton*>())
        connect(button, &QAbstractButton::toggled, this, &FormDialog::setDirty);
    for (const QSpinBox* box : findChildren<QSpinBox*>())
        connect(box, &QSpinBox::valueChanged, this, &FormDialog::setDirty);
    for (const EditTable* table : findChildren<EditTable*>())
        connect(table, &EditTable::edited, this, &FormDialog::setDirty);
    for (const InstantField* field : findChildren<InstantField*>())
        connect(field, &InstantField::edited, this, &FormDialog::setDirty);
}

void FormDialog::reject()
{
    if (m_dirty && !m_foot->leaveAgreed())
        return;
    QDialog::reject();
}

/// In reading order: the rows from top to bottom, then the foot.
void FormDialog::orderTabs()
{
    QList<QWidget*> order;
    for (QWidget* widget : m_inner->findChildren<QWidget*>()) {
        if (widget->focusPolicy() & Qt::TabFocus && !widget->focusProxy() &&
            widget->window() == this) // a combo box opens its list in its own window
            order << widget;
    }
    order << m_foot->cancelButton() << m_foot->saveButton();
    for (qsizetype i = 1; i < order.size(); ++i)
        setTabOrder(order[i - 1], order[i]);
}

/// Ctrl+Enter saves from anywhere, including a table's cell.
void FormDialog::keyPressEvent(QKeyEvent* event)
{
    const bool enter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    if (enter && event->modifiers().testFlag(Qt::ControlModifier))
        m_foot->saveButton()->click();
    else
        QDialog::keyPressEvent(event);
}

void FormDialog::showEvent(QShowEvent* event)
{
    orderTabs();
    fitToScreen();
    QDialog::showEvent(event);
}

void FormDialog::fitToScreen()
{
    const QSize room = screen()->availableSize() - QSize(40, 60);
    const int width = std::min(std::max(this->width(), 560), room.width());
    const int wanted = m_inner->hasHeightForWidth() ? m_inner->heightForWidth(width - 40)
                                                    : m_inner->sizeHint().height();
    const int frame = m_foot->sizeHint().height() + 10 + 24 + 30;
    resize(width, std::min(std::max(wanted, m_inner->sizeHint().height()) + frame, room.height()));
}

} // namespace holdband::ui
