#include "ui/lanes/time_labels.h"

#include "ui/charts/ticks.h"
#include "ui/words/choice_text.h"
#include "ui/words/words.h"

#include <QLocale>
#include <algorithm>
#include <array>
#include <optional>

namespace holdband::ui {

namespace {

using std::chrono::months;
using std::chrono::year_month;

constexpr double apart = 12.0; ///< pixels between two labels

struct Axis {
    Span shown;
    double left = 0.0;
    double right = 0.0;

    double place(Instant at) const
    {
        const double all = static_cast<double>((shown.end - shown.start).count());
        return left + static_cast<double>((at - shown.start).count()) / all * (right - left);
    }
};

/// One way to label months: every n-th of them, with full or short names.
struct Naming {
    int step;
    QLocale::FormatType format;
};
constexpr std::array namings{
    Naming{1, QLocale::LongFormat},    Naming{1, QLocale::ShortFormat},
    Naming{3, QLocale::ShortFormat},   Naming{6, QLocale::ShortFormat},
    Naming{12, QLocale::ShortFormat},  Naming{24, QLocale::ShortFormat},
    Naming{60, QLocale::ShortFormat},  Naming{120, QLocale::ShortFormat},
    Naming{600, QLocale::ShortFormat},
};

int countOf(year_month month)
{
    return int(month.year()) * 12 + int(unsigned(month.month())) - 1;
}

year_month monthOf(int count)
{
    return std::chrono::year{count / 12} / std::chrono::month{unsigned(count % 12) + 1};
}

std::string nameOf(year_month month, const Naming& naming, bool withYear)
{
    const QString year = QString::number(int(month.year()));
    if (naming.step >= 12)
        return year.toStdString();
    const QString name =
        wordsLocale().standaloneMonthName(int(unsigned(month.month())), naming.format);
    return (withYear ? name + QLatin1Char(' ') + year : name).toStdString();
}

/// `edge`: with the month in which the shown span begins, at its left edge.
std::vector<PlacedLabel> monthLabels(const Axis& axis, const Zone& zone, const Naming& naming,
                                     bool edge)
{
    std::vector<PlacedLabel> labels;
    const Date first = zone.localDate(axis.shown.start);
    int count = countOf(first.year() / first.month());
    for (count -= count % naming.step;; count += naming.step) {
        const year_month month = monthOf(count);
        const Instant begins = zone.startOfDay(month / 1);
        if (begins > axis.shown.end)
            return labels;
        const bool atEdge = begins < axis.shown.start;
        if (atEdge &&
            (!edge || zone.startOfDay(monthOf(count + naming.step) / 1) <= axis.shown.start))
            continue;
        // The first label has the year, and so does each that begins a year.
        const bool withYear = labels.empty() || count % 12 == 0;
        labels.push_back(
            {std::max(axis.left, axis.place(begins)), nameOf(month, naming, withYear), atEdge});
    }
}

bool fit(const PlacedLabel& label, const PlacedLabel& next, const TextWidth& width)
{
    return label.x + width(label.label) + apart <= next.x;
}

/// Drops the last label if it does not fit. False: labels touch.
bool fitted(std::vector<PlacedLabel>& labels, double right, const TextWidth& width)
{
    if (labels.size() > 1 && labels.back().x + width(labels.back().label) > right)
        labels.pop_back();
    for (std::size_t i = 1; i < labels.size(); ++i) {
        if (!fit(labels[i - 1], labels[i], width))
            return false;
    }
    return true;
}

std::vector<PlacedLabel> dayLabels(const Axis& axis, const Zone& zone, const TextWidth& width)
{
    const double one = width("30 Nov 2026") + apart;
    const int most = std::max(1, static_cast<int>((axis.right - axis.left) / one));
    std::vector<PlacedLabel> labels;
    for (const TimeTick& tick : timeTicks(axis.shown, zone, most)) {
        std::string label = tick.label;
        if (labels.empty() && tick.midnight) // the first label has the year
            label += ' ' + std::to_string(int(zone.localDate(tick.at).year()));
        labels.push_back({axis.place(tick.at), label, false});
    }
    return labels;
}

} // namespace

std::vector<PlacedLabel> timeLabels(Span shown, const Zone& zone, double left, double right,
                                    const TextWidth& width)
{
    if (shown.empty() || right <= left)
        return {};
    const Axis axis{shown, left, right};
    if (shown.end - shown.start < std::chrono::days{45}) {
        std::vector<PlacedLabel> labels = dayLabels(axis, zone, width);
        if (!labels.empty() && fitted(labels, right, width))
            return labels;
    }
    for (const Naming& naming : namings) {
        for (const bool edge : {true, false}) {
            std::vector<PlacedLabel> labels = monthLabels(axis, zone, naming, edge);
            if (!labels.empty() && fitted(labels, right, width))
                return labels;
        }
    }
    return {};
}

} // namespace holdband::ui
