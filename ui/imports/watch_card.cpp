#include "ui/imports/watch_card.h"

#include "ui/imports/import_text.h"
#include "ui/session/session.h"
#include "ui/words/words.h"

#include <QFileInfo>
#include <QHBoxLayout>
#include <QPushButton>
#include <QTimer>

namespace holdband::ui {

namespace {

constexpr int pollEvery = 5'000; // milliseconds

/// A text about the result of one poll; empty: nothing new.
QString wordsOf(const intake::WatchReport& report)
{
    QStringList words;
    if (report.added > 0)
        words << Words::tr("%1 new readings stored").arg(countText(report.added));
    for (const std::string& remark : report.remarks)
        words << shown(remark);
    for (const std::string& problem : report.problems)
        words << shown(problem);
    return words.join(QStringLiteral("; "));
}

} // namespace

WatchCard::WatchCard(Session& session, QWidget* parent)
    : TableCard(Words::tr("Watched files and folders"), 1, parent), m_session(&session),
      m_remove(new QPushButton(Words::tr("Watch it no lon&ger"), this)), m_timer(new QTimer(this))
{
    setRemark(
        Words::tr("New rows of a watched file are imported automatically while this window is "
                  "open. Import one file of the kind first, so that its columns are known."));
    auto* file = new QPushButton(Words::tr("&Watch a file…"), this);
    m_file = file;
    auto* folder = new QPushButton(Words::tr("Watch a &folder…"), this);
    auto* row = new QHBoxLayout;
    for (QPushButton* button : {file, folder, m_remove})
        row->addWidget(button);
    row->addStretch();
    contents()->addLayout(row);
    connect(file, &QPushButton::clicked, this, &WatchCard::fileWanted);
    connect(folder, &QPushButton::clicked, this, &WatchCard::folderWanted);
    connect(m_remove, &QPushButton::clicked, this, &WatchCard::removeChosen);
    connect(m_timer, &QTimer::timeout, this, &WatchCard::poll);
    m_timer->start(pollEvery);
}

void WatchCard::refresh()
{
    m_session->ask<std::vector<store::Watch>>(
        this, store::readWatches, [this](Result<std::vector<store::Watch>> watches) {
            if (!watches)
                return Q_EMIT failed(sentence(watches.error()));
            takeWatches(std::move(*watches));
        });
}

void WatchCard::takeWatches(std::vector<store::Watch> watches)
{
    m_watches = std::move(watches);
    showTable();
}

void WatchCard::showTable()
{
    TableText table;
    table.header = {Words::tr("path"), Words::tr("last news")};
    for (const store::Watch& watch : m_watches) {
        const QString path = shown(watch.path);
        const QString words = m_words.value(path, Words::tr("nothing new yet"));
        table.rows.push_back({{QFileInfo(path).fileName(), path, true}, {words, words, false}});
    }
    const int row = table.rows.empty() ? -1 : std::max(this->table()->currentIndex().row(), 0);
    setWords(std::move(table));
    if (row >= 0)
        this->table()->setCurrentIndex(model()->index(std::min(row, model()->rowCount() - 1), 0));
    m_remove->setVisible(!m_watches.empty());
}

void WatchCard::poll()
{
    if (m_polling || m_watches.empty() || !m_session->isOpen() || m_session->readOnly())
        return;
    m_polling = true;
    m_session->change<std::vector<intake::WatchReport>>(
        this,
        [memory = m_memory](const store::LogbookFile& file) {
            return intake::pollWatches(file, *memory);
        },
        [this](Result<std::vector<intake::WatchReport>> reports) {
            m_polling = false;
            if (!reports)
                return Q_EMIT failed(sentence(reports.error()));
            takeReports(*reports);
        });
}

void WatchCard::takeReports(const std::vector<intake::WatchReport>& reports)
{
    bool any = false, said = false;
    for (const intake::WatchReport& report : reports) {
        const QString words = wordsOf(report);
        if (words.isEmpty() || m_words.value(shown(report.path)) == words)
            continue;
        m_words[shown(report.path)] = words;
        said = true;
        any = any || report.added > 0;
    }
    for (const intake::WatchReport& report : reports)
        any = any || report.added > 0;
    if (said)
        showTable();
    if (any)
        m_session->announceChange();
}

void WatchCard::change(store::HistoryEntry entry, std::function<Done(const store::Change&)> work)
{
    m_session->change<bool>(
        this,
        [entry = std::move(entry),
         work = std::move(work)](const store::LogbookFile& file) -> Result<bool> {
            auto change = store::Change::begin(file, entry);
            HOLDBAND_TRY(change);
            HOLDBAND_TRY(work(*change));
            HOLDBAND_TRY(change->commit());
            return true;
        },
        [this](Result<bool> done) {
            if (!done)
                Q_EMIT failed(sentence(done.error()));
            m_session->announceChange();
        });
}

void WatchCard::watch(const QString& path)
{
    if (m_session->readOnly())
        return;
    change({store::HistoryVerb::watchStarted, {core(QFileInfo(path).fileName())}},
           [path = core(QFileInfo(path).absoluteFilePath())](const store::Change& change) {
               return store::addWatch(change, path, "");
           });
}

void WatchCard::removeChosen()
{
    const int row = table()->currentIndex().row();
    if (row < 0 || row >= static_cast<int>(m_watches.size()))
        return;
    const store::Watch watch = m_watches[static_cast<std::size_t>(row)];
    change({store::HistoryVerb::watchStopped, {core(QFileInfo(shown(watch.path)).fileName())}},
           [id = watch.id](const store::Change& change) { return store::removeWatch(change, id); });
}

} // namespace holdband::ui
