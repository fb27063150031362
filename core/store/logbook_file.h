// One logbook file: opened for reading, or for writing by one program at a time. Owns the
// connection and the writer's lock. Belongs to the thread that opened it,
// until that hands it to another one.
#pragma once

#include "core/model/equipment.h"
#include "core/store/history/changeset.h"
#include "core/store/history/history_entry.h"
#include "core/store/records/ids.h"
#include "core/store/sqlite/database.h"
#include "core/store/sqlite/transaction.h"

#include <functional>
#include <memory>
#include <optional>
#include <string>

class QLockFile;

namespace holdband::store {

class DailyBackup;
struct BackupOptions;

/// Returns the current time; tests replace it with their own.
using Clock = std::function<Instant()>;
Instant systemNow();

class LogbookFile {
public:
    /// Makes a new logbook, under another name until it is whole. Problem (file): the file already
    /// exists, or it can't be written.
    static Result<std::unique_ptr<LogbookFile>>
    create(const std::string& path, const LogbookSettings& settings, Clock clock = systemNow);
    /// Opens an existing logbook; brings an older format up to date when opened for writing.
    /// Problem (file): missing, damaged, foreign, newer, or open for writing elsewhere (the message
    /// names the holder).
    static Result<std::unique_ptr<LogbookFile>> open(const std::string& path, Access access,
                                                     Clock clock = systemNow);
    ~LogbookFile();

    /// Hands the file to another thread: the one that opened it leaves it, the other one takes it.
    void leaveThread() const { m_database->leaveThread(); }
    void takeIntoThread() const { m_database->takeIntoThread(); }

    const std::string& path() const { return m_database->path(); }
    Access access() const { return m_access; }
    const Database& database() const { return *m_database; }
    Instant now() const { return m_clock(); }

    /// Whether the seal holds. Computed when first asked, and again after another program wrote.
    Result<bool> isSealed() const;

    /// From now on a copy is made before the first change of a local day. For programs with which
    /// people use their logbook; commands that only read, and tests, don't call it.
    void useBackups(BackupOptions options);
    void beforeChange() const;

private:
    LogbookFile(std::unique_ptr<Database> database, std::unique_ptr<QLockFile> lock, Access access,
                Clock clock);
    static Done makeFile(const std::string& path, const LogbookSettings& settings,
                         const Clock& clock);

    std::unique_ptr<QLockFile> m_lock;
    std::unique_ptr<Database> m_database;
    Access m_access;
    Clock m_clock;
    std::unique_ptr<DailyBackup> m_backups;

    struct SealState {
        std::int64_t dataVersion; ///< of SQLite: another one after another program's change
        bool holds;
    };
    mutable std::optional<SealState> m_seal;
};

/// One change of the logbook: a transaction with its entry in the history. Everything is rolled
/// back unless committed; committing stores the changed rows for undo and history, and renews the
/// seal. The seal of a damaged logbook is not renewed, so that the damage is still noticed.
class Change {
public:
    static Result<Change> begin(const LogbookFile& file, const HistoryEntry& entry);

    const Database& database() const { return m_file->database(); }
    const LogbookFile& logbook() const { return *m_file; }
    HistoryEntryId entry() const { return m_entry; }
    Instant at() const { return m_at; }

    /// Call while the bulk of an import's readings is written, which has its own record.
    Done pauseRecording() const { return m_recording ? m_recording->pause() : Done{}; }
    Done resumeRecording() const { return m_recording ? m_recording->resume() : Done{}; }

    Done commit();

private:
    Change(const LogbookFile& file, Transaction transaction, HistoryEntryId entry, Instant at,
           bool sealed, std::unique_ptr<Recording> recording)
        : m_file(&file), m_transaction(std::move(transaction)), m_entry(entry), m_at(at),
          m_sealed(sealed), m_recording(std::move(recording))
    {
    }
    Done storeRecord();

    const LogbookFile* m_file;
    Transaction m_transaction;
    HistoryEntryId m_entry;
    Instant m_at;
    bool m_sealed;                          ///< before this change
    std::unique_ptr<Recording> m_recording; ///< absent during undo and redo
};

} // namespace holdband::store
