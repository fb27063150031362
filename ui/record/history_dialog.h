// The history of changes, the newest first, with the rows of the selected change before and after.
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
    TableModel* entryModel() const { return m_entryModel; }
    TableModel* rows() const { return m_rows; }

private:
    void layOut();
    void take(std::vector<store::StoredHistoryEntry> entries, const Zone& zone);
    void showRows(int row);

    Session* m_session;
    std::vector<store::StoredHistoryEntry> m_entries;
    TableModel* m_entryModel;
    TableModel* m_rows;
    QTableView* m_entryTable;
    QTableView* m_rowTable;
    QLabel* m_remark;
    QPushButton* m_more;
    int m_most;
};

} // namespace holdband::ui
