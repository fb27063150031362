// The rows that a change touched in the small tables, as SQLite's session extension records them:
// can be stored, read, applied again and applied in reverse. Not for use outside core/store.
#pragma once

#include "core/store/sqlite/database.h"

#include <functional>
#include <memory>
#include <string>
#include <vector>

namespace holdband::store {

/// The bytes of a changeset; empty where nothing changed.
using Changeset = std::string;

/// Records the changes of the tables that undo covers, from construction on. The bulk of readings
/// is not recorded; pause while it is written, because a recording looks at every row.
class Recording {
public:
    static Result<Recording> begin(const Database& database);
    Recording(Recording&&) noexcept;
    Recording& operator=(Recording&&) = delete;
    ~Recording();

    /// Returns everything since the beginning, and begins again.
    Result<Changeset> take();
    Done pause();
    /// Something may have been written without being recorded.
    bool wasPaused() const { return m_wasPaused; }
    Done resume();

private:
    struct Session;
    explicit Recording(const Database& database);
    Done start();
    /// Adds the changes recorded by the running session to `m_taken`.
    Done collect();

    const Database* m_database;
    std::unique_ptr<Session> m_session;
    bool m_wasPaused = false;
    Changeset m_taken;
};

/// One column of a row that changed.
struct ChangedValue {
    std::string column;
    std::string before; ///< as text; empty if there was none
    std::string after;
};

struct ChangedRow {
    enum class How { added, changed, removed };
    std::string table;
    How how = How::changed;
    /// For an added or removed row: all of them. A correction by hand has its reading's unit, too.
    std::vector<ChangedValue> values;
};

/// The rows in the order of their tables.
Result<std::vector<ChangedRow>> rowsOf(const Database& database, const Changeset& changes);

Result<Changeset> inverted(const Database& database, const Changeset& changes);

/// Applies all of it or nothing. Problem (data): a row has changed since the changeset was made.
Done applyChanges(const Database& database, const Changeset& changes);

} // namespace holdband::store
