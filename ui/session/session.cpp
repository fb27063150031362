#include "ui/session/session.h"

#include "core/preferences/preferences.h"
#include "core/store/safety/daily_backup.h"
#include "ui/words/words.h"

#include <QFutureWatcher>
#include <QtConcurrent/QtConcurrentRun>

namespace holdband::ui {

using store::Access;
using store::LogbookFile;

Session::Session(store::Clock clock, QObject* parent) : QObject(parent), m_clock(std::move(clock))
{
}

Session::~Session()
{
    close();
}

void Session::close()
{
    ++m_generation;
    m_pending = 0;
    m_reader.reset();
    m_writer.reset();
    m_retired.clear();
}

Result<Session::Files> Session::openFiles(const QString& path, const store::Clock& clock)
{
    Files files;
    auto writer = LogbookFile::open(core(path), Access::write, clock);
    auto reader = LogbookFile::open(core(path), Access::read, clock);
    if (!reader)
        return failure(writer ? reader.error() : writer.error());
    (*reader)->leaveThread();
    files.reader = std::move(*reader);
    if (!writer) {
        files.readOnlyBecause = shown(writer.error().what);
        return files;
    }
    (*writer)->leaveThread();
    files.writer = std::move(*writer);
    return files;
}

Done Session::open(const QString& path)
{
    if (m_writer && path == m_path)
        return {};
    auto files = openFiles(path, m_clock);
    HOLDBAND_TRY(files);
    take(path, std::move(*files));
    return {};
}

void Session::openInBackground(const QString& path, std::function<void(Done)> done)
{
    const int call = ++m_openingCall;
    if (m_writer && path == m_path)
        return done({});
    countOpening(+1);
    using Opened = std::shared_ptr<Result<Files>>;
    auto* watcher = new QFutureWatcher<Opened>(this);
    connect(watcher, &QFutureWatcherBase::finished, this,
            [this, watcher, path, call, done = std::move(done)] {
                const Opened opened = watcher->result();
                watcher->deleteLater();
                countOpening(-1);
                if (call != m_openingCall)
                    return;
                if (!*opened)
                    return done(failure(opened->error()));
                take(path, std::move(**opened));
                done({});
            });
    watcher->setFuture(QtConcurrent::run([path, clock = m_clock] {
        return std::make_shared<Result<Files>>(
            withinMemory([&] { return openFiles(path, clock); }));
    }));
}

Done Session::create(const QString& path, const LogbookSettings& settings)
{
    auto writer = LogbookFile::create(core(path), settings, m_clock);
    if (!writer)
        return failure(writer.error());
    auto reader = LogbookFile::open(core(path), Access::read, m_clock);
    HOLDBAND_TRY(reader);
    (*writer)->leaveThread();
    (*reader)->leaveThread();
    ++m_openingCall;
    take(path, {std::move(*writer), std::move(*reader), {}});
    return {};
}

/// Drops the logbook that was open, without waiting for its running job.
void Session::take(const QString& path, Files files)
{
    retire(std::move(m_reader));
    retire(std::move(m_writer));
    ++m_generation;
    m_pending = 0;
    m_path = path;
    m_readOnlyBecause = files.readOnlyBecause;
    if (files.writer) {
        useBackups(*files.writer);
        m_writer = std::make_unique<Worker>(std::move(files.writer));
    }
    m_reader = std::make_unique<Worker>(std::move(files.reader));
    Q_EMIT idleChanged(idle());
    Q_EMIT opened();
}

void Session::retire(std::unique_ptr<Worker> worker)
{
    if (!worker)
        return;
    Worker* leaving = worker.get();
    m_retired.push_back(std::move(worker));
    leaving->finish(this, [this, leaving] {
        std::erase_if(m_retired, [leaving](const auto& each) { return each.get() == leaving; });
    });
}

/// Copies are made on the writing worker; their results are reported in this thread.
void Session::useBackups(LogbookFile& writer)
{
    const auto told = [this, generation = m_generation](const Result<store::BackupCopy>& made) {
        QMetaObject::invokeMethod(
            this,
            [this, generation, made] {
                if (generation != m_generation)
                    return;
                if (made)
                    Q_EMIT backedUp();
                else
                    Q_EMIT backupFailed(made.error());
            },
            Qt::QueuedConnection);
    };
    writer.useBackups({[] { return core(preferences::backupPlace()); }, told});
}

void Session::countOpening(int by)
{
    const bool before = idle();
    m_opening += by;
    if (idle() != before)
        Q_EMIT idleChanged(idle());
}

void Session::count(int by)
{
    const bool before = idle();
    m_pending += by;
    if (idle() != before)
        Q_EMIT idleChanged(idle());
}

} // namespace holdband::ui
