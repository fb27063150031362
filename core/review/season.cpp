#include "core/review/season.h"

#include "core/review/cautions.h"
#include "core/store/batches.h"
#include "core/store/equipment.h"
#include "core/text/near.h"
#include "core/text/numbers.h"
#include "core/text/quantities.h"

#include <algorithm>
#include <array>

namespace holdband::review {

namespace {

SeasonLine lineOf(const RunReview& review)
{
    const analysis::Judging& judging = review.figures.judged.asPlanned;
    const analysis::RunEnergy& energy = review.figures.energy;
    SeasonLine line;
    line.batch = review.batch().name;
    line.span = review.input.span;
    line.open = review.open();
    line.verdict = judging.verdict;
    line.mark = verdictMark(review.figures, review.open());
    line.headline = review.words.headline;
    line.insideShare = judging.totals.insideShare();
    line.coverage = judging.totals.coverage();
    line.excursions = judging.totals.excursions;
    line.worstPeak = judging.totals.worstPeak;
    line.energy = energy.whole;
    line.partlyMetered = energy.whole.any() && energy.partlyMetered();
    line.meanWatts = energy.meanWatts();
    line.cost = energy.cost;
    line.meanLift = energy.lift ? energy.lift->mean() : std::nullopt;
    line.kwhPerDegreeDay = energy.kwhPerDegreeDay;
    if (review.figures.crashHeat)
        line.crashPerformance = review.figures.crashHeat->effectivePerformance();
    return line;
}

void addUp(Season& season, const SeasonLine& line)
{
    if (line.energy.any()) {
        season.energy.append(line.energy);
        ++season.metered;
    }
    if (!line.cost)
        return;
    ++season.priced;
    analysis::Cost sum = season.cost.value_or(analysis::Cost{});
    sum.amount += line.cost->amount;
    sum.low += line.cost->low;
    sum.high += line.cost->high;
    season.cost = sum;
}

std::string counted(std::size_t number, const char* one, const char* more)
{
    return std::to_string(number) + " " + (number == 1 ? one : more);
}

/// "3 stayed in the band, 1 left it, 1 missed a target, 1 has not enough data"
std::string verdictCounts(const Season& season)
{
    struct Kind {
        analysis::Verdict verdict;
        const char* one;
        const char* more;
    };
    using analysis::Verdict;
    constexpr std::array kinds{
        Kind{Verdict::stayed, "stayed in the band", "stayed in the band"},
        Kind{Verdict::left, "left it", "left it"},
        Kind{Verdict::missed, "missed a target", "missed a target"},
        Kind{Verdict::notEnoughData, "has not enough data", "have not enough data"}};
    std::vector<std::string> parts;
    for (const Kind& kind : kinds) {
        const auto number = static_cast<std::size_t>(
            std::count_if(season.batches.begin(), season.batches.end(),
                          [&](const SeasonLine& line) { return line.verdict == kind.verdict; }));
        if (number > 0)
            parts.push_back(counted(number, kind.one, kind.more));
    }
    return joined(parts);
}

std::string boundsOf(const analysis::EnergyFigure& energy, char sign)
{
    if (!energy.lowKnown() || !energy.highKnown())
        return {};
    return " (" + fixedText(energy.low, 2, sign) + " – " + fixedText(energy.high, 2, sign) + ")";
}

std::string sentenceOf(const Season& season, char sign)
{
    if (season.batches.empty())
        return season.setup.name + " has no batch yet.";
    const std::size_t all = season.batches.size();
    std::string text = counted(all, "batch", "batches") + " of " + season.setup.name + ": " +
                       verdictCounts(season) + ".";
    if (season.metered == 0)
        return text + " None of them was metered.";
    text += season.metered == all && all > 1 ? " Together they used "
            : all == 1                       ? " It used "
                       : " The " + std::to_string(season.metered) + " that were metered used ";
    text += energyText(Energy::kilowattHours(season.energy.kwh), 2, sign) +
            boundsOf(season.energy, sign);
    if (season.cost && season.priced == season.metered)
        text += " for " + moneyText(season.cost->amount, season.settings.currency, sign);
    return text + ".";
}

Result<Setup> setupNamed(const store::LogbookFile& logbook, const std::string& name)
{
    auto setups = store::readSetups(logbook);
    HOLDBAND_TRY(setups);
    std::vector<std::string> names;
    for (Setup& setup : *setups) {
        if (setup.name == name)
            return std::move(setup);
        names.push_back(setup.name);
    }
    return dataProblem("there is no setup \"" + name + "\"", {}, suggestion(name, names));
}

} // namespace

Result<Season> reviewSeason(const store::LogbookFile& logbook, const std::string& name,
                            char decimalSign)
{
    Season season;
    auto setup = setupNamed(logbook, name);
    HOLDBAND_TRY(setup);
    season.setup = std::move(*setup);
    auto settings = store::readSettings(logbook);
    HOLDBAND_TRY(settings);
    season.settings = std::move(*settings);
    auto zone = Zone::named(season.settings.zone);
    HOLDBAND_TRY(zone);
    season.zone = *zone;
    auto batches = store::readBatches(logbook);
    HOLDBAND_TRY(batches);
    std::stable_sort(batches->begin(), batches->end(),
                     [](const Batch& a, const Batch& b) { return a.pitched < b.pitched; });
    for (const Batch& batch : *batches) {
        if (batch.setup != name)
            continue;
        auto review =
            reviewRun(logbook, batch.name, decimalSign); // its readings are let go of again
        HOLDBAND_TRY(review);
        season.batches.push_back(lineOf(*review));
        addUp(season, season.batches.back());
        for (const std::string& finding : review->findings)
            season.findings.push_back(batch.name + ": " + finding);
    }
    season.parts = partsTotal(season.setup);
    season.cautions = cautionsFor(season.setup);
    season.sentence = sentenceOf(season, decimalSign);
    return season;
}

} // namespace holdband::review
