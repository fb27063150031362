#include "core/intake/watch/watch_memory.h"

#include "core/store/history/history.h"

#include <sys/stat.h>

namespace holdband::intake {

std::optional<FileStamp> stampOf(const std::string& path)
{
    constexpr std::int64_t nsPerSecond = 1'000'000'000;
    struct stat status {};
    if (::stat(path.c_str(), &status) != 0)
        return std::nullopt;
    return FileStamp{status.st_size, status.st_mtim.tv_sec * nsPerSecond + status.st_mtim.tv_nsec,
                     status.st_ino};
}

Done WatchMemory::begin(const store::LogbookFile& logbook)
{
    auto revision = store::revisionOf(logbook);
    HOLDBAND_TRY(revision);
    if (logbook.path() != m_logbook || *revision != m_revision)
        m_noted.clear();
    return {};
}

Done WatchMemory::end(const store::LogbookFile& logbook)
{
    auto revision = store::revisionOf(logbook);
    HOLDBAND_TRY(revision);
    m_logbook = logbook.path();
    m_revision = *revision;
    return {};
}

std::optional<std::string> WatchMemory::problemOf(std::int64_t watch, const std::string& path,
                                                  const std::optional<FileStamp>& stamp) const
{
    const auto found = m_noted.find({watch, path});
    return found != m_noted.end() && found->second.stamp == stamp
               ? std::optional(found->second.problem)
               : std::nullopt;
}

void WatchMemory::note(std::int64_t watch, const std::string& path,
                       const std::optional<FileStamp>& stamp, const std::string& problem)
{
    if (stamp)
        m_noted[{watch, path}] = {*stamp, problem};
}

void WatchMemory::forget(std::int64_t watch, const std::string& path)
{
    m_noted.erase({watch, path});
}

} // namespace holdband::intake
