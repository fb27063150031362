// What a change did to the small tables, row by row, as SQLite's session extension records it: can
// be kept, read, applied again and applied backwards. Not for use outside core/store.
#pragma once

#include "core/store/sqlite/sqlite.h"

#include <functional>
#include <memory>
#include <string>
#include <vector>

namespace holdband::store {

/// The bytes of a changeset; empty where nothing changed.
using Changeset = std::string;

/// Records what happens to the tables that undo knows, from its beginning on. The bulk of readings
/// is not recorded; pause while it is written, since a recording looks at every row.
class Recording {
public:
    static Result<Recording> begin(const Database& database);
    Recording(Recording&&) noexcept;
    Recording& operator=(Recording&&) = delete;
    ~Recording();

    /// Everything since the beginning, and begins anew.
    Result<Changeset> take();
    Done pause();
    /// Something may have been written that it did not see.
    bool wasPaused() const { return m_wasPaused; }
    Done resume();

private:
    struct Session;
    explicit Recording(const Database& database);
    Done start();
    /// Adds what the running session saw to `m_taken`.
    Done collect();

    const Database* m_database;
    std::unique_ptr<Session> m_session;
    bool m_wasPaused = false;
    Changeset m_taken;
};

/// One column of a row that changed.
struct ChangedValue {
    std::string column;
    std::string before; ///< as text; empty where there was none
    std::string after;
};

struct ChangedRow {
    enum class How { added, changed, removed };
    std::string table;
    How how = How::changed;
    std::vector<ChangedValue> values; ///< of an added or removed row: all of them
};

/// The rows in order of their tables.
Result<std::vector<ChangedRow>> rowsOf(const Database& database, const Changeset& changes);

Result<Changeset> inverted(const Database& database, const Changeset& changes);

/// Applies all of it or nothing. Problem (data): a row is no longer as the changeset left it.
Done applyChanges(const Database& database, const Changeset& changes);

} // namespace holdband::store
