// A VFS for SQLite over the system's: what the fault engine lets through is done by the system's
// files (https://www.sqlite.org/vfs.html).
#pragma once

#include <string>

namespace holdband::faults {

/// While it lives, SQLite and the calls of core/disk.h go through the fault engine; then they are
/// the system's again.
class FaultyFiles {
public:
    FaultyFiles();
    ~FaultyFiles();
    FaultyFiles(const FaultyFiles&) = delete;
    FaultyFiles& operator=(const FaultyFiles&) = delete;
};

/// Lets every call below the folder through and waits for no disk, which makes a test quick.
class UndisturbedFiles {
public:
    explicit UndisturbedFiles(const std::string& folder);
    ~UndisturbedFiles();
    UndisturbedFiles(const UndisturbedFiles&) = delete;
    UndisturbedFiles& operator=(const UndisturbedFiles&) = delete;

private:
    FaultyFiles m_files;
};

} // namespace holdband::faults
