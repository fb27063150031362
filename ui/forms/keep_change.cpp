#include "ui/forms/keep_change.h"

#include "core/text/phrase.h"
#include "ui/session/session.h"

namespace holdband::ui {

namespace {

Done doChange(const store::LogbookFile& file, const std::string& what,
              const std::function<Done(const store::Change&)>& work)
{
    auto change = store::Change::begin(file, what);
    HOLDBAND_TRY(change);
    HOLDBAND_TRY(work(*change));
    return change->commit();
}

} // namespace

void keepChange(Session& session, QObject* context, std::string what,
                std::function<Done(const store::Change&)> work, std::function<void(Done)> deliver)
{
    if (!session.isOpen() || session.readOnly()) {
        deliver(dataProblem(Phrase::tr("the logbook is open for reading only"), {},
                            Phrase::tr("close it in the other window first")));
        return;
    }
    session.change<void>(
        context,
        [what = std::move(what), work = std::move(work)](const store::LogbookFile& file) {
            return doChange(file, what, work);
        },
        [&session, deliver = std::move(deliver)](Done done) {
            if (done)
                session.announceChange();
            deliver(std::move(done));
        });
}

} // namespace holdband::ui
