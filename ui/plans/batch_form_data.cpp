#include "ui/plans/batch_form_data.h"

#include "core/assign_result.h"
#include "core/model/plan_in_force.h"
#include "core/store/records/batches.h"
#include "core/store/records/equipment.h"
#include "core/text/name_suggestions.h"
#include "core/text/phrase.h"
#include "core/text/times.h"
#include "ui/plans/plan_rows.h"
#include "ui/words/choice_text.h"
#include "ui/words/words.h"

#include <algorithm>

namespace holdband::ui {

namespace {

constexpr Instant never{Milliseconds::max()};

bool isTaken(const BatchFormData& formData, const std::string& name)
{
    return std::any_of(formData.batches.begin(), formData.batches.end(),
                       [&](const Batch& batch) { return folded(batch.name) == folded(name); });
}

/// Moves `first` to the front if it is among the names.
void putFirst(std::vector<std::string>& names, const std::string& first)
{
    const auto at = std::find(names.begin(), names.end(), first);
    if (at != names.end())
        std::rotate(names.begin(), at, at + 1);
}

/// The sensor and the vessel of the beer during a span.
struct Use {
    Span span;
    std::string sensor;
    std::string vessel;
};

std::vector<Use> usesOf(const Batch& batch)
{
    std::vector<Use> uses{
        {{batch.pitched, batch.ended.value_or(never)}, batch.beerSensor, batch.vessel}};
    for (const BeerUse& use : batch.beerUses) {
        const Instant end = uses.back().span.end;
        uses.back().span.end = std::min(end, use.from);
        uses.push_back({{use.from, end}, use.sensor, use.vessel});
    }
    return uses;
}

bool overlap(const Batch& a, const Batch& b)
{
    const Span common =
        intersection({a.pitched, a.ended.value_or(never)}, {b.pitched, b.ended.value_or(never)});
    return !common.empty();
}

QString shareWords(const Batch& batch, const Batch& other)
{
    for (const Use& mine : usesOf(batch)) {
        for (const Use& theirs : usesOf(other)) {
            if (intersection(mine.span, theirs.span).empty())
                continue;
            const bool vessel = batch.setup == other.setup && !mine.vessel.empty() &&
                                folded(mine.vessel) == folded(theirs.vessel);
            if (vessel)
                return Words::tr("%1 is in vessel %2 at that time. Are both in it?")
                    .arg(shown(other.name), shown(mine.vessel));
            if (!mine.sensor.empty() && mine.sensor == theirs.sensor)
                return Words::tr("%1 reads %2 at that time. Does it read both?")
                    .arg(shown(mine.sensor), shown(other.name));
        }
    }
    return {};
}

QString crowdText(const Batch& batch, const std::vector<const Batch*>& others,
                  const BatchFormData& formData)
{
    const auto setup = std::find_if(formData.setups.begin(), formData.setups.end(),
                                    [&](const Setup& one) { return one.name == batch.setup; });
    if (setup == formData.setups.end() || others.empty())
        return {};
    if (static_cast<int>(others.size()) < setup->vessels)
        return {};
    QStringList names;
    for (const Batch* other : others)
        names << shown(other->name);
    return Words::tr("%1 has %2, and %3 runs in it at that time. Are both in it?")
        .arg(shown(setup->name), vesselsText(setup->vessels), names.join(QStringLiteral(", ")));
}

} // namespace

const Batch* BatchFormData::batch(const std::string& name) const
{
    const auto at = std::find_if(batches.begin(), batches.end(),
                                 [&](const Batch& one) { return one.name == name; });
    return at == batches.end() ? nullptr : &*at;
}

Result<BatchFormData> readFormData(const store::LogbookFile& file)
{
    BatchFormData formData;
    HOLDBAND_TRY(assignResult(store::readSettings(file), formData.settings));
    Zone zone;
    HOLDBAND_TRY(assignResult(Zone::named(formData.settings.zone), zone));
    HOLDBAND_TRY(assignResult(store::readSetups(file), formData.setups));
    HOLDBAND_TRY(assignResult(store::readSensors(file), formData.sensors));
    HOLDBAND_TRY(assignResult(store::readBatches(file), formData.batches));
    HOLDBAND_TRY(assignResult(store::readPlans(file), formData.plans));
    formData.format = unitFormatOf(formData.settings, zone);
    return formData;
}

std::string suggestedName(const BatchFormData& formData)
{
    std::string stem = Phrase::tr("Batch ", "before its number");
    unsigned long number = 0;
    if (const Batch* last = formData.lastBatch()) {
        const std::size_t digits = last->name.find_last_not_of("0123456789") + 1;
        const bool numbered = digits < last->name.size() && last->name.size() - digits <= 6;
        stem = numbered ? last->name.substr(0, digits) : last->name + " ";
        number = numbered ? std::stoul(last->name.substr(digits)) : 1;
    }
    do
        ++number;
    while (isTaken(formData, stem + std::to_string(number)));
    return stem + std::to_string(number);
}

std::vector<std::string> offeredSetups(const BatchFormData& formData, const std::string& current)
{
    std::vector<std::string> names;
    for (const Setup& setup : formData.setups) {
        if (!setup.retired || setup.name == current)
            names.push_back(setup.name);
    }
    if (const Batch* last = formData.lastBatch())
        putFirst(names, last->setup);
    return names;
}

std::vector<std::string> offeredSensors(const BatchFormData& formData, SensorKind reads,
                                        const std::string& setup, const std::string& current)
{
    std::vector<std::string> names;
    for (const bool own : {true, false}) {
        for (const Sensor& sensor : formData.sensors) {
            const bool offered =
                sensor.reads == reads && (!sensor.retired || sensor.name == current);
            if (offered && (sensor.setup == setup) == own)
                names.push_back(sensor.name);
        }
    }
    for (auto batch = formData.batches.rbegin(); batch != formData.batches.rend(); ++batch) {
        if (batch->setup != setup)
            continue;
        const std::string ambient = batch->ambientSensor.value_or(std::string());
        const std::string beer =
            batch->beerUses.empty() ? batch->beerSensor : batch->beerUses.back().sensor;
        putFirst(names, reads == SensorKind::ambient ? ambient : beer);
        break;
    }
    return names;
}

QStringList batchQuestions(const Batch& batch, const std::string& oldName,
                           const BatchFormData& formData, Instant now)
{
    QStringList questions;
    if (batch.pitched > now)
        questions << Words::tr("Pitching is in the future, at %1. Is that intended?")
                         .arg(shown(localText(batch.pitched, formData.format.zone)));
    std::vector<const Batch*> beside;
    for (const Batch& other : formData.batches) {
        if ((!oldName.empty() && other.name == oldName) || !overlap(batch, other))
            continue;
        const QString shared = shareWords(batch, other);
        if (!shared.isEmpty())
            questions << shared;
        else if (other.setup == batch.setup)
            beside.push_back(&other);
    }
    const QString crowd = crowdText(batch, beside, formData);
    if (!crowd.isEmpty())
        questions << crowd;
    const Schedule& plan =
        batch.planChanges.empty() ? batch.schedule : batch.planChanges.back().schedule;
    return questions + planQuestions(plan, formData.format);
}

} // namespace holdband::ui
