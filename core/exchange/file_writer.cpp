#include "core/exchange/file_writer.h"

#include "core/disk.h"
#include "core/store/safety/new_file.h"
#include "core/text/phrase.h"

#include <cerrno>
#include <cstring>
#include <fcntl.h>
#include <filesystem>
#include <sys/stat.h>
#include <unistd.h>

namespace holdband::exchange {

namespace fs = std::filesystem;

namespace {

/// A file descriptor that is closed on destruction.
class Descriptor {
public:
    explicit Descriptor(int number) : m_number(number) {}
    ~Descriptor()
    {
        if (m_number >= 0)
            disk().close(m_number);
    }
    Descriptor(const Descriptor&) = delete;
    Descriptor& operator=(const Descriptor&) = delete;

    int number() const { return m_number; }
    bool close() { return disk().close(std::exchange(m_number, -1)) == 0; }

private:
    int m_number;
};

std::string reason()
{
    return std::strerror(errno);
}

bool writeAll(int descriptor, std::string_view text)
{
    while (!text.empty()) {
        const ssize_t written = disk().write(descriptor, text.data(), text.size());
        if (written < 0 && errno == EINTR)
            continue;
        if (written <= 0)
            return false;
        text.remove_prefix(static_cast<std::size_t>(written));
    }
    return true;
}

Done writeUnfinished(const std::string& unfinished, const std::string& path, std::string_view text)
{
    Descriptor file(disk().open(unfinished.c_str(),
                                O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC | O_NOFOLLOW, 0644));
    if (file.number() < 0)
        return fileProblem(Phrase::tr("the file can't be made: %1").with(reason()), path,
                           Phrase::tr("check the folder and its permissions"));
    if (!writeAll(file.number(), text) || disk().sync(file.number()) != 0 || !file.close())
        return fileProblem(Phrase::tr("the file can't be written: %1").with(reason()), path,
                           Phrase::tr("make room on the disk, or choose another place"));
    return {};
}

/// Writes the target under another name and gives it its own. `path`: as it was named, for
/// messages.
Done writeAndName(const std::string& target, const std::string& path, std::string_view bytes,
                  Existing existing)
{
    const auto write = [&path, bytes](const std::string& unfinished) {
        return writeUnfinished(unfinished, path, bytes);
    };
    return store::writeBeside(target, write,
                              existing == Existing::keep ? store::nameNewFile : store::replaceFile);
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
        return fileProblem(Phrase::tr("the file already exists; nothing was changed"), path,
                           Phrase::tr("choose another name, or --force to replace it"));
    return {};
}

Done writeFile(const std::string& path, std::string_view bytes, Existing existing)
{
    HOLDBAND_TRY(mayWrite(path, existing));
    // For a symbolic link, the file that it points to is replaced, not the link.
    std::error_code error;
    const fs::path real = fs::canonical(path, error);
    const std::string target = error ? path : real.string();
    return writeAndName(target, path, bytes, existing);
}

Done writeNewFile(const std::string& path, std::string_view text)
{
    HOLDBAND_TRY(store::refuseTakenName(path, Phrase::tr("choose another name")));
    return writeAndName(path, path, text, Existing::keep);
}

Done mayMakeFolder(const std::string& path)
{
    std::error_code error;
    if (fs::is_directory(path, error) && fs::is_empty(path, error) && !error)
        return {};
    return store::refuseTakenName(path, Phrase::tr("choose a new or an empty folder"));
}

Done makeFolder(const std::string& path)
{
    HOLDBAND_TRY(mayMakeFolder(path));
    if (!makeFolders(path))
        return fileProblem(Phrase::tr("the folder can't be made: %1").with(reason()), path);
    return {};
}

Result<std::string> readWholeFile(const std::string& path, std::size_t most)
{
    Descriptor file(disk().open(path.c_str(), O_RDONLY | O_CLOEXEC | O_NONBLOCK, 0));
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
        const ssize_t count = disk().read(file.number(), text.data() + got, text.size() - got);
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
