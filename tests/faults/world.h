// A folder with a logbook and the files beside it: its picture, to compare what a fault left with
// what was before and with what the undisturbed act makes.
#pragma once

#include "core/store/logbook_file.h"

#include <map>
#include <string>

namespace holdband::faults {

inline const Instant someday = instantFromMs(1'772'900'000'000);
inline Instant clockOfTests()
{
    return someday;
}

inline std::string logbookIn(const std::string& folder)
{
    return folder + "/garage.holdband";
}

/// By path inside the folder: a digest of what a logbook or its copy holds (of every row of every
/// table, and the format), or of another file's bytes. Folders end with '/'. Lock files are left
/// out.
using Picture = std::map<std::string, std::string>;
Picture pictureOf(const std::string& folder);

/// Of what an SQLite file holds; a changed journal beside it is rolled back. "broken: …" if it
/// can't be read.
std::string contentOf(const std::string& logbook);

/// The bytes of everything in a folder, to be written into another one.
class StoredFolder {
public:
    explicit StoredFolder(const std::string& folder);
    void writeInto(const std::string& folder) const;

private:
    std::map<std::string, std::string> m_files; ///< folders end with '/'
};

/// Empties the folder.
void clearFolder(const std::string& folder);

} // namespace holdband::faults
