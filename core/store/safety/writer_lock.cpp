#include "core/store/safety/writer_lock.h"

#include "core/text/phrase.h"

#include <QFileInfo>
#include <QSysInfo>
#include <QThread>
#include <fcntl.h>
#include <filesystem>
#include <sys/file.h>
#include <sys/stat.h>
#include <unistd.h>

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

/// More than a program needs between two steps of making or removing its lock file.
constexpr unsigned long longestStepMs = 200;

/// A lock is empty for a moment while its program writes it, and stays empty if a full disk or
/// another program left it so.
bool staysEmpty(const QString& file)
{
    if (QFileInfo(file).size() != 0)
        return false;
    QThread::msleep(longestStepMs);
    const QFileInfo later(file);
    return later.exists() && later.size() == 0;
}

bool isOfThisComputer(const QLockFile& lock)
{
    qint64 pid = 0;
    QString host;
    QString program;
    return lock.getLockInfo(&pid, &host, &program) && host == QSysInfo::machineHostName();
}

/// Removes the lock file of a program of this computer that has died. The number in it may belong
/// to another Holdband now, even to this one, as in a container. But QLockFile locks the file
/// (flock) before it writes it, and the system drops that lock with its process.
bool removeAbandoned(const std::string& file)
{
    const int descriptor = ::open(file.c_str(), O_RDWR | O_CLOEXEC);
    if (descriptor < 0)
        return false;
    struct stat ours {};
    struct stat named {};
    // One that is not yet written may not yet be held.
    bool abandoned = ::fstat(descriptor, &ours) == 0 && ours.st_size > 0 &&
                     ::flock(descriptor, LOCK_EX | LOCK_NB) == 0;
    if (abandoned) {
        QThread::msleep(longestStepMs); // its program may be closing: it unlocks, then removes
        abandoned = ::stat(file.c_str(), &named) == 0 && ours.st_ino == named.st_ino &&
                    ours.st_dev == named.st_dev;
    }
    const bool removed = abandoned && ::unlink(file.c_str()) == 0;
    ::close(descriptor);
    return removed;
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
    if (lock->error() == QLockFile::LockFailedError && isOfThisComputer(*lock) &&
        removeAbandoned(lock->fileName().toStdString()) && lock->tryLock(0))
        return lock;
    return failure(lockFailed(path, *lock));
}

} // namespace holdband::store
