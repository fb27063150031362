#include "ui/charts/chart_tables.h"

#include "core/analysis/statistics.h"
#include "core/text/quantities.h"
#include "core/text/times.h"
#include "ui/words/words.h"

#include <array>

namespace holdband::ui {

namespace {

using std::chrono::minutes;

Milliseconds stepFor(Span shown)
{
    constexpr std::array steps{minutes{10},  minutes{30},  minutes{60},   minutes{180},
                               minutes{360}, minutes{720}, minutes{1440}, minutes{10080}};
    for (const minutes step : steps) {
        if (shown.hours() * 60.0 / static_cast<double>(step.count()) <= mostRows)
            return step;
    }
    return std::chrono::duration_cast<Milliseconds>((shown.end - shown.start) / mostRows);
}

struct Summary {
    std::optional<double> least, mean, most;
};

/// Summarises the covered part of the track between the two times.
Summary summaryOf(const analysis::Track& track, double fromMs, double toMs)
{
    const analysis::Track part = analysis::clip(track, fromMs, toMs);
    if (part.empty())
        return {};
    const auto [least, most] = std::minmax_element(part.value.begin(), part.value.end());
    return {*least, analysis::momentsOf(part, fromMs).mean(), *most};
}

Summary summaryOf(const ChartLine* line, double fromMs, double toMs)
{
    return line ? summaryOf(line->track, fromMs, toMs) : Summary{};
}

QString deviationText(const RunChart& chart, const Summary& beer, double ms)
{
    for (const Stretch& settling : chart.settling) {
        if (ms >= settling.fromMs && ms < settling.toMs)
            return Words::tr("settling");
    }
    if (!beer.mean && chart.leftOutAt(ms))
        return Words::tr("left out");
    for (const BandPiece& band : chart.bands) {
        if (beer.mean && ms >= band.time.fromMs && ms < band.time.toMs)
            return signedText(*beer.mean - band.targetAt(ms), 1);
    }
    return dash;
}

QString targetText(const RunChart& chart, double ms)
{
    for (const BandPiece& band : chart.bands) {
        if (ms >= band.time.fromMs && ms < band.time.toMs)
            return numberText(band.targetAt(ms), 1);
    }
    return dash;
}

std::vector<TableCell> cells(const QStringList& texts)
{
    std::vector<TableCell> row;
    for (const QString& text : texts)
        row.push_back({text, {}, false});
    return row;
}

} // namespace

TableText temperatureTable(const RunChart& chart, Span shown)
{
    const QString unit = ui::shown(unitText(chart.unit));
    TableText table;
    table.header = {Words::tr("from"),      Words::tr("beer, mean %1").arg(unit),
                    Words::tr("minimum"),   Words::tr("maximum"),
                    Words::tr("target"),    Words::tr("from target"),
                    Words::tr("room, mean")};
    table.numeric = {false, true, true, true, true, true, true};
    const Milliseconds step = stepFor(shown);
    for (Instant at = shown.start; at < shown.end; at += step) {
        const double from = chart.msOf(at);
        const double to = chart.msOf(std::min(at + step, shown.end));
        const double middle = (from + to) / 2.0;
        const Summary beer = summaryOf(chart.line(LineRole::beer), from, to);
        const Summary room = summaryOf(chart.line(LineRole::ambient), from, to);
        table.rows.push_back(cells({ui::shown(localShortText(at, chart.zone)),
                                    beer.mean ? numberText(*beer.mean, 1) : Words::tr("no data"),
                                    numberOrDash(beer.least, 1), numberOrDash(beer.most, 1),
                                    targetText(chart, middle), deviationText(chart, beer, middle),
                                    numberOrDash(room.mean, 1)}));
    }
    return table;
}

TableText energyReadingsTable(const RunChart& chart, Span shown)
{
    TableText table;
    table.header = {Words::tr("read at"), Words::tr("kWh since pitching"), Words::tr("range"),
                    Words::tr("since the one before")};
    table.numeric = {false, true, true, true};
    const EnergyDot* before = nullptr;
    for (const EnergyDot& dot : chart.energy) {
        const Instant at = chart.instantOf(dot.ms);
        if (dot.read && at >= shown.start && at <= shown.end) {
            const auto bounds = boundsAt(chart, dot.ms);
            table.rows.push_back(
                cells({ui::shown(localShortText(at, chart.zone)), numberText(dot.kwh, 2),
                       bounds ? QStringLiteral("%1 – %2").arg(numberText(bounds->low, 2),
                                                              numberText(bounds->high, 2))
                              : Words::tr("unknown"),
                       !dot.joined || !before ? Words::tr("not metered")
                       : dot.reset            ? Words::tr("reset to 0")
                                              : signedText(dot.kwh - before->kwh, 2)}));
        }
        before = dot.read ? &dot : before;
    }
    return table;
}

} // namespace holdband::ui
