#include "core/intake/csv/source_file.h"

#include "core/disk.h"
#include "core/text/phrase.h"

#include <algorithm>
#include <cerrno>
#include <cstring>
#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>
#include <utility>

namespace holdband {

namespace {

std::string whyNot(int error)
{
    switch (error) {
    case ENOENT:
        return Phrase::tr("there is no such file");
    case EACCES:
    case EPERM:
        return Phrase::tr("you may not read this file");
    case ENAMETOOLONG:
        return Phrase::tr("the file's name is too long");
    case ELOOP:
        return Phrase::tr("the link leads in a circle");
    default:
        return Phrase::tr("the file can't be read (%1)").with(std::strerror(error));
    }
}

std::string noFile(mode_t mode)
{
    if (S_ISDIR(mode))
        return Phrase::tr("this is a folder, not a file");
    if (S_ISFIFO(mode))
        return Phrase::tr("this is a pipe, not a file");
    return Phrase::tr("this is a device or socket, not a file");
}

} // namespace

SourceFile::SourceFile(int descriptor, std::string path, std::int64_t size)
    : m_descriptor(descriptor), m_path(std::move(path)), m_size(size),
      m_hash(std::make_unique<Digest>())
{
}

SourceFile::SourceFile(SourceFile&& other) noexcept
    : m_descriptor(std::exchange(other.m_descriptor, -1)), m_text(std::move(other.m_text)),
      m_end(other.m_end), m_path(std::move(other.m_path)), m_size(other.m_size),
      m_read(other.m_read), m_buffer(std::move(other.m_buffer)), m_other(std::move(other.m_other)),
      m_hash(std::move(other.m_hash)), m_hashing(std::move(other.m_hashing))
{
}

SourceFile::~SourceFile()
{
    if (m_hashing.valid())
        m_hashing.wait();
    if (m_descriptor >= 0)
        disk().close(m_descriptor);
}

Result<SourceFile> SourceFile::open(const std::string& path)
{
    if (path.find('\0') != path.npos)
        return fileProblem(Phrase::tr("the file's name holds a NUL character"));
    // Non-blocking: opening a pipe would wait for a writer.
    const int descriptor = disk().open(path.c_str(), O_RDONLY | O_NONBLOCK | O_CLOEXEC, 0);
    if (descriptor < 0)
        return fileProblem(whyNot(errno), path);
    SourceFile file(descriptor, path, 0);
    struct stat status {};
    if (::fstat(descriptor, &status) != 0)
        return fileProblem(whyNot(errno), path);
    if (!S_ISREG(status.st_mode))
        return fileProblem(noFile(status.st_mode), path);
    file.m_size = status.st_size;
    file.m_buffer.resize(pieceSize);
    file.m_other.resize(pieceSize);
    return file;
}

SourceFile SourceFile::ofText(std::shared_ptr<const std::string> text)
{
    const auto size = static_cast<std::int64_t>(text->size());
    SourceFile file(-1, {}, size);
    file.m_text = std::move(text);
    return file;
}

Done SourceFile::endAt(std::int64_t bytes)
{
    if (bytes > m_size)
        return fileProblem(Phrase::tr("the file is shorter than it was"), m_path);
    m_end = bytes;
    m_size = bytes;
    return {};
}

/// Reads up to `most` bytes, fewer at the end.
Result<std::size_t> SourceFile::fill(char* to, std::size_t most)
{
    std::size_t filled = 0;
    while (filled < most) {
        const ssize_t count = disk().read(m_descriptor, to + filled, most - filled);
        if (count < 0 && errno == EINTR)
            continue;
        if (count < 0)
            return fileProblem(whyNot(errno), m_path);
        if (count == 0)
            break;
        filled += static_cast<std::size_t>(count);
    }
    return filled;
}

/// The text is in memory, and usually short: it is neither copied nor hashed on another thread.
std::string_view SourceFile::nextOfText()
{
    const auto end = static_cast<std::size_t>(m_size);
    const auto from = static_cast<std::size_t>(m_read);
    const std::string_view piece =
        std::string_view(*m_text).substr(from, std::min(pieceSize, end - from));
    m_read += static_cast<std::int64_t>(piece.size());
    m_hash->add(piece);
    return piece;
}

Result<std::string_view> SourceFile::next()
{
    if (m_text)
        return nextOfText();
    std::size_t wanted = m_other.size();
    if (m_end)
        wanted = std::min(wanted, static_cast<std::size_t>(*m_end - m_read));
    const auto read = fill(m_other.data(), wanted);
    if (!read)
        return failure(read.error());
    const std::size_t filled = *read;
    m_read += static_cast<std::int64_t>(filled);
    if (filled < m_other.size() && m_read < m_size)
        return fileProblem(Phrase::tr("the file became shorter while it was read"), m_path,
                           Phrase::tr("try again"));
    if (m_hashing.valid())
        m_hashing.wait();
    m_buffer.swap(m_other);
    const std::string_view piece(m_buffer.data(), filled);
    m_hashing = std::async(std::launch::async, [hash = m_hash.get(), piece] { hash->add(piece); });
    return piece;
}

std::string SourceFile::sha256()
{
    if (m_hashing.valid())
        m_hashing.wait();
    return m_hash->hex();
}

} // namespace holdband
