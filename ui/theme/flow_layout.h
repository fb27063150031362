// Puts widgets side by side and goes on in the next line where the width ends.
#pragma once

#include <QLayout>
#include <QList>

namespace holdband::ui {

class FlowLayout : public QLayout {
public:
    FlowLayout(int across, int down); ///< pixels between neighbours and between lines
    ~FlowLayout() override;

    void addItem(QLayoutItem* item) override;
    int count() const override { return static_cast<int>(m_items.size()); }
    QLayoutItem* itemAt(int index) const override { return m_items.value(index); }
    QLayoutItem* takeAt(int index) override;
    Qt::Orientations expandingDirections() const override { return {}; }
    bool hasHeightForWidth() const override { return true; }
    int heightForWidth(int width) const override;
    QSize sizeHint() const override; ///< all in one line
    QSize minimumSize() const override;
    void setGeometry(const QRect& rect) override;

private:
    /// Returns the height that is used; moves the widgets only if `apply`.
    int arrange(const QRect& rect, bool apply) const;

    QList<QLayoutItem*> m_items;
    int m_across;
    int m_down;
};

} // namespace holdband::ui
