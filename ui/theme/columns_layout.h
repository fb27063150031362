// Puts widgets side by side as columns that fill the width, equally high; those for which there is
// no space go on in the next line, which they fill too.
#pragma once

#include <QLayout>
#include <QList>

namespace holdband::ui {

class ColumnsLayout : public QLayout {
public:
    explicit ColumnsLayout(int gap); ///< pixels between neighbours and between lines
    ~ColumnsLayout() override;

    /// `share`: of the width that is left over in a line; 0: it takes only what it needs. `least`:
    /// the width below which it goes on in the next line, in pixels; never below its own least.
    void addColumn(QWidget* widget, int share, int least = 0);

    void addItem(QLayoutItem* item) override;
    int count() const override { return static_cast<int>(m_columns.size()); }
    QLayoutItem* itemAt(int index) const override;
    QLayoutItem* takeAt(int index) override;
    Qt::Orientations expandingDirections() const override { return Qt::Horizontal; }
    bool hasHeightForWidth() const override { return true; }
    int heightForWidth(int width) const override;
    QSize sizeHint() const override;    ///< all in one line
    QSize minimumSize() const override; ///< all below each other
    void setGeometry(const QRect& rect) override;

private:
    struct Column {
        QLayoutItem* item = nullptr;
        int share = 1;
        int least = 0;

        int width() const;
    };
    struct Placed {
        const Column* column = nullptr;
        int width = 0;
    };
    using Line = QList<Placed>;

    QList<Line> linesFor(int width) const;
    void spread(Line& line, int width) const;
    static int heightOf(const Line& line);

    QList<Column> m_columns;
    int m_gap;
};

} // namespace holdband::ui
