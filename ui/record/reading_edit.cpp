#include "ui/record/reading_edit.h"

#include "core/editing/rounds.h"
#include "core/store/readings/value_corrections.h"
#include "core/text/phrase.h"
#include "ui/words/words.h"

namespace holdband::ui {

namespace {

/// Wraps `work` in one change.
ReadingEdit changing(store::HistoryEntry entry, std::function<Done(const store::Change&)> work)
{
    return
        [entry = std::move(entry), work = std::move(work)](const store::LogbookFile& file) -> Done {
            auto change = store::Change::begin(file, entry);
            HOLDBAND_TRY(change);
            HOLDBAND_TRY(work(*change));
            return change->commit();
        };
}

Span spanOf(const ReadingsView& view, const std::vector<std::size_t>& rows)
{
    return {view.at(rows.front()), view.at(rows.back())};
}

ReadingEdit correctSensor(const ReadingsView& view, std::size_t row, const Decimal& value,
                          const std::string& why)
{
    const store::ListedReading reading = view.readings[row];
    return changing({store::HistoryVerb::readingCorrected, {view.subject.name}, why},
                    [reading, value, why, sensor = view.subject.name](const store::Change& change) {
                        if (reading.hand)
                            return store::correctHandReading(change, *reading.hand, value.value,
                                                             value.decimals, change.at(), why);
                        return store::addValueCorrection(change, {sensor, reading.at, value.value,
                                                                  reading.unit, change.at(), why});
                    });
}

} // namespace

Result<ReadingEdit> leaveOut(const ReadingsView& view, const std::vector<std::size_t>& rows,
                             const std::string& why, bool all)
{
    if (rows.empty())
        return dataProblem(Phrase::tr("no reading is chosen"), {},
                           Phrase::tr("choose the readings to leave out in the table first"));
    if (why.empty())
        return dataProblem(Phrase::tr("say why they are left out: the reason is stored with them"));
    if (!view.subject.meter) {
        const Span chosen = spanOf(view, rows);
        const Span span{chosen.start, all && view.more ? view.span.end : chosen.end};
        const store::Exclusion exclusion{view.subject.name, span, why, {}};
        return changing(
            {store::HistoryVerb::stretchLeftOut, {view.subject.name}, why},
            [exclusion](const store::Change& change) { return addExclusion(change, exclusion); });
    }
    std::vector<store::MeterReadingId> ids;
    for (const std::size_t row : rows) {
        if (!view.registers[row].reading.leftOut)
            ids.push_back(view.registers[row].reading.id);
    }
    if (ids.empty())
        return dataProblem(Phrase::tr("they are left out already"));
    return [ids, why, meter = view.subject.name](const store::LogbookFile& file) {
        return intake::deleteRegisters(file, meter, ids, why);
    };
}

Result<ReadingEdit> restore(const ReadingsView& view, const std::vector<std::size_t>& rows)
{
    std::vector<store::ListedRegister> registers;
    std::vector<store::ExclusionId> exclusions;
    for (const std::size_t row : rows) {
        if (view.subject.meter && view.registers[row].reading.leftOut)
            registers.push_back(view.registers[row].reading);
    }
    for (const store::Exclusion& exclusion : view.exclusions) {
        if (!rows.empty() && exclusion.span.start <= spanOf(view, rows).end &&
            spanOf(view, rows).start <= exclusion.span.end)
            exclusions.push_back(exclusion.id);
    }
    if (registers.empty() && exclusions.empty())
        return dataProblem(Phrase::tr("no reading that was left out is chosen"), {},
                           Phrase::tr("choose one in the table first"));
    if (view.subject.meter)
        return [registers, meter = view.subject.name](const store::LogbookFile& file) {
            return intake::restoreRegisters(file, meter, registers, decimalSign());
        };
    return changing({store::HistoryVerb::stretchRestored, {view.subject.name}},
                    [exclusions](const store::Change& change) -> Done {
                        for (const store::ExclusionId id : exclusions)
                            HOLDBAND_TRY(store::removeExclusion(change, id));
                        return {};
                    });
}

Result<ReadingEdit> correct(const ReadingsView& view, const std::vector<std::size_t>& rows,
                            const Decimal& value, const std::string& why)
{
    if (rows.size() != 1)
        return dataProblem(Phrase::tr("a correction is of one reading"), {},
                           Phrase::tr("choose the one to correct in the table first"));
    if (!view.subject.meter)
        return correctSensor(view, rows.front(), value, why);
    const store::ListedRegister& reading = view.registers[rows.front()].reading;
    if (reading.leftOut)
        return dataProblem(Phrase::tr("the reading is left out"), {},
                           Phrase::tr("restore it first"));
    return
        [id = reading.id, value, why, meter = view.subject.name](const store::LogbookFile& file) {
            return intake::correctRegister(file, meter, id, value.value, value.decimals, why,
                                           decimalSign());
        };
}

} // namespace holdband::ui
