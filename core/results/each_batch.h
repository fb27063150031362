// Computes a value of several batches of a setup. Not for use outside core/results.
#pragma once

#include "core/results/batch_cache.h"

#include <deque>
#include <future>
#include <map>
#include <string>
#include <utility>

namespace holdband::results {

/// What every batch is read from.
struct BatchReading {
    const store::LogbookFile* logbook;
    const Snapshot* snapshot;
    store::SeriesFingerprints* fingerprints; ///< made for this review
};

/// One batch after the other: while one is computed on another thread, the next is read. `setup`
/// and `rules` must outlive it.
template <typename Value, typename Rules>
class EachBatch {
public:
    /// Uses only its arguments; it runs on any thread. The run is only read so far.
    using Compute = Value (*)(LoadedRun run, const std::vector<Span>& betweenReadings,
                              const Rules& rules);

    /// `cache` may be null.
    EachBatch(BatchReading reading, const LoadedSetup& setup, const Rules& rules, Compute compute,
              BatchCache<Value, Rules>* cache)
        : m_reading(reading), m_setup(&setup), m_rules(&rules), m_compute(compute), m_cache(cache)
    {
    }

    Done add(const Batch& batch)
    {
        if (m_cache) {
            auto known = m_cache->known(*m_reading.logbook, *m_reading.snapshot, batch, *m_setup,
                                        *m_rules, *m_reading.fingerprints);
            HOLDBAND_TRY(known);
            if (*known) {
                m_done.emplace(batch.name, std::move(**known));
                return {};
            }
        }
        auto run = loadInput(*m_reading.logbook, *m_reading.snapshot, batch);
        HOLDBAND_TRY(run);
        takeOldest(mostAtWork - 1);
        const auto work = [compute = m_compute, between = &m_setup->betweenReadings,
                           rules = m_rules](LoadedRun loaded) {
            return compute(std::move(loaded), *between, *rules);
        };
        m_atWork.push_back({&batch, std::async(std::launch::async, work, std::move(*run))});
        return {};
    }

    std::map<std::string, Value> finish()
    {
        takeOldest(0);
        return std::move(m_done);
    }

private:
    struct Work {
        const Batch* batch;
        std::future<Value> value;
    };
    static constexpr std::size_t mostAtWork = 2; ///< whose readings are in memory at once

    void takeOldest(std::size_t untilLeft)
    {
        while (m_atWork.size() > untilLeft) {
            Work work = std::move(m_atWork.front());
            m_atWork.pop_front();
            Value value = work.value.get();
            if (m_cache)
                m_cache->remember(*work.batch, *m_rules, value);
            m_done.emplace(work.batch->name, std::move(value));
        }
    }

    BatchReading m_reading;
    const LoadedSetup* m_setup;
    const Rules* m_rules;
    Compute m_compute;
    BatchCache<Value, Rules>* m_cache;
    std::deque<Work> m_atWork;
    std::map<std::string, Value> m_done;
};

} // namespace holdband::results
