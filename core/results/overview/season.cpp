#include "core/results/overview/season.h"

#include "core/results/run/cautions.h"
#include "core/store/records/batches.h"
#include "core/store/records/equipment.h"
#include "core/text/name_suggestions.h"
#include "core/text/numbers.h"
#include "core/text/phrase.h"
#include "core/text/quantities.h"

#include <algorithm>

namespace holdband::results {

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
    line.worstPeak = judging.totals.worstPeak();
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

std::string countText(analysis::Verdict verdict, std::size_t count)
{
    switch (verdict) {
    case analysis::Verdict::stayed:
        return Phrase::counted("%n stayed in the band", "%n stayed in the band", count);
    case analysis::Verdict::left:
        return Phrase::counted("%n left it", "%n left it", count);
    case analysis::Verdict::missed:
        return Phrase::counted("%n missed a target", "%n missed a target", count);
    case analysis::Verdict::notEnoughData:
        break;
    }
    return Phrase::counted("%n have not enough data", "%n has not enough data", count);
}

/// "3 stayed in the band, 1 left it, 1 missed a target, 1 has not enough data"
std::string verdictCounts(const Season& season)
{
    using analysis::Verdict;
    std::vector<std::string> parts;
    for (const Verdict verdict :
         {Verdict::stayed, Verdict::left, Verdict::missed, Verdict::notEnoughData}) {
        const auto number = static_cast<std::size_t>(
            std::count_if(season.batches.begin(), season.batches.end(),
                          [&](const SeasonLine& line) { return line.verdict == verdict; }));
        if (number > 0)
            parts.push_back(countText(verdict, number));
    }
    return joined(parts);
}

std::string boundsOf(const analysis::EnergyFigure& energy, char sign)
{
    if (!energy.lowKnown() || !energy.highKnown())
        return {};
    return " (" + fixedText(energy.low, 2, sign) + " – " + fixedText(energy.high, 2, sign) + ")";
}

/// %1: the energy with its bounds; %2: its cost.
Phrase usedPhrase(std::size_t metered, std::size_t all, bool priced)
{
    if (all == 1)
        return priced ? Phrase::tr("It used %1 for %2.") : Phrase::tr("It used %1.");
    if (metered == all)
        return priced ? Phrase::tr("Together they used %1 for %2.")
                      : Phrase::tr("Together they used %1.");
    return priced ? Phrase::counted("The %n that were metered used %1 for %2.",
                                    "The %n that were metered used %1 for %2.", metered)
                  : Phrase::counted("The %n that were metered used %1.",
                                    "The %n that were metered used %1.", metered);
}

std::string sentenceOf(const Season& season, char sign)
{
    if (season.batches.empty())
        return Phrase::tr("%1 has no batch yet.").with(season.setup.name);
    const std::size_t all = season.batches.size();
    const std::string text = Phrase::counted("%n batches of %1: %2.", "%n batch of %1: %2.", all)
                                 .with(season.setup.name, verdictCounts(season)) +
                             " ";
    if (season.metered == 0)
        return text + Phrase::tr("None of them was metered.").text();
    const bool priced = season.cost && season.priced == season.metered;
    const std::string cost =
        priced ? moneyText(season.cost->amount, season.settings.currency, sign) : std::string();
    return text + usedPhrase(season.metered, all, priced)
                      .with(energyText(Energy::kilowattHours(season.energy.kwh), 2, sign) +
                                boundsOf(season.energy, sign),
                            cost);
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
    return dataProblem(Phrase::tr("there is no setup \"%1\"").with(name), {},
                       suggestion(name, names));
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
        // Frees the readings of one batch before the next one is read.
        auto review = reviewRun(logbook, batch.name, decimalSign, SideCurves::leave);
        HOLDBAND_TRY(review);
        auto provenance = provenanceOf(logbook, *review);
        HOLDBAND_TRY(provenance);
        season.setupIndex = review->setupIndex;
        season.provenances.push_back(std::move(*provenance));
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

} // namespace holdband::results
