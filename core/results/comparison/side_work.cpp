// The work that a batch took, as far as the record knows it: the rounds in which somebody read a
// register of its setup.
#include "core/analysis/bounded.h"
#include "core/assign_result.h"
#include "core/results/comparison/side_reader.h"
#include "core/results/rounds/round_calendar.h"

#include <algorithm>
#include <set>

namespace holdband::results {

namespace {

/// When a register was read by hand, by meter.
using TypedReadings = std::map<std::string, std::set<Instant>>;

bool isMeter(const Snapshot& snapshot, const std::string& name)
{
    return std::any_of(snapshot.meters.begin(), snapshot.meters.end(),
                       [&](const Meter& meter) { return meter.name == name; });
}

Result<TypedReadings> typedReadings(const SideReader& reader, const analysis::SetupEnergy& setup)
{
    TypedReadings typed;
    for (const analysis::EnergySource& source : setup.sources()) {
        if (!isMeter(reader.snapshot, source.name) || typed.contains(source.name))
            continue;
        auto record = store::readRegisterRecord(reader.logbook, source.name);
        HOLDBAND_TRY(record);
        std::set<Instant>& instants = typed[source.name];
        for (const store::RecordedRegister& reading : *record) {
            if (!reading.source && !reading.withdrawn && !reading.leftOutBy)
                instants.insert(reading.inForce.at);
        }
    }
    return typed;
}

bool serves(const analysis::EnergySource& source, Instant at)
{
    return (!source.from || at >= *source.from) && (!source.to || at <= *source.to);
}

/// Two meters read in the same round are one visit.
double roundsOf(const Snapshot& snapshot, const analysis::SetupEnergy& setup,
                const TypedReadings& typed, Span span)
{
    std::vector<RoundColumn> rounds;
    for (const analysis::EnergySource& source : setup.sources()) {
        const auto readings = typed.find(source.name);
        if (readings == typed.end())
            continue;
        for (const Instant at : readings->second) {
            if (at >= span.start && at <= span.end && serves(source, at))
                rounds.push_back(roundOf(at, snapshot.zone, snapshot.settings.rounds));
        }
    }
    std::sort(rounds.begin(), rounds.end(), earlier);
    const auto end = std::unique(rounds.begin(), rounds.end());
    return static_cast<double>(end - rounds.begin());
}

/// Absent figures where the setup has no meter that somebody could read.
Result<WorkSide> workOf(const SideReader& reader, const analysis::SetupEnergy& setup,
                        const std::vector<std::string>& batches, bool ofSetups)
{
    WorkSide side;
    auto typed = typedReadings(reader, setup);
    HOLDBAND_TRY(typed);
    if (typed->empty())
        return side;
    std::vector<double> rounds;
    for (const std::string& batch : batches) {
        rounds.push_back(
            roundsOf(reader.snapshot, setup, *typed, reader.snapshot.batchSpans.at(batch)));
        if (ofSetups)
            side.batches.push_back({batch, rounds.back()});
    }
    side.rounds = ofSetups ? analysis::meanOf(rounds) : analysis::exactly(rounds.front());
    if (side.rounds && side.rounds->low)
        side.rounds->low = std::max(0.0, *side.rounds->low);
    return side;
}

} // namespace

Done addWork(SideBySide& review, const SideReader& reader, const analysis::SetupEnergy& a,
             const analysis::SetupEnergy& b)
{
    HOLDBAND_TRY(assignResult(workOf(reader, a, review.batchesA, review.ofSetups), review.work.a));
    HOLDBAND_TRY(assignResult(workOf(reader, b, review.batchesB, review.ofSetups), review.work.b));
    review.work.ahead =
        analysis::whoIsAhead(review.work.a.rounds, review.work.b.rounds, analysis::Better::less);
    return {};
}

} // namespace holdband::results
