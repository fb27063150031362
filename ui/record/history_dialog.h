// What was changed when, and why: the newest first; the chosen change's rows, before and after.
#pragma once

#include "core/store/history/history.h"
#include "core/text/zone.h"

#include <QDialog>

class QLabel;
class QPushButton;
class QTableView;

namespace holdband::ui {

class Session;
class TableModel;

class HistoryDialog : public QDialog {
    Q_OBJECT
public:
    explicit HistoryDialog(Session& session, QWidget* parent = nullptr);

    void refresh();
    TableModel* acts() const { return m_acts; }
    TableModel* rows() const { return m_rows; }

private:
    void layOut();
    void take(std::vector<store::HistoryEntry> entries, const Zone& zone);
    void showRows(int act);

    Session* m_session;
    std::vector<store::HistoryEntry> m_entries;
    TableModel* m_acts;
    TableModel* m_rows;
    QTableView* m_actTable;
    QTableView* m_rowTable;
    QLabel* m_remark;
    QPushButton* m_more;
    int m_most;
};

} // namespace holdband::ui
