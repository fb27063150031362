// The menus, made from the window's actions.
#pragma once

#include "ui/window/page_row.h"

#include <functional>

class QMainWindow;

namespace holdband::ui {

enum class Zoom { in, out, all };

class UndoActions;

/// Actions on batches; all but newBatch are for the shown one.
struct BatchMenuActions {
    std::function<void()> newBatch;
    std::function<void()> pitchNow;
    std::function<void()> turnDownNow;
    std::function<void()> endNow;
    std::function<void()> reopen;
    std::function<void()> edit;
    std::function<void()> split;
};

struct MenuActions {
    BatchMenuActions batch;
    UndoActions* undo = nullptr;
    std::function<void()> showHistory;
    std::function<void()> showReadings;
    std::function<void()> addNote;
    std::function<void()> showJournal;
    std::function<void(bool)> remind; ///< of due rounds, by desktop notifications
    bool reminding = false;
    std::function<void(bool)> watchBatches; ///< tells what happens to running batches
    bool watchingBatches = true;
    std::function<void()> newLogbook;
    std::function<void()> openLogbook;
    std::function<QStringList()> recentLogbooks; ///< newest first
    std::function<void(const QString&)> openRecent;
    std::function<void()> showBackups;
    std::function<void()> importLog;
    std::function<void()> loadDescription;
    std::function<void()> chooseUnits;
    std::function<void()> makeReport;  ///< of what is shown
    std::function<void()> copyPicture; ///< the same
    std::function<void(PageId)> showPage;
    std::function<void()> makeWindowAgain;     ///< in another language or size of text
    std::function<void(const char*)> showHelp; ///< one help page, or the one for the shown page
    std::function<void(Zoom)> zoom;
    std::function<void()> showTables;      ///< shows the run's panels as tables
    std::function<void(bool)> showCooling; ///< chamber and coolant in the temperature panel
};

void fillMenus(QMainWindow& window, const MenuActions& actions);

} // namespace holdband::ui
