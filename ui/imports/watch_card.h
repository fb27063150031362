// Files and folders that are polled automatically while the window is open.
#pragma once

#include "core/intake/watch/watch.h"
#include "core/store/records/watches.h"
#include "ui/tables/table_card.h"

#include <QMap>
#include <memory>
#include <vector>

class QPushButton;
class QTimer;

namespace holdband::ui {

class Session;

class WatchCard : public TableCard {
    Q_OBJECT
public:
    explicit WatchCard(Session& session, QWidget* parent = nullptr);

    void refresh();
    void watch(const QString& path);
    /// Polls all of them now.
    void poll();
    const std::vector<store::Watch>& watches() const { return m_watches; }
    QPushButton* fileButton() const { return m_file; }
    QPushButton* removeButton() const { return m_remove; }

Q_SIGNALS:
    void fileWanted();
    void folderWanted();
    void failed(const QString& sentence);

private:
    void takeWatches(std::vector<store::Watch> watches);
    void takeReports(const std::vector<intake::WatchReport>& reports);
    void showTable();
    void removeChosen();
    void change(store::HistoryEntry entry, std::function<Done(const store::Change&)> work);

    Session* m_session;
    std::vector<store::Watch> m_watches;
    QMap<QString, QString> m_words; ///< the text of the last poll, by path
    QPushButton* m_remove;
    QPushButton* m_file = nullptr;
    QTimer* m_timer;
    bool m_polling = false;
    /// Used only by the writing worker, which may outlive this card.
    std::shared_ptr<intake::WatchMemory> m_memory = std::make_shared<intake::WatchMemory>();
};

} // namespace holdband::ui
