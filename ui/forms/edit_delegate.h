// How a cell of an EditTable is edited and drawn: a line to type in, a list to choose from, and a
// mark for a refused value.
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
    /// Tab moves on as Enter does, and opens the next cell.
    bool eventFilter(QObject* editor, QEvent* event) override;
    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override;

Q_SIGNALS:
    /// Tab was pressed in a cell's editor; the typed text is stored.
    void tabbed();
};

} // namespace holdband::ui
