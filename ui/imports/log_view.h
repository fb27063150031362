// Shows one log: on the left its first rows with a meaning above each column, on the right the
// resulting readings, below the counts, each of which opens its rows.
#pragma once

#include "core/text/zone.h"
#include "ui/imports/log_state.h"
#include "ui/imports/log_tables.h"

#include <QWidget>
#include <array>
#include <vector>

class QLabel;
class QPushButton;
class QStackedWidget;
class QTableView;

namespace holdband::ui {

class ColumnHeads;
class IgnoredLine;
class LogChoices;
class NameChoices;
class RowsPanel;
class SheetChoice;

class LogView : public QWidget {
    Q_OBJECT
public:
    explicit LogView(QWidget* parent = nullptr);

    void showLog(const LogState& log, const std::vector<intake::Target>& targets, const Zone& zone);
    /// Focuses the control for that decision.
    void pointAt(Decision decision);
    void setChoosable(bool choosable);
    void setSheetChoosable(bool choosable);

    ColumnHeads* heads() const { return m_heads; }
    LogChoices* choices() const { return m_choices; }
    SheetChoice* sheet() const { return m_sheet; }
    IgnoredLine* ignored() const { return m_ignored; }
    NameChoices* names() const { return m_names; }
    RowsPanel* rows() const { return m_rows; }
    QPushButton* countButton(RowOutcome outcome) const
    {
        return m_counts[static_cast<std::size_t>(outcome)];
    }
    TableModel* raw() const { return m_raw; }
    TableModel* result() const { return m_result; }

Q_SIGNALS:
    void mapChosen(const holdband::intake::ColumnMap& map);
    void sheetChosen(const QString& sheet);
    void registerDropChosen(holdband::MeterEvent event);
    /// `column`: −1 for a name in a long log.
    void newTargetWanted(bool meter, int column, const QString& name);
    void saveRejectsWanted();
    void forgetWanted();

private:
    QWidget* makePreview();
    QWidget* makeCounts();
    void connectParts();
    void fitResult();
    void showCounts();
    void open(RowOutcome outcome);
    intake::ColumnMap map() const;
    void checkPattern(const QString& pattern);
    /// A column newly chosen as the time takes that meaning from the previous one, and what its
    /// numbers count is open again.
    void settleTime(intake::ColumnMap& map) const;

    LogState m_log;
    Zone m_zone;
    TableModel* m_raw;
    TableModel* m_result;
    QTableView* m_rawTable;
    QTableView* m_resultTable;
    ColumnHeads* m_heads;
    SheetChoice* m_sheet;
    LogChoices* m_choices;
    NameChoices* m_names;
    IgnoredLine* m_ignored;
    RowsPanel* m_rows;
    QStackedWidget* m_stack;
    QLabel* m_remarks;
    QLabel* m_waits = nullptr; ///< shown instead of the result while a choice is open
    QWidget* m_countRow = nullptr;
    QPushButton* m_forget;
    std::array<QPushButton*, 4> m_counts{};
};

} // namespace holdband::ui
