// The directory of a zip archive (APPNOTE 6.3, sections 4.3 and 4.4), and its files. Nothing is
// written anywhere, so a name with "../" does no harm. Archives in parts, with a password, or over
// 4 GiB (ZIP64) are refused.
#pragma once

#include "core/intake/container/unpacker.h"
#include "core/problem.h"

#include <cstdint>
#include <memory>
#include <string>
#include <string_view>
#include <vector>

namespace holdband {

struct ZipEntry {
    std::string name;        ///< UTF-8; with the folders in the archive
    std::int64_t at = 0;     ///< where its local header begins
    std::int64_t packed = 0; ///< bytes
    std::int64_t size = 0;   ///< bytes, unpacked
    std::uint32_t crc = 0;
    unsigned method = 0;
    bool encrypted = false;

    bool isFolder() const { return name.ends_with('/'); }
};

/// Problem (data): damaged or cut off, with the place.
Result<std::vector<ZipEntry>> zipEntries(std::string_view archive);

/// The file that the archive was made for: the only one beside folders and hidden files. Problem
/// (data): there is none, or several (with their names).
Result<ZipEntry> onlyFileOf(const std::vector<ZipEntry>& entries);

/// `archive` must stay where it is while the file is unpacked. Problem (data, place "NAME"): it has
/// a password, or is packed in a way that can't be read.
Result<std::unique_ptr<Unpacker>> unpackEntry(std::string_view archive, const ZipEntry& entry);

/// All of a file. Problem (data) as above, or it is over `most` bytes.
Result<std::string> wholeEntry(std::string_view archive, const ZipEntry& entry, std::int64_t most);

/// Puts the file's name in the archive before the problem's place.
tl::unexpected<Problem> inEntry(Problem problem, const ZipEntry& entry);

} // namespace holdband
