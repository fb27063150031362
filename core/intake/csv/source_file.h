// The bytes of a regular file or of a text in memory, in pieces, with their SHA-256. Folders, pipes
// and devices are refused; links to regular files are followed.
#pragma once

#include "core/digest.h"
#include "core/problem.h"

#include <cstdint>
#include <future>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace holdband {

class SourceFile {
public:
    static constexpr std::size_t pieceSize = std::size_t{1} << 20;

    /// Problem (file): missing, not a regular file, not readable.
    static Result<SourceFile> open(const std::string& path);

    /// A text in memory that is read like a file.
    static SourceFile ofText(std::shared_ptr<const std::string> text);

    /// Stops reading after that many bytes. Problem (file): there are fewer.
    Done endAt(std::int64_t bytes);

    SourceFile(SourceFile&& other) noexcept;
    SourceFile& operator=(SourceFile&&) = delete;
    ~SourceFile();

    /// The size when it was opened, in bytes.
    std::int64_t size() const { return m_size; }
    std::int64_t bytesRead() const { return m_read; }

    /// The next piece, valid until the next call; empty at the end. Problem (file): reading
    /// failed, or the file is shorter than it was when it was opened.
    Result<std::string_view> next();

    /// Of all pieces so far, lower-case hexadecimal.
    std::string sha256();

private:
    SourceFile(int descriptor, std::string path, std::int64_t size);

    std::string_view nextOfText();
    Result<std::size_t> fill(char* to, std::size_t most);

    int m_descriptor; ///< -1: m_text is read, without buffers
    std::shared_ptr<const std::string> m_text;
    std::optional<std::int64_t> m_end;
    std::string m_path;
    std::int64_t m_size;
    std::int64_t m_read = 0;
    std::vector<char> m_buffer; ///< returned last
    std::vector<char> m_other;  ///< filled next
    std::unique_ptr<Digest> m_hash;
    std::future<void> m_hashing; ///< of m_buffer, on another thread: it takes as long as reading
};

} // namespace holdband
