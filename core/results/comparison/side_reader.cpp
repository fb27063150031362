#include "core/results/comparison/side_reader.h"

#include <algorithm>
#include <array>

namespace holdband::results {

using analysis::BatchSummary;

namespace {

constexpr std::size_t mostAtWork = 2; ///< batches whose readings are in memory at the same time

}

Done SummingUp::add(const Batch& batch)
{
    if (ComparisonCache* cache = m_reader->cache) {
        auto known = cache->known(m_reader->logbook, m_reader->snapshot, batch, *m_setup, *m_rules,
                                  m_reader->fingerprints);
        HOLDBAND_TRY(known);
        if (*known) {
            m_done.emplace(batch.name, std::move(**known));
            return {};
        }
    }
    auto run = loadInput(m_reader->logbook, m_reader->snapshot, batch);
    HOLDBAND_TRY(run);
    takeOldest(mostAtWork - 1);
    const auto work = [between = &m_setup->betweenReadings, rules = m_rules](LoadedRun loaded) {
        return summedUp(std::move(loaded), *between, *rules);
    };
    m_atWork.push_back({&batch, std::async(std::launch::async, work, std::move(*run))});
    return {};
}

Summaries SummingUp::finish()
{
    takeOldest(0);
    return std::move(m_done);
}

void SummingUp::takeOldest(std::size_t untilLeft)
{
    while (m_atWork.size() > untilLeft) {
        Work work = std::move(m_atWork.front());
        m_atWork.pop_front();
        BatchSummary summary = work.summary.get();
        if (m_reader->cache)
            m_reader->cache->remember(*work.batch, *m_rules, summary);
        m_done.emplace(work.batch->name, std::move(summary));
    }
}

double widestTolerance(const Batch& batch)
{
    double widest = batch.tolerance ? batch.tolerance->kelvins() : 0.0;
    for (const Stage& stage : batch.schedule) {
        if (stage.tolerance)
            widest = std::max(widest, stage.tolerance->kelvins());
    }
    return widest;
}

SideBySide begunReview(const SideReader& reader, bool ofSetups)
{
    SideBySide review;
    review.settings = reader.snapshot.settings;
    review.weighing = reader.weighing;
    review.a = reader.request.a;
    review.b = reader.request.b;
    review.ofSetups = ofSetups;
    return review;
}

namespace {

/// Summaries of the batches that have none yet and ran on the setup in one of the spans.
Result<Summaries> summariesBeside(SideReader& reader, const LoadedSetup& setup,
                                  const std::vector<Span>& spans, const Summaries& known,
                                  const SummaryRules& rules)
{
    SummingUp summing(reader, setup, rules);
    const std::vector<Span> busy = analysis::unite(spans);
    for (const Batch* batch : setup.batches) {
        const Span span = reader.snapshot.batchSpans.at(batch->name);
        if (!known.contains(batch->name) && !analysis::intersect(busy, {span}).empty())
            HOLDBAND_TRY(summing.add(*batch));
    }
    return summing.finish();
}

bool hasWindows(const LogbookSettings& settings)
{
    return !settings.tariff.windows.empty() ||
           std::any_of(settings.tariffChanges.begin(), settings.tariffChanges.end(),
                       [](const TariffChange& change) { return !change.tariff.windows.empty(); });
}

} // namespace

/// The pairs between readings in which the wanted batches ran; other batches that ran at the same
/// time are considered too.
Result<SidePairs> pairsOf(SideReader& reader, const LoadedSetup& setup,
                          const std::vector<std::string>& wanted, const Summaries& known,
                          const SummaryRules& rules)
{
    SidePairs side;
    side.hasMeter = !setup.betweenReadings.empty();
    side.hasAmbient = false;
    std::vector<Span> spans;
    for (const std::string& name : wanted) {
        spans.push_back(reader.snapshot.batchSpans.at(name));
        side.meanHours += spans.back().hours() / static_cast<double>(wanted.size());
        side.hasAmbient = side.hasAmbient || reader.snapshot.batch(name)->ambientSensor;
    }
    auto beside = summariesBeside(reader, setup, spans, known, rules);
    HOLDBAND_TRY(beside);
    const Summaries& also = *beside;
    std::vector<analysis::SetupRun> runs;
    for (const Batch* batch : setup.batches) {
        analysis::SetupRun run{batch->name, reader.snapshot.batchSpans.at(batch->name), false, {}};
        run.wanted = std::find(wanted.begin(), wanted.end(), batch->name) != wanted.end();
        for (const Summaries* summaries : std::array{&known, &also}) {
            if (const auto found = summaries->find(batch->name); found != summaries->end())
                run.quiet = found->second.quiet;
        }
        runs.push_back(std::move(run));
    }
    side.pairs = analysis::weatherPairs(setup.energy, setup.betweenReadings, runs);
    return side;
}

void addModels(SideBySide& review, const SideReader& reader, SidePairs a, SidePairs b)
{
    const Setup& setupA = *reader.snapshot.setup(review.setupA);
    const Setup& setupB = *reader.snapshot.setup(review.setupB);
    addWeather(review, std::move(a), std::move(b));
    addMoney(review, setupA, setupB, hasWindows(review.settings));
    addJudgement(review, setupA, setupB);
}

} // namespace holdband::results
