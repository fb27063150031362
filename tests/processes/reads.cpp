#include "tests/processes/reads.h"

#include "core/digest.h"
#include "core/exchange/export.h"
#include "core/results/overview/batch_list.h"
#include "core/results/run/run_review.h"
#include "core/store/safety/backup.h"
#include "core/store/safety/soundness.h"
#include "tests/faults/world.h"

namespace holdband::test {

namespace {

using store::LogbookFile;

/// As the commands do it.
Result<std::string> figures(const LogbookFile& logbook)
{
    HOLDBAND_TRY(store::checkSeal(logbook.database()));
    const auto review = results::reviewRun(logbook, "Pale");
    HOLDBAND_TRY(review);
    const analysis::EnergyFigure& energy = review->figures.energy.whole;
    return review->words.headline + " " + review->words.detail + " " +
           std::to_string(review->input.judging.beer.size()) + " readings, " +
           std::to_string(energy.low) + " " + std::to_string(energy.kwh) + " " +
           std::to_string(energy.high) + " kWh in " + std::to_string(energy.meteredMs()) + " ms";
}

Result<std::string> batches(const LogbookFile& logbook)
{
    HOLDBAND_TRY(store::checkSeal(logbook.database()));
    const auto list = results::reviewBatches(logbook);
    HOLDBAND_TRY(list);
    std::string line;
    for (const results::BatchLine& batch : list->batches)
        line += batch.name + " " + batch.mark + " " + batch.headline;
    return line;
}

Result<std::string> check(const LogbookFile& logbook)
{
    const auto damage = store::findDamage(logbook);
    HOLDBAND_TRY(damage);
    std::string line = "sound";
    for (const std::string& sentence : *damage)
        line = sentence;
    const auto odd = results::findOddities(logbook);
    HOLDBAND_TRY(odd);
    return line;
}

Result<std::string> backUp(const LogbookFile& logbook, const std::string& scratch)
{
    HOLDBAND_TRY(store::backupTo(logbook.database(), scratch + "/copy.holdband"));
    {
        const auto copy = LogbookFile::open(scratch + "/copy.holdband", store::Access::read,
                                            faults::clockOfTests);
        HOLDBAND_TRY(copy);
        const auto found = check(**copy);
        HOLDBAND_TRY(found);
        if (*found != "sound")
            return found;
    }
    return faults::contentOf(scratch + "/copy.holdband");
}

Result<std::string> exportAll(const LogbookFile& logbook, const std::string& scratch)
{
    HOLDBAND_TRY(exchange::exportLogbook(logbook, scratch + "/export"));
    Digest digest;
    for (const auto& [name, content] : faults::pictureOf(scratch + "/export"))
        digest.add(name + " " + content + "\n");
    return digest.hex();
}

Result<std::string> read(const std::string& kind, const LogbookFile& logbook,
                         const std::string& scratch)
{
    if (kind == "figures")
        return figures(logbook);
    if (kind == "batches")
        return batches(logbook);
    if (kind == "check")
        return check(logbook);
    return kind == "backup" ? backUp(logbook, scratch) : exportAll(logbook, scratch);
}

} // namespace

const std::vector<std::string>& kindsOfReads()
{
    static const std::vector<std::string> kinds{"figures", "batches", "check", "backup", "export"};
    return kinds;
}

std::string readOnce(const std::string& kind, const std::string& folder, const std::string& scratch)
{
    const auto logbook =
        LogbookFile::open(faults::logbookIn(folder), store::Access::read, faults::clockOfTests);
    if (!logbook)
        return "failed: " + logbook.error().sentence();
    const auto result = read(kind, **logbook, scratch);
    faults::clearFolder(scratch);
    return result ? *result : "failed: " + result.error().sentence();
}

} // namespace holdband::test
