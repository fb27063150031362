// A quiet table inside a card: no grid, no frame, just as high as its rows.
#pragma once

#include <QTableView>

namespace holdband::ui {

class PlainTable : public QTableView {
    Q_OBJECT
public:
    /// `name` for those who hear the window.
    explicit PlainTable(const QString& name, QWidget* parent = nullptr);

    /// The column that takes the room left over; the others are as wide as their contents.
    void setWideColumn(int column);
    void setModel(QAbstractItemModel* model) override;
    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

protected:
    bool event(QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    void fit();
    void explainCurrent();
    int m_wide = 0;
};

} // namespace holdband::ui
