#include "core/digest.h"
#include "core/intake/container/container_kind.h"
#include "core/intake/container/json_lines.h"
#include "core/intake/csv/source_file.h"
#include "core/intake/watch/watch.h"

#include <algorithm>
#include <fstream>

namespace holdband::intake {

namespace {

constexpr std::int64_t digestReach = 4096;

/// Up to `count` bytes of a file; fewer at its end.
std::string bytesOf(const std::string& path, std::int64_t from, std::int64_t count)
{
    std::ifstream file(path, std::ios::binary);
    std::string bytes(static_cast<std::size_t>(std::max<std::int64_t>(count, 0)), '\0');
    file.seekg(from);
    file.read(bytes.data(), static_cast<std::streamsize>(bytes.size()));
    bytes.resize(static_cast<std::size_t>(std::max<std::streamsize>(file.gcount(), 0)));
    return bytes;
}

std::string digestOf(const std::string& path, std::int64_t bytes)
{
    Digest digest;
    const std::string head = bytesOf(path, 0, std::min(digestReach, bytes));
    const std::string tail =
        bytesOf(path, std::max<std::int64_t>(bytes - digestReach, 0), std::min(digestReach, bytes));
    digest.add(head);
    digest.add(tail);
    return digest.hex();
}

enum class Coding { bytes, littleUtf16, bigUtf16 };

Coding codingOf(std::string_view head)
{
    if (head.starts_with("\xFF\xFE") || (head.size() > 1 && head[0] != 0 && head[1] == 0))
        return Coding::littleUtf16;
    if (head.starts_with("\xFE\xFF") || (head.size() > 1 && head[0] == 0 && head[1] != 0))
        return Coding::bigUtf16;
    return Coding::bytes;
}

/// Counts line ends and stores the position of the last one.
struct LineEnds {
    std::int64_t lines = 0;
    std::int64_t end = 0; ///< after the last line end

    /// Of UTF-16 the piece begins with a whole unit.
    void take(std::string_view piece, std::int64_t at, char lineEnd, Coding coding)
    {
        for (std::size_t i = piece.find(lineEnd); i != piece.npos; i = piece.find(lineEnd, i + 1)) {
            const std::size_t unit = coding == Coding::bytes ? i : i - i % 2;
            const std::size_t bytes = coding == Coding::bytes ? 1 : 2;
            if (unit + bytes > piece.size() || !isWhole(piece, unit, i, coding))
                continue;
            ++lines;
            end = at + static_cast<std::int64_t>(unit + bytes);
        }
    }

private:
    /// In UTF-16 the byte of a line end is also half of other characters.
    static bool isWhole(std::string_view piece, std::size_t unit, std::size_t i, Coding coding)
    {
        if (coding == Coding::littleUtf16)
            return i == unit && piece[unit + 1] == 0;
        return coding == Coding::bytes || (i != unit && piece[unit] == 0);
    }
};

/// Whether only the program that packed the file knows where its rows are.
bool isPacked(std::string_view head)
{
    const auto kind = containerKindOf(head);
    return !kind || *kind != ContainerKind::none;
}

/// A packed file is read as a whole, and again when its beginning, its end or its size has changed:
/// the end holds a checksum of what is in it.
FileState packedState(const std::string& path, std::int64_t size,
                      const std::optional<FileSeen>& seen)
{
    FileState look;
    look.bytewise = false;
    look.bytes = size;
    look.digest = digestOf(path, size);
    const bool same = seen && seen->bytes == look.bytes && seen->digest == look.digest;
    look.news = !seen ? FileNews::first : same ? FileNews::nothing : FileNews::grown;
    return look;
}

} // namespace

bool stillHas(const std::string& path, const FileState& look)
{
    return digestOf(path, look.bytes) == look.digest;
}

Result<FileState> inspectFile(const std::string& path, const std::optional<FileSeen>& seen)
{
    auto file = SourceFile::open(path);
    if (!file)
        return failure(file.error());
    const std::string head = bytesOf(path, 0, digestReach);
    if (isPacked(head))
        return packedState(path, file->size(), seen);
    const Coding coding = codingOf(head);
    const bool onlyReturns = head.find('\n') == head.npos && head.find('\r') != head.npos;
    const bool goesOn =
        seen && file->size() >= seen->bytes && digestOf(path, seen->bytes) == seen->digest;
    FileState look;
    look.bytewise = !onlyReturns && head.find('\0') == head.npos && !mayBeJsonLines(head);
    LineEnds ends;
    if (goesOn)
        ends = {seen->lines, seen->bytes};
    constexpr auto step = static_cast<std::int64_t>(SourceFile::pieceSize);
    for (std::int64_t at = ends.end; at < file->size(); at += step)
        ends.take(bytesOf(path, at, std::min(step, file->size() - at)), at,
                  onlyReturns ? '\r' : '\n', coding);
    const bool any = !goesOn || ends.end > seen->bytes;
    look.bytes = ends.end;
    look.lines = ends.lines;
    look.digest = digestOf(path, look.bytes);
    if (!seen)
        look.news = look.bytes > 0 ? FileNews::first : FileNews::nothing;
    else if (goesOn)
        look.news = any ? FileNews::grown : FileNews::nothing;
    else
        look.news = look.bytes < seen->bytes ? FileNews::shrunk : FileNews::replaced;
    return look;
}

} // namespace holdband::intake
