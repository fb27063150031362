#include "core/store/safety/writer_lock.h"

#include "core/text/phrase.h"

#include <QFileInfo>
#include <QSysInfo>
#include <QThread>
#include <filesystem>

namespace holdband::store {

namespace fs = std::filesystem;

namespace {

Problem heldElsewhere(const std::string& path, const QLockFile& lock)
{
    const std::string file = lock.fileName().toStdString();
    qint64 pid = 0;
    QString host;
    QString program;
    if (!lock.getLockInfo(&pid, &host, &program))
        return {ProblemKind::file,
                Phrase::tr("the logbook is locked by a file that no Holdband wrote: %1").with(file),
                path, Phrase::tr("if no program has the logbook open, delete that file")};
    if (host != QSysInfo::machineHostName())
        return {ProblemKind::file,
                Phrase::tr("the logbook is open for writing on another computer, %1 (%2, process "
                           "%3)")
                    .with(host.toStdString(), program.toStdString(), std::to_string(pid)),
                path,
                Phrase::tr("close it there first; if that computer is off or the program no longer "
                           "runs, delete the file %1")
                    .with(file)};
    return {ProblemKind::file,
            Phrase::tr("the logbook is open for writing in %1 (process %2 on %3)")
                .with(program.toStdString(), std::to_string(pid), host.toStdString()),
            path, Phrase::tr("close it there first; reading commands work meanwhile")};
}

/// A lock is empty for a moment while its program writes it, and stays empty if a full disk or
/// another program left it so.
bool staysEmpty(const QString& file)
{
    constexpr unsigned long longestWriteMs = 200;
    if (QFileInfo(file).size() != 0)
        return false;
    QThread::msleep(longestWriteMs);
    const QFileInfo later(file);
    return later.exists() && later.size() == 0;
}

Problem lockFailed(const std::string& path, const QLockFile& lock)
{
    if (lock.error() == QLockFile::LockFailedError)
        return heldElsewhere(path, lock);
    std::error_code ignored;
    const fs::path folder = fs::absolute(path, ignored).parent_path();
    if (!fs::is_directory(folder, ignored))
        return {ProblemKind::file, Phrase::tr("there is no such folder"), path,
                Phrase::tr("make the folder first")};
    if (lock.error() == QLockFile::PermissionError)
        return {ProblemKind::file,
                Phrase::tr("the folder can't be written, so the logbook can't be locked"), path,
                Phrase::tr("check the folder's permissions")};
    return {ProblemKind::file, Phrase::tr("the logbook can't be locked"), path,
            Phrase::tr("choose a shorter name or another folder")};
}

} // namespace

std::string realPath(const std::string& path)
{
    std::error_code failed;
    const fs::path real = fs::weakly_canonical(path, failed);
    return failed ? path : real.string();
}

Result<std::unique_ptr<QLockFile>> lockForWriting(const std::string& path)
{
    auto lock = std::make_unique<QLockFile>(QString::fromStdString(realPath(path) + ".lock"));
    lock->setStaleLockTime(0); // a lock becomes stale only when its process has ended
    if (lock->tryLock(0))
        return lock;
    // Qt refuses if the file belongs to a running program after all.
    if (lock->error() == QLockFile::LockFailedError && staysEmpty(lock->fileName()) &&
        lock->removeStaleLockFile() && lock->tryLock(0))
        return lock;
    return failure(lockFailed(path, *lock));
}

} // namespace holdband::store
