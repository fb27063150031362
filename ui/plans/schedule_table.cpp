#include "ui/plans/schedule_table.h"

#include "core/text/quantities.h"
#include "core/text/times.h"
#include "ui/words/words.h"

namespace holdband::ui {

namespace {

QString endText(const ScheduledStage& scheduled, const Batch& batch, const UnitFormat& format)
{
    if (batch.ended && (!scheduled.end || *scheduled.end > *batch.ended))
        return Words::tr("%1 (end)").arg(shown(localShortText(*batch.ended, format.zone)));
    if (scheduled.end)
        return shown(localShortText(*scheduled.end, format.zone));
    if (scheduled.stage.until == StageUntil::gravity && scheduled.stage.untilGravity)
        return Words::tr("until %1")
            .arg(shown(gravityText(*scheduled.stage.untilGravity, format.sign)));
    return scheduled.stage.until == StageUntil::turnedDown ? Words::tr("until turned down")
                                                           : Words::tr("to the end");
}

} // namespace

TableText scheduleTable(const std::vector<ScheduledStage>& scheduled, const Batch& batch,
                        const UnitFormat& format)
{
    TableText table;
    table.header = {Words::tr("Stage"), Words::tr("target"), Words::tr("from"), Words::tr("to")};
    table.numeric = {false, true, false, false};
    for (const ScheduledStage& stage : scheduled) {
        if (batch.ended && stage.start >= *batch.ended)
            break;
        const QString target =
            shown(temperatureText(stage.stage.target, format.temperature(), 1, format.sign));
        const bool ramp = stage.stage.kind == StageKind::ramp;
        table.rows.push_back({{shown(stage.stage.label), {}, true},
                              {ramp ? QStringLiteral("→ ") + target : target, {}, false},
                              {shown(localShortText(stage.start, format.zone)), {}, false},
                              {endText(stage, batch, format), {}, false}});
    }
    return table;
}

std::vector<ScheduledStage> firstPlanned(const Batch& batch)
{
    std::vector<ScheduledStage> scheduled;
    std::vector<Instant> waiting; // ends that the brewer gave to stages without hours
    for (const Instant end : batch.stageEnds) {
        scheduled = layOut(batch.schedule, batch.pitched, waiting);
        if (!scheduled.empty() && !scheduled.back().end && scheduled.back().start < end)
            waiting.push_back(end);
    }
    return layOut(batch.schedule, batch.pitched, waiting);
}

QStringList planHistory(const Batch& batch, const UnitFormat& format)
{
    QStringList lines;
    for (const PlanChange& change : batch.planChanges)
        lines << Words::tr("The plan changed at %1%2.")
                     .arg(shown(localShortText(change.from, format.zone)),
                          change.why.empty() ? QString()
                                             : QStringLiteral(": ") + shown(change.why));
    const auto scheduled = stagesInForce(batch);
    for (const Instant end : batch.stageEnds) {
        for (const ScheduledStage& stage : scheduled) {
            if (stage.end == end)
                lines << Words::tr("%1 was ended by hand at %2.")
                             .arg(shown(stage.stage.label),
                                  shown(localShortText(end, format.zone)));
        }
    }
    return lines;
}

} // namespace holdband::ui
