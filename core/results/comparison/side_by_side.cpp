#include "core/results/comparison/side_by_side.h"

#include "core/assign_result.h"
#include "core/results/comparison/side_reader.h"
#include "core/store/records/weighing.h"
#include "core/text/name_suggestions.h"
#include "core/text/phrase.h"

namespace holdband::results {

namespace {

Problem unknownSide(const Snapshot& snapshot, const std::string& name)
{
    std::vector<std::string> names;
    for (const Batch& batch : snapshot.batches)
        names.push_back(batch.name);
    for (const Setup& setup : snapshot.setups)
        names.push_back(setup.name);
    return {ProblemKind::data,
            Phrase::tr("there is no batch and no setup \"%1\"").with(name),
            {},
            suggestion(name, names)};
}

Result<SideBySide> compared(SideReader& reader)
{
    const Snapshot& snapshot = reader.snapshot;
    const auto& [a, b, only, fromStage, sign, given] = reader.request;
    for (const std::string& name : {a, b}) {
        if (!snapshot.batch(name) && !snapshot.setup(name))
            return failure(unknownSide(snapshot, name));
    }
    if (a == b)
        return dataProblem(Phrase::tr("\"%1\" can't be compared with itself").with(a), {},
                           Phrase::tr("name two", "batches or setups"));
    if (snapshot.batch(a) && snapshot.batch(b)) {
        if (!only.empty())
            return dataProblem(
                Phrase::tr("two batches are compared, there are no others to take"), {},
                Phrase::tr("choose among batches only where two setups are compared"));
        return reviewOfBatches(reader, *snapshot.batch(a), *snapshot.batch(b));
    }
    if (snapshot.setup(a) && snapshot.setup(b))
        return reviewOfSetups(reader, *snapshot.setup(a), *snapshot.setup(b));
    return dataProblem(
        Phrase::tr("one of \"%1\" and \"%2\" is a batch, the other a setup").with(a, b), {},
        Phrase::tr("compare two batches or two setups"));
}

} // namespace

Result<SideBySide> reviewSideBySide(const store::LogbookFile& logbook,
                                    const SideBySideRequest& request, ComparisonCache* cache)
{
    auto steady = store::Transaction::beginReading(logbook.database());
    HOLDBAND_TRY(steady);
    auto snapshot = readSnapshot(logbook);
    HOLDBAND_TRY(snapshot);
    Weighing weighing;
    if (request.weighing)
        weighing = *request.weighing;
    else
        HOLDBAND_TRY(assignResult(store::readWeighing(logbook), weighing));
    if (cache)
        cache->begin(logbook, *snapshot);
    SideReader reader{logbook,
                      *snapshot,
                      request,
                      {snapshot->settings, request.decimalSign},
                      std::move(weighing),
                      cache,
                      store::SeriesFingerprints(logbook)};
    return compared(reader);
}

} // namespace holdband::results
