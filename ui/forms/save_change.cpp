#include "ui/forms/save_change.h"

#include "core/text/phrase.h"
#include "ui/session/session.h"

namespace holdband::ui {

namespace {

Done doChange(const store::LogbookFile& file, const store::HistoryEntry& entry,
              const std::function<Done(const store::Change&)>& work)
{
    auto change = store::Change::begin(file, entry);
    HOLDBAND_TRY(change);
    HOLDBAND_TRY(work(*change));
    return change->commit();
}

} // namespace

void saveChange(Session& session, QObject* context, store::HistoryEntry entry,
                std::function<Done(const store::Change&)> work, std::function<void(Done)> deliver)
{
    if (!session.isOpen() || session.readOnly()) {
        deliver(dataProblem(Phrase::tr("the logbook is open for reading only"), {},
                            Phrase::tr("close it in the other window first")));
        return;
    }
    session.change<void>(
        context,
        [entry = std::move(entry), work = std::move(work)](const store::LogbookFile& file) {
            return doChange(file, entry, work);
        },
        [&session, deliver = std::move(deliver)](Done done) {
            if (done)
                session.announceChange();
            deliver(std::move(done));
        });
}

} // namespace holdband::ui
