// How a cell of an EditTable is typed and drawn: a line to type in, a list to choose from, and a
// mark beside what was refused.
#pragma once

#include <QStyledItemDelegate>

namespace holdband::ui {

class EditDelegate : public QStyledItemDelegate {
    Q_OBJECT
public:
    using QStyledItemDelegate::QStyledItemDelegate;

    QWidget* createEditor(QWidget* parent, const QStyleOptionViewItem& option,
                          const QModelIndex& index) const override;
    void updateEditorGeometry(QWidget* editor, const QStyleOptionViewItem& option,
                              const QModelIndex& index) const override;
    void setEditorData(QWidget* editor, const QModelIndex& index) const override;
    void setModelData(QWidget* editor, QAbstractItemModel* model,
                      const QModelIndex& index) const override;
    /// Wide enough to type in, and for the longest choice with its arrow.
    QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;
    /// Tab goes on as Enter does, and types on.
    bool eventFilter(QObject* editor, QEvent* event) override;
    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override;

Q_SIGNALS:
    /// Tab was pressed in a cell's editor; what was typed is kept.
    void tabbed();
};

} // namespace holdband::ui
