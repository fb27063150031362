// A simple table inside a card: no grid, no frame, as high as its rows.
#pragma once

#include <QTableView>

namespace holdband::ui {

class PlainTable : public QTableView {
    Q_OBJECT
public:
    /// `name`: the accessible name.
    explicit PlainTable(const QString& name, QWidget* parent = nullptr);

    /// Gives the column the remaining width; the others fit their contents.
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
