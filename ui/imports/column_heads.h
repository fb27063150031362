// Above the raw rows: for each column what it means, its unit, and why it was taken for that.
#pragma once

#include "ui/imports/log_state.h"
#include "ui/imports/target_box.h"

#include <QWidget>
#include <vector>

class QLabel;
class QTableView;

namespace holdband::ui {

class ColumnHeads : public QWidget {
    Q_OBJECT
public:
    /// Keeps over the columns of the table, the first of which is the line's number.
    explicit ColumnHeads(QTableView* table, QWidget* parent = nullptr);

    void showLog(const LogState& log, const std::vector<intake::Target>& targets);
    std::vector<intake::ColumnChoice> choices() const;
    TargetBox* box(int column) const;
    UnitBox* unitBox(int column) const;
    /// The words beneath a column's choice.
    QString reason(int column) const;
    int columnCount() const { return static_cast<int>(m_heads.size()); }
    QSize sizeHint() const override;

    /// More columns than these are no log of a few sensors: the others are ignored.
    static constexpr int mostColumns = 64;

Q_SIGNALS:
    void changed();
    void newSensorWanted(int column);
    void newMeterWanted(int column);

protected:
    void resizeEvent(QResizeEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    struct Head {
        QWidget* frame;
        TargetBox* box;
        UnitBox* unit;
        QLabel* reason;
    };
    Head makeHead(int column);
    void makeHeads(int count);
    void fill(Head& head, int column, const LogState& log,
              const std::vector<intake::Target>& targets);
    void place();
    void bringIntoView(const QWidget* widget);

    QTableView* m_table;
    std::vector<Head> m_heads;
    std::vector<intake::ColumnChoice> m_rest; ///< beyond mostColumns
};

} // namespace holdband::ui
