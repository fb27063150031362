// The files that the window opens, creates, loads and imports; main_window.cpp has the rest.
#include "ui/window/main_window.h"

#include "core/exchange/load.h"
#include "core/preferences/preferences.h"
#include "core/text/memory.h"
#include "ui/window/new_settings.h"
#include "ui/window/notice_bar.h"
#include "ui/words/words.h"

#include <QDir>
#include <QDragEnterEvent>
#include <QFileDialog>
#include <QFileInfo>
#include <QFutureWatcher>
#include <QMimeData>
#include <QTimer>
#include <QtConcurrent/QtConcurrentRun>

namespace holdband::ui {

namespace {

QString logbookFilter()
{
    return Words::tr("Logbooks (*.holdband);;All files (*)");
}

constexpr int slowOpening = 400; ///< ms, after which a message says that a logbook is being opened

QString openingText(const QString& path)
{
    return Words::tr("Opening %1 …").arg(QFileInfo(path).fileName());
}

} // namespace

void MainWindow::openLogbook(const QString& path)
{
    m_notice->hideBar();
    m_wantedPath = QFileInfo::exists(path) ? QString() : path;
    if (!m_wantedPath.isEmpty()) {
        const QString why = Words::tr("There is no logbook at %1.").arg(path);
        m_notice->say(Words::tr("%1 \"New logbook…\" makes one there.").arg(why));
        return offerBackups(QFileInfo(path).absoluteFilePath(), why);
    }
    const QString whole = QFileInfo(path).absoluteFilePath();
    m_session.openInBackground(whole,
                               [this, whole](const Done& opened) { takeAnswer(whole, opened); });
    QTimer::singleShot(slowOpening, this, [this, whole] {
        if (m_session.opening())
            m_notice->say(openingText(whole));
    });
}

void MainWindow::takeAnswer(const QString& path, const Done& opened)
{
    if (m_notice->sentence() == openingText(path))
        m_notice->hideBar();
    if (opened)
        return;
    m_notice->say(sentence(opened.error()));
    offerBackups(path, sentence(opened.error()));
}

void MainWindow::createLogbook(const QString& path)
{
    m_notice->hideBar();
    const Done made = m_session.create(QFileInfo(path).absoluteFilePath(), usualSettings());
    if (!made)
        m_notice->say(sentence(made.error()));
}

/// The loader opens the logbook itself, so the session closes it meanwhile.
void MainWindow::loadDescription(const QString& path)
{
    if (!m_session.isOpen() || m_session.readOnly())
        return;
    const QString logbook = m_session.path();
    m_session.close();
    loadInto(logbook, path);
}

void MainWindow::openSample()
{
    if (QFileInfo::exists(m_sampleLogbook) || m_sampleDescription.isEmpty())
        return openLogbook(m_sampleLogbook);
    const QDir folder = QFileInfo(m_sampleLogbook).absoluteDir();
    if (!folder.mkpath(QStringLiteral(".")))
        return m_notice->say(Words::tr("The folder %1 can't be made.").arg(folder.absolutePath()));
    m_notice->say(Words::tr("Making the sample logbook …"));
    loadInto(m_sampleLogbook, m_sampleDescription);
}

void MainWindow::loadInto(const QString& logbook, const QString& path)
{
    setEnabled(false);
    using Loaded = Result<exchange::LoadReport>;
    auto* watcher = new QFutureWatcher<std::shared_ptr<Loaded>>(this);
    connect(watcher, &QFutureWatcherBase::finished, this, [this, watcher, logbook] {
        const std::shared_ptr<Loaded> loaded = watcher->result();
        watcher->deleteLater();
        setEnabled(true);
        openLogbook(logbook);
        if (!*loaded)
            m_notice->say(sentence(loaded->error()));
    });
    watcher->setFuture(QtConcurrent::run([logbook = core(logbook), path = core(path)] {
        return std::make_shared<Loaded>(withinMemory([&] {
            return exchange::loadDescription(
                logbook, path, store::systemNow,
                store::BackupOptions{[] { return core(preferences::backupPlace()); }, {}});
        }));
    }));
}

void MainWindow::askOpen()
{
    const QString path =
        QFileDialog::getOpenFileName(this, Words::tr("Open a logbook"), {}, logbookFilter());
    if (!path.isEmpty())
        openLogbook(path);
}

void MainWindow::askNew()
{
    QString path = QFileDialog::getSaveFileName(
        this, Words::tr("Where the new logbook goes"),
        m_wantedPath.isEmpty() ? Words::tr("my.holdband") : m_wantedPath, logbookFilter());
    if (path.isEmpty())
        return;
    if (QFileInfo(path).suffix().isEmpty())
        path += QStringLiteral(".holdband");
    createLogbook(path);
}

void MainWindow::askLoad()
{
    const QString path = QFileDialog::getOpenFileName(this, Words::tr("Load a description"), {},
                                                      Words::tr("Descriptions (*.json)"));
    if (!path.isEmpty())
        loadDescription(path);
}

void MainWindow::askImport()
{
    const QStringList paths = QFileDialog::getOpenFileNames(
        this, Words::tr("Import logs"), {},
        Words::tr(
            "Logs (*.csv *.txt *.tsv *.log *.xlsx *.jsonl *.ndjson *.gz *.zip);;All files (*)"));
    if (!paths.isEmpty())
        importFiles(paths);
}

void MainWindow::dragEnterEvent(QDragEnterEvent* event)
{
    if (event->mimeData()->hasUrls())
        event->acceptProposedAction();
}

void MainWindow::dropEvent(QDropEvent* event)
{
    QStringList paths;
    for (const QUrl& url : event->mimeData()->urls()) {
        if (url.isLocalFile())
            paths << url.toLocalFile();
    }
    if (paths.isEmpty())
        return;
    if (paths.first().endsWith(QStringLiteral(".holdband")))
        openLogbook(paths.first());
    else if (m_session.isOpen())
        importFiles(paths);
    else
        m_notice->say(Words::tr("Open a logbook first, then drop the log again."));
    event->acceptProposedAction();
}

} // namespace holdband::ui
