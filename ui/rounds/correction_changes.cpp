#include "ui/rounds/correction_changes.h"

#include "core/editing/meter_swap.h"
#include "core/editing/rounds.h"
#include "ui/rounds/round_entry.h"
#include "ui/words/words.h"

namespace holdband::ui {

namespace {

ReadingChange done(std::function<Done(const store::LogbookFile&)> work)
{
    return [work = std::move(work)](const store::LogbookFile& file) -> Result<bool> {
        HOLDBAND_TRY(work(file));
        return true;
    };
}

ReadingChange saving(const intake::TypedRound& round)
{
    return done([round](const store::LogbookFile& file) -> Done {
        HOLDBAND_TRY(intake::saveRound(file, round, decimalSign()));
        return {};
    });
}

Done setNote(const store::LogbookFile& file, const RowReading& stored, const std::string& note)
{
    if (stored.row.kind == results::RoundKind::meter)
        return intake::setRegisterNote(file, stored.row.name, {stored.id}, note);
    return intake::setHandNote(file, ownerOf(stored.row), {stored.id}, note);
}

} // namespace

ReadingChange addingRegister(const results::RoundRow& row, const MeterReading& reading)
{
    intake::TypedRound round;
    round.meters.push_back({row.name, reading});
    return saving(round);
}

ReadingChange addingHand(const results::RoundRow& row, const HandReading& reading)
{
    intake::TypedRound round;
    round.hand.push_back({ownerOf(row), reading});
    return saving(round);
}

ReadingChange replacingMeter(const results::RoundRow& row, const MeterReading& reading)
{
    return done([name = row.name, reading](const store::LogbookFile& file) -> Done {
        HOLDBAND_TRY(intake::replaceMeter(file, name, reading));
        return {};
    });
}

ReadingChange correctingRegister(const RowReading& stored, const MeterReading& reading,
                                 const CorrectionNote& note)
{
    return done([stored, reading, note](const store::LogbookFile& file) -> Done {
        if (note.note)
            HOLDBAND_TRY(setNote(file, stored, *note.note));
        return intake::correctRegister(file, stored.row.name, {stored.id},
                                       reading.registerReading.kilowattHours(), reading.decimals,
                                       note.why, decimalSign());
    });
}

ReadingChange correctingHand(const RowReading& stored, const HandReading& reading,
                             const CorrectionNote& note)
{
    return done([stored, reading, note](const store::LogbookFile& file) -> Done {
        if (note.note)
            HOLDBAND_TRY(setNote(file, stored, *note.note));
        return intake::correctHand(file, ownerOf(stored.row), {stored.id}, reading.value,
                                   reading.decimals, reading.unit, note.why);
    });
}

ReadingChange settingNote(const RowReading& stored, const std::string& note)
{
    return done(
        [stored, note](const store::LogbookFile& file) { return setNote(file, stored, note); });
}

ReadingChange deletingReading(const RowReading& stored, const std::string& why)
{
    return done([stored, why](const store::LogbookFile& file) {
        if (stored.row.kind == results::RoundKind::meter)
            return intake::deleteRegister(file, stored.row.name, {stored.id}, why);
        return intake::deleteHand(file, ownerOf(stored.row), {stored.id}, why);
    });
}

} // namespace holdband::ui
