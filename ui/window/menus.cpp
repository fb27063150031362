#include "ui/window/menus.h"

#include "ui/history/undo_actions.h"
#include "ui/theme/appearance.h"
#include "ui/window/about.h"

#include <QAction>
#include <QDir>
#include <QMainWindow>
#include <QMenuBar>

namespace holdband::ui {

namespace {

void add(QMenu* menu, const QString& text, const QKeySequence& keys, std::function<void()> act)
{
    QAction* action = menu->addAction(text);
    action->setShortcut(keys);
    QObject::connect(action, &QAction::triggered, menu, [act = std::move(act)] { act(); });
}

/// As it stands when the menu is opened.
void addRecentMenu(QMenu* menu, const MenuActions& actions)
{
    QMenu* recent = menu->addMenu(QStringLiteral("Open &recent"));
    QObject::connect(menu, &QMenu::aboutToShow, recent, [recent, actions] {
        recent->clear();
        const QStringList paths = actions.recentLogbooks();
        for (int i = 0; i < paths.size(); ++i) {
            QString shownPath = QDir::toNativeSeparators(paths[i]);
            QAction* action = recent->addAction(QStringLiteral("&%1  %2").arg(i + 1).arg(
                shownPath.replace(QStringLiteral("&"), QStringLiteral("&&"))));
            QObject::connect(action, &QAction::triggered, recent,
                             [open = actions.openRecent, path = paths[i]] { open(path); });
        }
        recent->setEnabled(!paths.isEmpty());
    });
}

void fillLogbookMenu(QMainWindow& window, const MenuActions& actions)
{
    QMenu* menu = window.menuBar()->addMenu(QStringLiteral("&Logbook"));
    add(menu, QStringLiteral("&New…"), QKeySequence::New, actions.newLogbook);
    add(menu, QStringLiteral("&Open…"), QKeySequence::Open, actions.openLogbook);
    addRecentMenu(menu, actions);
    menu->addSeparator();
    add(menu, QStringLiteral("&Import a log…"), QKeySequence(QStringLiteral("Ctrl+I")),
        actions.importLog);
    add(menu, QStringLiteral("&Load a description…"), QKeySequence(QStringLiteral("Ctrl+L")),
        actions.loadDescription);
    menu->addSeparator();
    add(menu, QStringLiteral("&Report…"), QKeySequence(QStringLiteral("Ctrl+Shift+P")),
        actions.makeReport);
    add(menu, QStringLiteral("&Copy the picture"), QKeySequence(QStringLiteral("Ctrl+Shift+C")),
        actions.copyPicture);
    menu->addSeparator();
    add(menu, QStringLiteral("&Units, zone and currency…"), {}, actions.chooseUnits);
    add(menu, QStringLiteral("&Backups…"), {}, actions.showBackups);
    menu->addSeparator();
    add(menu, QStringLiteral("&Quit"), QKeySequence(QStringLiteral("Ctrl+Q")),
        [&window] { window.close(); });
}

void fillEditMenu(QMainWindow& window, const MenuActions& actions)
{
    QMenu* menu = window.menuBar()->addMenu(QStringLiteral("&Edit"));
    actions.undo->addTo(menu);
    menu->addSeparator();
    add(menu, QStringLiteral("&Journal note…"), QKeySequence(QStringLiteral("Ctrl+J")),
        actions.addNote);
    add(menu, QStringLiteral("Journa&l…"), QKeySequence(QStringLiteral("Ctrl+Shift+J")),
        actions.showJournal);
    add(menu, QStringLiteral("&Readings…"), QKeySequence(QStringLiteral("Ctrl+R")),
        actions.showReadings);
    add(menu, QStringLiteral("&History…"), QKeySequence(QStringLiteral("Ctrl+H")),
        actions.showHistory);
}

void fillBatchMenu(QMainWindow& window, const BatchMenuActions& actions)
{
    const auto keys = [](const char* text) { return QKeySequence(QString::fromLatin1(text)); };
    QMenu* menu = window.menuBar()->addMenu(QStringLiteral("&Batch"));
    add(menu, QStringLiteral("&New batch…"), keys("Ctrl+B"), actions.newBatch);
    add(menu, QStringLiteral("&Pitch now…"), keys("Ctrl+P"), actions.pitchNow);
    add(menu, QStringLiteral("&Turn down now…"), keys("Ctrl+T"), actions.turnDownNow);
    add(menu, QStringLiteral("&End now…"), keys("Ctrl+E"), actions.endNow);
    add(menu, QStringLiteral("&Reopen…"), {}, actions.reopen);
    menu->addSeparator();
    add(menu, QStringLiteral("&Change this batch…"), keys("Ctrl+D"), actions.edit);
    add(menu, QStringLiteral("&Split it over a second vessel…"), {}, actions.split);
}

void fillViewMenu(QMainWindow& window, const MenuActions& actions)
{
    QMenu* menu = window.menuBar()->addMenu(QStringLiteral("&View"));
    for (int i = 0; i < pageCount; ++i) {
        const auto page = static_cast<PageId>(i);
        add(menu, pageTitle(page), QKeySequence(QStringLiteral("Alt+%1").arg(i + 1)),
            [show = actions.showPage, page] { show(page); });
    }
    menu->addSeparator();
    add(menu, QStringLiteral("Zoom &in"), QKeySequence::ZoomIn,
        [zoom = actions.zoom] { zoom(Zoom::in); });
    add(menu, QStringLiteral("Zoom &out"), QKeySequence::ZoomOut,
        [zoom = actions.zoom] { zoom(Zoom::out); });
    add(menu, QStringLiteral("Show &all"), QKeySequence(QStringLiteral("Ctrl+0")),
        [zoom = actions.zoom] { zoom(Zoom::all); });
    menu->addSeparator();
    add(menu, QStringLiteral("The run as &tables…"), QKeySequence(QStringLiteral("Ctrl+Shift+T")),
        actions.showTables);
    QAction* remind = menu->addAction(QStringLiteral("&Notify me of due rounds"));
    remind->setCheckable(true);
    remind->setChecked(actions.reminding);
    QObject::connect(remind, &QAction::toggled, menu, [set = actions.remind](bool on) { set(on); });
    QAction* cooling = menu->addAction(QStringLiteral("&Chamber and coolant"));
    cooling->setCheckable(true);
    cooling->setShortcut(QKeySequence(QStringLiteral("Ctrl+K")));
    QObject::connect(cooling, &QAction::toggled, menu,
                     [show = actions.showCooling](bool on) { show(on); });
    addAppearanceMenu(*menu);
}

} // namespace

void fillMenus(QMainWindow& window, const MenuActions& actions)
{
    fillLogbookMenu(window, actions);
    fillEditMenu(window, actions);
    fillBatchMenu(window, actions.batch);
    fillViewMenu(window, actions);
    QMenu* help = window.menuBar()->addMenu(QStringLiteral("&Help"));
    const std::pair<const char*, const char*> pages[] = {
        {"&All pages", "contents.md"},
        {"How &figures are computed", "figures.md"},
        {"Reading a &meter", "meters.md"},
        {"&Sensors and their logs", "sensors.md"},
        {"&Care", "care.md"},
    };
    add(help, QStringLiteral("&Help for this page"), QKeySequence(Qt::Key_F1),
        [show = actions.showHelp] { show(nullptr); });
    for (const auto& [title, page] : pages)
        add(help, QString::fromLatin1(title), {},
            [show = actions.showHelp, page = page] { show(page); });
    help->addSeparator();
    add(help, QStringLiteral("About Hold&band"), {}, [&window] { showAbout(window); });
}

} // namespace holdband::ui
