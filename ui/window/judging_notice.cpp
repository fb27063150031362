#include "ui/window/judging_notice.h"

#include "core/results/overview/judging_change.h"
#include "core/store/records/judging_notice.h"
#include "ui/session/session.h"
#include "ui/window/notice_bar.h"
#include "ui/words/words.h"

namespace holdband::ui {

namespace {

using Changes = std::optional<std::vector<results::ChangedVerdict>>;

void noteTold(Session& session, NoticeBar& bar)
{
    if (session.readOnly())
        return;
    session.change<bool>(
        &bar,
        [](const store::LogbookFile& logbook) -> Result<bool> {
            HOLDBAND_TRY(store::noteJudgingTold(logbook));
            return true;
        },
        [&bar](const Result<bool>& noted) {
            if (!noted)
                bar.say(sentence(noted.error()));
        });
}

} // namespace

void tellChangedVerdicts(Session& session, NoticeBar& bar)
{
    session.ask<Changes>(&bar, results::changedVerdicts,
                         [&session, &bar](const Result<Changes>& changes) {
                             // A logbook that can't be read is reported by what needs its data.
                             if (!changes || !*changes)
                                 return;
                             if (!(*changes)->empty())
                                 bar.sayWithHelp(shown(results::changedVerdictsText(**changes)),
                                                 QStringLiteral("figures.md"));
                             noteTold(session, bar);
                         });
}

} // namespace holdband::ui
