#include "ui/session/session.h"

#include "core/desk/desk.h"
#include "core/store/daily_backup.h"
#include "ui/words/words.h"

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
}

Done Session::open(const QString& path)
{
    if (m_writer && path == m_path)
        return {};
    auto writer = LogbookFile::open(core(path), Access::write, m_clock);
    if (writer)
        return take(path, std::move(*writer), {});
    const Problem& problem = writer.error();
    if (!LogbookFile::open(core(path), Access::read, m_clock))
        return failure(problem);
    return take(path, nullptr, shown(problem.what));
}

Done Session::create(const QString& path, const LogbookSettings& settings)
{
    auto writer = LogbookFile::create(core(path), settings, m_clock);
    if (!writer)
        return failure(writer.error());
    return take(path, std::move(*writer), {});
}

Done Session::take(const QString& path, std::unique_ptr<LogbookFile> writer,
                   const QString& readOnlyBecause)
{
    auto reader = LogbookFile::open(core(path), Access::read, m_clock);
    if (!reader)
        return failure(reader.error());
    close();
    m_path = path;
    m_readOnlyBecause = readOnlyBecause;
    if (writer)
        keepBackups(*writer);
    if (writer)
        m_writer = std::make_unique<Worker>(std::move(writer));
    m_reader = std::make_unique<Worker>(std::move(*reader));
    Q_EMIT idleChanged(true);
    Q_EMIT opened();
    return {};
}

/// Copies are made on the writing worker; what became of one is told in this thread.
void Session::keepBackups(LogbookFile& writer)
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
    writer.keepBackups({[] { return core(desk::backupPlace()); }, told});
}

void Session::count(int by)
{
    const bool before = idle();
    m_pending += by;
    if (idle() != before)
        Q_EMIT idleChanged(idle());
}

} // namespace holdband::ui
