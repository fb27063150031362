// The text of a log, in pieces: the bytes of a file or of a text in memory, unpacked where they are
// in a container, and as CSV where they are a workbook or JSON lines. The kind of a file is
// recognised by its first bytes.
#pragma once

#include "core/intake/container/container_kind.h"
#include "core/intake/container/table_text.h"
#include "core/intake/container/unpacker.h"
#include "core/intake/csv/source_file.h"
#include "core/problem.h"

#include <cstdint>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace holdband {

struct LogInput {
    std::string path;
    std::shared_ptr<const std::string> text = {}; ///< the bytes themselves; `path` is only a name
    std::optional<std::int64_t> readUpTo = {};    ///< bytes of the file; absent: all of it
    std::optional<std::string> sheet = {};        ///< of a workbook; absent: the first one
    bool beginningOnly = false;                   ///< only the first piece will be read
};

class LogBytes {
public:
    /// Problem (file): it can't be read. Problem (data): a damaged, protected or unknown container,
    /// or one without exactly one log in it.
    static Result<LogBytes> open(const LogInput& input);

    /// The sheets among which the user can choose; none if the file is no workbook. Problem as
    /// `open`.
    static Result<std::vector<std::string>> sheetNames(const LogInput& input);

    /// The next piece, valid until the next call; shorter than SourceFile::pieceSize only at the
    /// end. Problem as `open`.
    Result<std::string_view> next();

    /// Of the text, in bytes; of a packed one as the container says, which can be wrong.
    std::int64_t size() const;
    std::int64_t bytesRead() const { return m_read; }

    /// What to say about how the text was made: sentences without their full stop.
    const std::vector<std::string>& notes() const { return m_notes; }

    /// Whether the text is the file's own bytes.
    bool isPlain() const { return !m_unpacker && !m_table; }

    /// Lines of the text before the file's first one: a header that was made for it.
    std::int64_t addedLines() const { return m_addedLines; }

    /// Of the file's own bytes, packed as they are; complete after the last piece.
    std::string sha256();

private:
    explicit LogBytes(SourceFile source) : m_source(std::move(source)) {}

    static Result<LogBytes> begin(const LogInput& input);
    Result<ContainerKind> beginSource();
    Done unpack(ContainerKind kind, const LogInput& input);
    Done unpackGzip();
    Done unpackZip(const LogInput& input);
    Done readPacked();
    void useTable(TableText table);
    Done readJsonLines(bool beginningOnly);
    Done beginUnpacked();
    Result<std::string_view> nextUnpacked();
    tl::unexpected<Problem> inContainer(Problem problem) const;

    SourceFile m_source;
    std::optional<std::string_view> m_pending; ///< the first piece, already read
    std::unique_ptr<std::string> m_packed;     ///< all bytes of a container
    std::unique_ptr<Unpacker> m_unpacker;      ///< of m_packed
    std::string m_entry;                       ///< the file's name in an archive
    std::vector<char> m_buffer;
    std::unique_ptr<SourceFile> m_table; ///< the CSV that was made of it
    std::string m_sha256;                ///< of a container
    std::vector<std::string> m_notes;
    std::int64_t m_addedLines = 0;
    std::int64_t m_read = 0;
};

} // namespace holdband
