#include "tests/faults/world.h"

#include "core/digest.h"

#include <filesystem>
#include <fstream>
#include <sqlite3.h>
#include <vector>

namespace holdband::faults {

namespace fs = std::filesystem;

namespace {

std::string bytesAt(const fs::path& path)
{
    std::string bytes(fs::file_size(path), '\0');
    std::ifstream(path, std::ios::binary)
        .read(bytes.data(), static_cast<std::streamsize>(bytes.size()));
    return bytes;
}

bool isSqlite(const fs::path& path)
{
    std::ifstream file(path, std::ios::binary);
    std::string start(15, '\0');
    file.read(start.data(), 15);
    return start == "SQLite format 3";
}

/// Adds every row; false if one can't be read.
bool addRows(sqlite3* database, const std::string& sql, Digest& digest,
             std::vector<std::string>* first = nullptr)
{
    sqlite3_stmt* rows = nullptr;
    int code = sqlite3_prepare_v2(database, sql.c_str(), -1, &rows, nullptr);
    while (code == SQLITE_OK || code == SQLITE_ROW) {
        code = sqlite3_step(rows);
        for (int column = 0; code == SQLITE_ROW && column < sqlite3_column_count(rows); ++column) {
            const auto* value = static_cast<const char*>(sqlite3_column_blob(rows, column));
            const auto size = static_cast<std::size_t>(sqlite3_column_bytes(rows, column));
            digest.add(std::to_string(sqlite3_column_type(rows, column)) + ":" +
                       std::to_string(size) + ":");
            digest.add({value ? value : "", value ? size : 0});
            if (first && column == 0)
                first->emplace_back(value ? value : "", value ? size : 0);
        }
    }
    sqlite3_finalize(rows);
    return code == SQLITE_DONE;
}

std::string digestOfTables(sqlite3* database)
{
    Digest digest;
    std::vector<std::string> tables;
    if (!addRows(database, "PRAGMA user_version", digest) ||
        !addRows(database, "SELECT name FROM sqlite_schema WHERE type = 'table' ORDER BY name",
                 digest, &tables))
        return std::string("broken: ") + sqlite3_errmsg(database);
    for (const std::string& table : tables) {
        if (!addRows(database, "SELECT * FROM \"" + table + "\" ORDER BY 1, 2", digest))
            return "broken: " + table + ": " + sqlite3_errmsg(database);
    }
    return digest.hex();
}

} // namespace

std::string contentOf(const std::string& logbook)
{
    sqlite3* database = nullptr;
    sqlite3_open_v2(logbook.c_str(), &database, SQLITE_OPEN_READWRITE, nullptr);
    const std::string digest = digestOfTables(database);
    sqlite3_close(database);
    return digest;
}

Picture pictureOf(const std::string& folder)
{
    std::vector<fs::path> paths;
    for (const auto& entry : fs::recursive_directory_iterator(folder))
        paths.push_back(entry.path());
    Picture picture;
    for (const fs::path& path : paths) {
        const std::string name = path.lexically_relative(folder).string();
        if (name.ends_with(".lock"))
            continue;
        if (fs::is_directory(path))
            picture[name + "/"] = "";
        else if (fs::exists(path)) // not a journal that was rolled back meanwhile
            picture[name] = isSqlite(path) ? contentOf(path.string()) : digestOf(bytesAt(path));
    }
    std::erase_if(picture,
                  [&](const auto& entry) { return !fs::exists(folder + "/" + entry.first); });
    return picture;
}

StoredFolder::StoredFolder(const std::string& folder)
{
    for (const auto& entry : fs::recursive_directory_iterator(folder)) {
        const std::string name = entry.path().lexically_relative(folder).string();
        if (entry.is_directory())
            m_files[name + "/"] = "";
        else
            m_files[name] = bytesAt(entry.path());
    }
}

void StoredFolder::writeInto(const std::string& folder) const
{
    for (const auto& [name, bytes] : m_files) {
        if (name.ends_with("/"))
            fs::create_directory(folder + "/" + name);
        else
            std::ofstream(folder + "/" + name, std::ios::binary) << bytes;
    }
}

void clearFolder(const std::string& folder)
{
    std::vector<fs::path> inside;
    for (const auto& entry : fs::directory_iterator(folder))
        inside.push_back(entry.path());
    for (const fs::path& path : inside)
        fs::remove_all(path);
}

} // namespace holdband::faults
