// Each batch's line from the last review of the lanes, so that after a change only the affected
// batches are judged again. A line is reused only if everything that it was made from is the same:
// the settings and the batch's key (core/results/cache_key.h). Belongs to one logbook and to the
// thread that reads it.
#pragma once

#include "core/results/cache_key.h"
#include "core/results/overview/batch_list.h"

#include <map>
#include <string>

namespace holdband::results {

class LanesCache {
public:
    /// Call before asking for the lines of a review; forgets deleted batches.
    void begin(const store::LogbookFile& logbook, const Snapshot& snapshot);
    /// The same result as batchLineOf. `fingerprints`: made for this review.
    Result<BatchLine> lineOf(const store::LogbookFile& logbook, const Snapshot& snapshot,
                             const Batch& batch, store::SeriesFingerprints& fingerprints);

    /// How many batches were judged since begin().
    int judged() const { return m_judged; }

private:
    struct Entry {
        BatchKey key;
        BatchLine line;
    };
    static Result<BatchKey> keyOf(const Snapshot& snapshot, const Batch& batch,
                                  store::SeriesFingerprints& fingerprints);

    CachedLogbook m_of;
    std::map<std::string, Entry> m_entries;
    int m_judged = 0;
};

} // namespace holdband::results
