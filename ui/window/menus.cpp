#include "ui/window/menus.h"

#include "ui/record/undo_actions.h"
#include "ui/window/about.h"
#include "ui/window/appearance.h"
#include "ui/window/language_choice.h"
#include "ui/window/motion_choice.h"
#include "ui/window/text_size.h"
#include "ui/words/words.h"

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

void addSwitch(QMenu* menu, const QString& text, bool on, std::function<void(bool)> set)
{
    QAction* action = menu->addAction(text);
    action->setCheckable(true);
    action->setChecked(on);
    QObject::connect(action, &QAction::toggled, menu,
                     [set = std::move(set)](bool now) { set(now); });
}

/// Filled each time the menu is opened.
void addRecentMenu(QMenu* menu, const MenuActions& actions)
{
    QMenu* recent = menu->addMenu(Words::tr("Open &recent"));
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
    QMenu* menu = window.menuBar()->addMenu(Words::tr("&Logbook"));
    add(menu, Words::tr("&New…"), QKeySequence::New, actions.newLogbook);
    add(menu, Words::tr("&Open…"), QKeySequence::Open, actions.openLogbook);
    addRecentMenu(menu, actions);
    menu->addSeparator();
    add(menu, Words::tr("&Import a log…"), QKeySequence(QStringLiteral("Ctrl+I")),
        actions.importLog);
    add(menu, Words::tr("&Load a description…"), QKeySequence(QStringLiteral("Ctrl+L")),
        actions.loadDescription);
    menu->addSeparator();
    add(menu, Words::tr("&Report…"), QKeySequence(QStringLiteral("Ctrl+Shift+P")),
        actions.makeReport);
    add(menu, Words::tr("&Copy the picture"), QKeySequence(QStringLiteral("Ctrl+Shift+C")),
        actions.copyPicture);
    menu->addSeparator();
    add(menu, Words::tr("&Units, zone and currency…"), {}, actions.chooseUnits);
    add(menu, Words::tr("&Backups…"), {}, actions.showBackups);
    menu->addSeparator();
    add(menu, Words::tr("&Quit"), QKeySequence(QStringLiteral("Ctrl+Q")),
        [&window] { window.close(); });
}

void fillEditMenu(QMainWindow& window, const MenuActions& actions)
{
    QMenu* menu = window.menuBar()->addMenu(Words::tr("&Edit"));
    actions.undo->addTo(menu);
    menu->addSeparator();
    add(menu, Words::tr("&Journal note…"), QKeySequence(QStringLiteral("Ctrl+J")), actions.addNote);
    add(menu, Words::tr("Journa&l…"), QKeySequence(QStringLiteral("Ctrl+Shift+J")),
        actions.showJournal);
    add(menu, Words::tr("&Readings…"), QKeySequence(QStringLiteral("Ctrl+R")),
        actions.showReadings);
    add(menu, Words::tr("&History…"), QKeySequence(QStringLiteral("Ctrl+H")), actions.showHistory);
}

void fillBatchMenu(QMainWindow& window, const BatchMenuActions& actions)
{
    const auto keys = [](const char* text) { return QKeySequence(QString::fromLatin1(text)); };
    QMenu* menu = window.menuBar()->addMenu(Words::tr("&Batch"));
    add(menu, Words::tr("&New batch…"), keys("Ctrl+B"), actions.newBatch);
    add(menu, Words::tr("&Pitch now…"), keys("Ctrl+P"), actions.pitchNow);
    add(menu, Words::tr("&Turn down now…"), keys("Ctrl+T"), actions.turnDownNow);
    add(menu, Words::tr("&End now…"), keys("Ctrl+E"), actions.endNow);
    add(menu, Words::tr("&Reopen…"), {}, actions.reopen);
    menu->addSeparator();
    add(menu, Words::tr("&Change this batch…"), keys("Ctrl+D"), actions.edit);
    add(menu, Words::tr("&Split it over a second vessel…"), {}, actions.split);
}

void fillViewMenu(QMainWindow& window, const MenuActions& actions)
{
    QMenu* menu = window.menuBar()->addMenu(Words::tr("&View"));
    for (int i = 0; i < pageCount; ++i) {
        const auto page = static_cast<PageId>(i);
        add(menu, pageTitle(page), QKeySequence(QStringLiteral("Alt+%1").arg(i + 1)),
            [show = actions.showPage, page] { show(page); });
    }
    menu->addSeparator();
    add(menu, Words::tr("Zoom &in"), QKeySequence::ZoomIn,
        [zoom = actions.zoom] { zoom(Zoom::in); });
    add(menu, Words::tr("Zoom &out"), QKeySequence::ZoomOut,
        [zoom = actions.zoom] { zoom(Zoom::out); });
    add(menu, Words::tr("Show &all"), QKeySequence(QStringLiteral("Ctrl+0")),
        [zoom = actions.zoom] { zoom(Zoom::all); });
    menu->addSeparator();
    add(menu, Words::tr("The run as &tables…"), QKeySequence(QStringLiteral("Ctrl+Shift+T")),
        actions.showTables);
    addSwitch(menu, Words::tr("&Notify me of due rounds"), actions.reminding, actions.remind);
    addSwitch(menu, Words::tr("Notify me about running &batches"), actions.watchingBatches,
              actions.watchBatches);
    QAction* cooling = menu->addAction(Words::tr("&Chamber and coolant"));
    cooling->setCheckable(true);
    cooling->setShortcut(QKeySequence(QStringLiteral("Ctrl+K")));
    QObject::connect(cooling, &QAction::toggled, menu,
                     [show = actions.showCooling](bool on) { show(on); });
    menu->addSeparator();
    addAppearanceMenu(*menu);
    addMotionMenu(*menu);
    addTextSizeMenu(*menu, actions.makeWindowAgain);
    addLanguageMenu(*menu, actions.makeWindowAgain);
}

} // namespace

void fillMenus(QMainWindow& window, const MenuActions& actions)
{
    fillLogbookMenu(window, actions);
    fillEditMenu(window, actions);
    fillBatchMenu(window, actions.batch);
    fillViewMenu(window, actions);
    QMenu* help = window.menuBar()->addMenu(Words::tr("&Help"));
    const std::pair<const char*, const char*> pages[] = {
        {QT_TRANSLATE_NOOP("Words", "&All pages"), "contents.md"},
        {QT_TRANSLATE_NOOP("Words", "How &figures are computed"), "figures.md"},
        {QT_TRANSLATE_NOOP("Words", "Reading a &meter"), "meters.md"},
        {QT_TRANSLATE_NOOP("Words", "&Sensors and their logs"), "sensors.md"},
        {QT_TRANSLATE_NOOP("Words", "&Safety"), "care.md"},
    };
    add(help, Words::tr("&Help for this page"), QKeySequence(Qt::Key_F1),
        [show = actions.showHelp] { show(nullptr); });
    for (const auto& [title, page] : pages)
        add(help, Words::tr(title), {}, [show = actions.showHelp, page = page] { show(page); });
    help->addSeparator();
    add(help, Words::tr("About Hold&band"), {}, [&window] { showAbout(window); });
}

} // namespace holdband::ui
