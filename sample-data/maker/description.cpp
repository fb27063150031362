#include "sample-data/maker/description.h"

#include "sample-data/maker/equipment.h"
#include "sample-data/maker/plans.h"
#include "sample-data/maker/text.h"

namespace holdband::sample {

namespace {

std::string number(double value)
{
    return format("%g", value);
}

/// The scenario's texts contain no character that JSON would have to escape.
std::string quoted(const std::string& text)
{
    return "\"" + text + "\"";
}

/// Lines joined by commas, each indented.
std::string list(const std::vector<std::string>& lines, const char* indent)
{
    std::string text;
    for (std::size_t i = 0; i < lines.size(); ++i)
        text += (i == 0 ? "\n" : ",\n") + std::string(indent) + lines[i];
    return "[" + text + "\n" + std::string(indent).substr(2) + "]";
}

std::string stageText(const Stage& stage)
{
    std::string text = "{ \"stage\": " + quoted(stage.label);
    if (stage.ramp)
        text += ", \"kind\": \"ramp\"";
    text += ", \"target_f\": " + number(stage.targetF);
    if (stage.hours > 0.0)
        text += ", \"hours\": " + number(stage.hours);
    if (stage.settleHours > 0.0)
        text += ", \"settle_hours\": " + number(stage.settleHours);
    return text + " }";
}

std::string batchText(const Batch& batch)
{
    const bool cabinet = batch.vessel == Vessel::cabinet;
    const char* sensor = cabinet                         ? "Cabinet beer"
                         : batch.vessel == Vessel::loop1 ? "Loop beer 1"
                                                         : "Loop beer 2";
    std::vector<std::string> stages;
    for (const Stage& stage : batch.schedule)
        stages.push_back(stageText(stage));
    std::string text = "{ \"name\": " + quoted(batch.name);
    text += format(", \"setup\": \"%s\", \"volume_gal\": 5,\n", cabinet ? "Cabinet" : "Loop");
    text += format("      \"pitched\": \"%s\", \"ended\": \"%s\",\n",
                   denverText(batch.pitched).c_str(), denverText(batch.ended).c_str());
    text += format("      \"beer_sensor\": \"%s\", \"ambient_sensor\": \"Room\", "
                   "\"tolerance_f\": 3,\n",
                   sensor);
    text += format("      \"original_gravity\": %.3f, \"final_gravity\": %.3f,\n",
                   batch.originalGravity, batch.finalGravity);
    return text + "      \"schedule\": " + list(stages, "        ") + " }";
}

std::string readingText(const MeterReading& reading)
{
    std::string text =
        format("{ \"meter\": \"%s\", \"at\": \"%s\", \"kwh\": %s", reading.meter.c_str(),
               denverText(reading.at).c_str(), reading.kwh.c_str());
    if (reading.reset)
        text += ", \"event\": \"reset\"";
    if (!reading.note.empty())
        text += ", \"note\": " + quoted(reading.note);
    if (reading.was)
        text += format(",\n      \"was\": [ { \"kwh\": %s, \"until\": \"%s\", \"why\": \"%s\" } ]",
                       reading.was->kwhBefore.c_str(), denverText(reading.was->until).c_str(),
                       reading.was->why.c_str());
    return text + " }";
}

} // namespace

std::string description(const Scenario& scenario, const std::vector<MeterReading>& readings)
{
    std::vector<std::string> batches;
    for (const Batch& batch : scenario.batches)
        batches.push_back(batchText(batch));
    std::vector<std::string> rounds;
    for (const MeterReading& reading : readings)
        rounds.push_back(readingText(reading));
    return std::string("{\n") + equipmentText() + ",\n  \"batches\": " + list(batches, "    ") +
           ",\n" + plansText() + ",\n" + filesText() + ",\n" + exclusionsText() + ",\n" +
           journalText() + ",\n  \"meter_readings\": " + list(rounds, "    ") + "\n}\n";
}

} // namespace holdband::sample
