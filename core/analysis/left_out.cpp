#include "core/analysis/left_out.h"

#include "core/analysis/energy_figure.h"

#include <algorithm>

namespace holdband::analysis {

namespace {

/// From the first stage's start to the last one's end.
Span judgedTime(const std::vector<PlacedStage>& stages)
{
    return stages.empty() ? Span{} : Span{stages.front().span.start, stages.back().span.end};
}

std::size_t readingsIn(const std::vector<Span>& spans, const Series& series)
{
    return static_cast<std::size_t>(
        std::count_if(series.at.begin(), series.at.end(), [&](Instant at) {
            return std::any_of(spans.begin(), spans.end(), [&](const Span& span) {
                return at >= span.start && at <= span.end;
            });
        }));
}

Verdict verdictWithThem(const JudgedBatch& judged, const JudgingInput& input,
                        const JudgingRules& rules, const JudgingSettings& settings)
{
    JudgingInput whole;
    static_cast<JudgingRules&>(whole) = rules;
    whole.beer = input.withLeftOut;
    whole.accuracy.reset(); // one judging, without the accuracy, is enough
    if (rules.gapLimit == input.gapLimit)
        whole.gapLimit = input.gapLimitWithLeftOut;
    return judgeBatch(judged.stages, whole, settings, Detail::withoutQuantiles).asPlanned.verdict;
}

} // namespace

std::optional<LeftOutFigures> leftOutFigures(const JudgedBatch& judged, const JudgingInput& input,
                                             const JudgingRules& rules,
                                             const JudgingSettings& settings)
{
    LeftOutFigures figures;
    std::vector<Span> spans;
    for (const LeftOut& each : input.leftOut) {
        const Span inside = intersection(each.span, judgedTime(judged.stages));
        if (inside.end < inside.start) // a single reading is a stretch of length 0
            continue;
        figures.stretches.push_back({inside, each.why});
        spans.push_back(inside);
    }
    if (spans.empty())
        return std::nullopt;
    std::sort(figures.stretches.begin(), figures.stretches.end(),
              [](const LeftOut& a, const LeftOut& b) { return a.span.start < b.span.start; });
    figures.readings = readingsIn(spans, input.withLeftOut);
    for (const Span& span : unite(std::move(spans)))
        figures.ms += static_cast<double>((span.end - span.start).count());
    figures.verdictWithThem = verdictWithThem(judged, input, rules, settings);
    figures.changesVerdict = figures.verdictWithThem != judged.asPlanned.verdict;
    return figures;
}

} // namespace holdband::analysis
