#include "core/exchange/file_writer.h"

#include "core/text/phrase.h"

#include <atomic>
#include <cerrno>
#include <cstdio>
#include <cstring>
#include <fcntl.h>
#include <filesystem>
#include <sys/stat.h>
#include <unistd.h>

namespace holdband::exchange {

namespace fs = std::filesystem;

namespace {

/// An open file descriptor that is closed at the end, whatever happens.
class Descriptor {
public:
    explicit Descriptor(int number) : m_number(number) {}
    ~Descriptor()
    {
        if (m_number >= 0)
            ::close(m_number);
    }
    Descriptor(const Descriptor&) = delete;
    Descriptor& operator=(const Descriptor&) = delete;

    int number() const { return m_number; }
    bool close() { return ::close(std::exchange(m_number, -1)) == 0; }

private:
    int m_number;
};

std::string reason()
{
    return std::strerror(errno);
}

tl::unexpected<Problem> standsThere(const std::string& path, const std::string& remedy)
{
    return fileProblem(Phrase::tr("something stands there already; nothing was changed"), path,
                       remedy);
}

bool writeAll(int descriptor, std::string_view text)
{
    while (!text.empty()) {
        const ssize_t written = ::write(descriptor, text.data(), text.size());
        if (written < 0 && errno == EINTR)
            continue;
        if (written <= 0)
            return false;
        text.remove_prefix(static_cast<std::size_t>(written));
    }
    return true;
}

/// `fresh`: O_TRUNC, or O_EXCL where nobody else's file may have that name.
Done writeUnfinished(const std::string& unfinished, const std::string& path, std::string_view text,
                     int fresh = O_TRUNC)
{
    Descriptor file(
        ::open(unfinished.c_str(), O_WRONLY | O_CREAT | fresh | O_CLOEXEC | O_NOFOLLOW, 0644));
    if (file.number() < 0)
        return fileProblem(Phrase::tr("the file can't be made: %1").with(reason()), path,
                           Phrase::tr("check the folder and its permissions"));
    if (!writeAll(file.number(), text) || ::fsync(file.number()) != 0 || !file.close())
        return fileProblem(Phrase::tr("the file can't be written: %1").with(reason()), path,
                           Phrase::tr("make room on the disk, or choose another place"));
    return {};
}

/// A short name of its own in the target's folder: the target's may be as long as names can be.
std::string unfinishedBeside(const std::string& path)
{
    static std::atomic<unsigned> count{0};
    const fs::path folder = fs::path(path).parent_path();
    const std::string name =
        ".holdband-" + std::to_string(::getpid()) + "-" + std::to_string(++count) + ".part";
    return (folder / name).string();
}

/// The name that the new file takes over from the old one, with its permissions.
Done replaceFile(const std::string& unfinished, const std::string& path)
{
    struct stat old {};
    if (::stat(path.c_str(), &old) == 0)
        (void)::chmod(unfinished.c_str(), old.st_mode & 0777); // the new one is good without, too
    if (::rename(unfinished.c_str(), path.c_str()) != 0)
        return fileProblem(Phrase::tr("the file can't be named: %1").with(reason()), path);
    return {};
}

} // namespace

Done mayWrite(const std::string& path, Existing existing)
{
    std::error_code error;
    const fs::path folder = fs::path(path).parent_path();
    if (!folder.empty() && !fs::is_directory(folder, error))
        return fileProblem(Phrase::tr("there is no such folder"), folder.string(),
                           Phrase::tr("choose another place"));
    const fs::file_status found = fs::symlink_status(path, error);
    if (found.type() == fs::file_type::not_found)
        return {};
    if (error)
        return fileProblem(Phrase::tr("the file can't be written: %1").with(error.message()), path,
                           Phrase::tr("choose another name"));
    if (fs::is_directory(path, error))
        return fileProblem(Phrase::tr("this is a folder"), path, Phrase::tr("name a file in it"));
    if (fs::exists(path, error) && !fs::is_regular_file(path, error))
        return fileProblem(Phrase::tr("this is no regular file"), path,
                           Phrase::tr("choose another name"));
    if (existing == Existing::keep)
        return dataProblem(Phrase::tr("a file stands there already; nothing was changed"), path,
                           Phrase::tr("choose another name, or --force to replace it"));
    return {};
}

Done writeFile(const std::string& path, std::string_view bytes, Existing existing)
{
    HOLDBAND_TRY(mayWrite(path, existing));
    // What a link leads to is replaced, not the link.
    std::error_code error;
    const fs::path real = fs::canonical(path, error);
    const std::string target = error ? path : real.string();
    const std::string unfinished = unfinishedBeside(target);
    Done written = writeUnfinished(unfinished, path, bytes, O_EXCL);
    if (written)
        written = existing == Existing::keep ? nameNewFile(unfinished, target)
                                             : replaceFile(unfinished, target);
    if (!written)
        fs::remove(unfinished, error);
    return written;
}

Done nameNewFile(const std::string& unfinished, const std::string& path)
{
    if (::renameat2(AT_FDCWD, unfinished.c_str(), AT_FDCWD, path.c_str(), RENAME_NOREPLACE) == 0)
        return {};
    if (errno == EEXIST)
        return standsThere(path, Phrase::tr("choose another name"));
    // Not every file system can refuse to replace: look first, then rename.
    std::error_code error;
    if (fs::exists(fs::symlink_status(path, error)))
        return standsThere(path, Phrase::tr("choose another name"));
    fs::rename(unfinished, path, error);
    if (error)
        return fileProblem(Phrase::tr("the file can't be named: %1").with(error.message()), path);
    return {};
}

Done writeNewFile(const std::string& path, std::string_view text)
{
    std::error_code error;
    if (fs::exists(fs::symlink_status(path, error)))
        return standsThere(path, Phrase::tr("choose another name"));
    const std::string unfinished = path + ".part";
    Done written = writeUnfinished(unfinished, path, text);
    if (written)
        written = nameNewFile(unfinished, path);
    if (!written)
        fs::remove(unfinished, error);
    return written;
}

Done makeFolder(const std::string& path)
{
    std::error_code error;
    if (fs::is_directory(path, error) && fs::is_empty(path, error) && !error)
        return {};
    if (fs::exists(fs::symlink_status(path, error)))
        return standsThere(path, Phrase::tr("choose a new or an empty folder"));
    if (!fs::create_directories(path, error) || error)
        return fileProblem(Phrase::tr("the folder can't be made: %1").with(error.message()), path);
    return {};
}

Result<std::string> readWholeFile(const std::string& path, std::size_t most)
{
    Descriptor file(::open(path.c_str(), O_RDONLY | O_CLOEXEC | O_NONBLOCK));
    if (file.number() < 0)
        return fileProblem(Phrase::tr("the file can't be read: %1").with(reason()), path,
                           Phrase::tr("check its name"));
    struct stat about {};
    if (::fstat(file.number(), &about) != 0 || !S_ISREG(about.st_mode))
        return fileProblem(S_ISDIR(about.st_mode) ? Phrase::tr("this is a folder")
                                                  : Phrase::tr("this is no regular file"),
                           path, Phrase::tr("name a file"));
    if (static_cast<std::size_t>(about.st_size) > most)
        return fileProblem(Phrase::tr("the file is too large"), path,
                           Phrase::tr("at most %1 MiB").with(std::to_string(most >> 20)));
    std::string text(static_cast<std::size_t>(about.st_size), '\0');
    std::size_t got = 0;
    while (got < text.size()) {
        const ssize_t count = ::read(file.number(), text.data() + got, text.size() - got);
        if (count < 0 && errno == EINTR)
            continue;
        if (count < 0)
            return fileProblem(Phrase::tr("the file can't be read: %1").with(reason()), path);
        if (count == 0)
            break;
        got += static_cast<std::size_t>(count);
    }
    text.resize(got);
    return text;
}

} // namespace holdband::exchange
