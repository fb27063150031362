#include "ui/imports/imports_page.h"

#include "ui/imports/import_text.h"
#include "ui/imports/log_view.h"
#include "ui/imports/past_imports.h"
#include "ui/imports/watch_card.h"
#include "ui/session/session.h"
#include "ui/theme/card.h"
#include "ui/theme/empty_page.h"
#include "ui/theme/theme.h"
#include "ui/words/words.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QProgressBar>
#include <QPushButton>
#include <QScrollArea>
#include <QShortcut>
#include <QSignalBlocker>
#include <QStackedWidget>
#include <QTabBar>
#include <QVBoxLayout>

namespace holdband::ui {

namespace {

QString emptyText()
{
    return Words::tr("Drop logs anywhere in the window, choose files, or paste rows. You see a "
                     "preview first; nothing is saved until you confirm.");
}

} // namespace

ImportsPage::ImportsPage(Session& session, QWidget* parent)
    : QWidget(parent), m_session(&session), m_queue(new LogQueue(session, this)),
      m_choose(new QPushButton(Words::tr("&Choose files…"), this)),
      m_paste(new QPushButton(Words::tr("Paste &rows"), this)),
      m_message(makeLabel({}, "muted", this)), m_tabs(new QTabBar(this)),
      m_stack(new QStackedWidget(this)), m_view(new LogView(this)),
      m_past(new PastImports(session, this)), m_watches(new WatchCard(session, this)),
      m_empty(new EmptyPage(EmptyExample::imports,
                            Words::tr("Drop a log anywhere in this window, or choose one: you see "
                                      "a preview before anything is saved."),
                            Words::tr("&Choose files…"), this)),
      m_save(new QPushButton(Words::tr("&Save"), this)),
      m_saveAll(new QPushButton(Words::tr("Save &all"), this)),
      m_cancel(new QPushButton(Words::tr("Cancel"), this)), m_progress(new QProgressBar(this))
{
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(spacing::gap);
    layout->addWidget(makeTop());
    layout->addWidget(m_tabs);
    m_stack->addWidget(makeLists());
    m_stack->addWidget(m_view);
    layout->addWidget(m_stack, 1);
    m_foot = makeFoot();
    layout->addWidget(m_foot);
    connectParts();
    clear();
}

QWidget* ImportsPage::makeTop()
{
    auto* top = new QWidget(this);
    auto* row = new QHBoxLayout(top);
    row->setContentsMargins(0, 0, 0, 0);
    row->addWidget(m_choose);
    row->addWidget(m_paste);
    row->addWidget(m_message, 1);
    m_paste->setToolTip(Words::tr("Rows copied from a spreadsheet (Ctrl+V)"));
    m_tabs->setAccessibleName(Words::tr("Logs"));
    m_tabs->setElideMode(Qt::ElideMiddle);
    m_tabs->setExpanding(false);
    m_tabs->setDocumentMode(true);
    return top;
}

QWidget* ImportsPage::makeFoot()
{
    auto* foot = new QWidget(this);
    auto* row = new QHBoxLayout(foot);
    row->setContentsMargins(0, 0, 0, 0);
    for (QPushButton* button : {m_save, m_saveAll, m_cancel})
        row->addWidget(button);
    row->addWidget(m_progress, 1);
    row->addStretch();
    setRole(m_save, "main");
    m_progress->setRange(0, 1000);
    m_progress->setTextVisible(false);
    m_progress->setAccessibleName(Words::tr("Share done"));
    return foot;
}

QWidget* ImportsPage::makeLists()
{
    auto* inner = new QWidget;
    inner->setObjectName(QStringLiteral("inner"));
    auto* lists = new QVBoxLayout(inner);
    lists->setContentsMargins(0, 0, 0, 0);
    lists->setSpacing(spacing::gap);
    lists->addWidget(m_empty, 1);
    lists->addWidget(m_past);
    lists->addWidget(m_watches);
    lists->addStretch();
    auto* area = new QScrollArea(this);
    area->setWidget(inner);
    area->setWidgetResizable(true);
    area->setFocusPolicy(Qt::NoFocus);
    return area;
}

void ImportsPage::connectParts()
{
    auto* paste = new QShortcut(QKeySequence::Paste, this);
    paste->setContext(Qt::WidgetWithChildrenShortcut);
    connect(paste, &QShortcut::activated, this, &ImportsPage::paste);
    connect(m_choose, &QPushButton::clicked, this, &ImportsPage::chooseWanted);
    connect(m_empty->button(), &QPushButton::clicked, this, &ImportsPage::chooseWanted);
    connect(m_past, &PastImports::filled, this, &ImportsPage::showEmpty);
    connect(m_paste, &QPushButton::clicked, this, &ImportsPage::paste);
    connect(m_save, &QPushButton::clicked, this, &ImportsPage::save);
    connect(m_saveAll, &QPushButton::clicked, m_queue, &LogQueue::importReady);
    connect(m_cancel, &QPushButton::clicked, this, &ImportsPage::cancel);
    connect(m_tabs, &QTabBar::currentChanged, this, &ImportsPage::showCurrent);
    connect(m_queue, &LogQueue::changed, this, [this](int index) {
        showTabs();
        if (index < 0 || index == current())
            showCurrent();
        else if (current() >= 0)
            showState(m_queue->at(current()));
    });
    connect(m_queue, &LogQueue::settled, this, &ImportsPage::takeSettled);
    connect(m_queue, &LogQueue::progressed, this,
            [this](double share) { m_progress->setValue(static_cast<int>(share * 1000)); });
    connect(m_queue, &LogQueue::saved, this, [this] {
        Q_EMIT saved();
        m_session->announceChange();
    });
    connect(m_view, &LogView::mapChosen, this,
            [this](const intake::ColumnMap& map) { m_queue->choose(current(), map); });
    connect(m_view, &LogView::registerDropChosen, this,
            [this](MeterEvent event) { m_queue->chooseRegisterDrop(current(), event); });
    connect(m_view, &LogView::sheetChosen, this,
            [this](const QString& sheet) { m_queue->chooseSheet(current(), sheet); });
    connect(m_view, &LogView::forgetWanted, this, [this] { m_queue->forgetMap(current()); });
    connect(m_view, &LogView::newTargetWanted, this, &ImportsPage::askNewTarget);
    connect(m_view, &LogView::saveRejectsWanted, this, &ImportsPage::askSaveRejects);
    // The lists are hidden while a log is shown, and with them the buttons and their letters.
    m_watchKey = new QShortcut(QKeySequence::mnemonic(m_watches->fileButton()->text()), this);
    m_watchKey->setEnabled(false);
    connect(m_watchKey, &QShortcut::activated, m_watches, &WatchCard::fileWanted);
    connect(m_watches, &WatchCard::fileWanted, this, [this] { askWatch(false); });
    connect(m_watches, &WatchCard::folderWanted, this, [this] { askWatch(true); });
    connect(m_watches, &WatchCard::failed, this,
            [this](const QString& words) { say(words, true); });
    connect(m_past, &PastImports::failed, this, [this](const QString& words) { say(words, true); });
    connect(m_past, &PastImports::done, this, [this](const QString& words) { say(words, false); });
}

int ImportsPage::current() const
{
    return m_tabs->currentIndex();
}

QString ImportsPage::message() const
{
    return m_message->text();
}

QString ImportsPage::subtitle() const
{
    return current() < 0 ? QString() : m_queue->at(current()).name;
}

bool ImportsPage::canImport() const
{
    return m_save->isVisibleTo(this) && m_save->isEnabled();
}

void ImportsPage::say(const QString& words, bool trouble)
{
    setRole(m_message, trouble ? "warn" : words == emptyText() ? "muted" : "title");
    m_message->setText(words);
    m_message->setAccessibleName(words);
}

void ImportsPage::look(const QStringList& paths)
{
    if (!m_session->isOpen())
        return;
    if (m_session->readOnly())
        return say(Words::tr("The logbook is open for reading only, so no log can be saved."),
                   true);
    if (!m_queue->isBusy())
        m_queue->clear();
    const int first = m_queue->size();
    m_queue->add(paths);
    m_tabs->setCurrentIndex(first);
}

void ImportsPage::lookAtText(const QString& text)
{
    if (text.trimmed().isEmpty())
        return say(Words::tr("There are no rows to paste: copy some in a spreadsheet first."),
                   true);
    if (!m_session->isOpen() || m_session->readOnly())
        return;
    if (!m_queue->isBusy())
        m_queue->clear();
    m_queue->addText(text.toUtf8(), Words::tr("pasted rows"));
    m_tabs->setCurrentIndex(m_queue->size() - 1);
}

void ImportsPage::save()
{
    if (current() >= 0)
        m_queue->save(current());
}

void ImportsPage::cancel()
{
    const bool busy = m_queue->isBusy();
    bool anyOpen = false;
    for (const LogState& log : m_queue->logs())
        anyOpen = anyOpen || log.stage != LogStage::saved;
    if (busy)
        m_queue->cancel();
    else
        m_queue->clear();
    if (m_queue->isBusy()) // being stored: its result will tell
        say(Words::tr("Cancelling…"), false);
    else if (anyOpen)
        say(Words::tr("Nothing was saved."), false);
}

void ImportsPage::clear()
{
    m_queue->clear();
    say(emptyText(), false);
}

} // namespace holdband::ui
