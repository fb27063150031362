// Above the raw rows: each column's meaning, its unit, and the reason for the guess.
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
    /// Aligned with the columns of the table, of which the first is the line number.
    explicit ColumnHeads(QTableView* table, QWidget* parent = nullptr);

    void showLog(const LogState& log, const std::vector<intake::Target>& targets);
    std::vector<intake::ColumnChoice> choices() const;
    TargetBox* box(int column) const;
    UnitBox* unitBox(int column) const;
    /// The text below a column's choice.
    QString reason(int column) const;
    int columnCount() const { return static_cast<int>(m_heads.size()); }
    QSize sizeHint() const override;

    /// A log of a few sensors does not have more columns; the others are ignored.
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
