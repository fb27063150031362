#include "core/store/writer_lock.h"

#include "core/text/phrase.h"

#include <filesystem>

namespace holdband::store {

namespace fs = std::filesystem;

namespace {

Problem heldElsewhere(const std::string& path, const QLockFile& lock)
{
    qint64 pid = 0;
    QString host;
    QString program;
    std::string what = Phrase::tr("the logbook is open for writing in another program");
    if (lock.getLockInfo(&pid, &host, &program))
        what = Phrase::tr("the logbook is open for writing in %1 (process %2 on %3)")
                   .with(program.toStdString(), std::to_string(pid), host.toStdString());
    return {ProblemKind::file, what, path,
            Phrase::tr("close it there first; reading commands work meanwhile")};
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
    lock->setStaleLockTime(0); // a lock goes stale only when its process is gone
    if (lock->tryLock(0))
        return lock;
    return failure(lockFailed(path, *lock));
}

} // namespace holdband::store
