// The parts of a workbook that a sheet's cells refer to.
#pragma once

#include "core/intake/container/cell_format.h"
#include "core/intake/container/zip_archive.h"
#include "core/problem.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace holdband {

/// The archive and its files, found by the names that the parts use for each other.
class PackageParts {
public:
    PackageParts(std::string_view archive, const std::vector<ZipEntry>& entries)
        : m_archive(archive), m_entries(entries)
    {
    }
    std::string_view archive() const { return m_archive; }
    /// Upper and lower case count as the same; null where there is none.
    const ZipEntry* find(std::string_view name) const;

private:
    std::string_view m_archive;
    const std::vector<ZipEntry>& m_entries;
};

/// Texts that cells refer to by their index, in one block of memory.
class SharedTexts {
public:
    /// False: there are too many.
    bool add(std::string_view text);
    std::optional<std::string_view> at(std::size_t index) const;

private:
    std::string m_text;
    std::vector<std::size_t> m_ends;
};

struct WorkbookSheet {
    std::string name;
    std::string part; ///< its name in the archive
    bool hidden = false;
};

struct WorkbookParts {
    std::vector<WorkbookSheet> sheets; ///< those with cells, in the workbook's order
    bool from1904 = false;
    SharedTexts texts;
    std::vector<CellForm> forms; ///< by a cell's style
};

/// The sheets with cells, in the workbook's order: at least one. Problem (data): it is no workbook,
/// or damaged.
Result<std::vector<WorkbookSheet>> workbookSheets(const PackageParts& parts);

/// Problem (data): it is no workbook, or damaged.
Result<WorkbookParts> workbookParts(const PackageParts& parts);

} // namespace holdband
