// A value of each batch from the last review, so that after a change only the affected batches are
// computed again. A value is reused only if everything that it was made from is the same: the
// settings, the rules, and its BatchSources. Belongs to one logbook and to the thread that reads
// it.
#pragma once

#include "core/results/batch_sources.h"

#include <map>
#include <optional>
#include <string>
#include <utility>

namespace holdband::results {

/// Rules are compared with ==, and `cachePlace()` separates those that are in use side by side.
template <typename Value, typename Rules>
class BatchCache {
public:
    /// Call before asking for values; forgets deleted batches.
    void begin(const store::LogbookFile& logbook, const Snapshot& snapshot)
    {
        if (m_of.changed(logbook, snapshot))
            m_entries.clear();
        std::erase_if(m_entries,
                      [&](const auto& entry) { return !snapshot.batch(entry.first.first); });
        m_computed = 0;
    }

    /// The batch's value if it is cached and still valid. Else the caller makes it from the logbook
    /// and passes it to remember(). `fingerprints`: made for this review.
    Result<std::optional<Value>> known(const store::LogbookFile& logbook, const Snapshot& snapshot,
                                       const Batch& batch, const LoadedSetup& setup,
                                       const Rules& rules, store::SeriesFingerprints& fingerprints)
    {
        auto now = BatchSources::of(logbook, snapshot, batch, setup, fingerprints);
        HOLDBAND_TRY(now);
        Entry& entry = m_entries[{batch.name, rules.cachePlace()}];
        if (entry.value) {
            auto same = entry.sources.isSame(*now, fingerprints);
            HOLDBAND_TRY(same);
            if (!*same || entry.rules != rules)
                entry.value.reset();
        }
        entry.sources = std::move(*now); // what the next review is compared with
        entry.rules = rules;
        return entry.value;
    }

    void remember(const Batch& batch, const Rules& rules, Value value)
    {
        ++m_computed;
        m_entries[{batch.name, rules.cachePlace()}].value = std::move(value);
    }

    /// How many batches were computed since begin().
    int computed() const { return m_computed; }

private:
    struct Entry {
        BatchSources sources;
        Rules rules;
        std::optional<Value> value; ///< absent until remember()
    };

    CachedLogbook m_of;
    std::map<std::pair<std::string, std::size_t>, Entry> m_entries; ///< by batch and place
    int m_computed = 0;
};

} // namespace holdband::results
