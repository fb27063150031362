#include "ui/equipment/window_rows.h"

#include "core/text/phrase.h"
#include "ui/forms/number_rules.h"
#include "ui/forms/quantity_cells.h"
#include "ui/words/words.h"

#include <QRegularExpression>
#include <algorithm>

namespace holdband::ui {

namespace {

enum WindowColumn : int { windowDays, windowFrom, windowTo, windowPrice };

QStringList dayNames()
{
    return {Words::tr("mon"), Words::tr("tue"), Words::tr("wed"), Words::tr("thu"),
            Words::tr("fri"), Words::tr("sat"), Words::tr("sun")};
}

QString everyDay()
{
    return Words::tr("every day");
}

QString minuteRefusal(const QString& cell)
{
    return typedMinute(cell) ? QString() : Words::tr("write a time of day, such as 16:00");
}

EditColumn clockColumn(const QString& title, int column)
{
    EditColumn made{title, {}, {}, true};
    made.refusal = [column](const QStringList& row) { return minuteRefusal(row[column]); };
    return made;
}

int dayNamed(const QString& word)
{
    const QStringList names = dayNames();
    const auto found = std::find_if(names.begin(), names.end(),
                                    [&](const QString& name) { return word.startsWith(name); });
    return found == names.end() ? -1 : static_cast<int>(found - names.begin());
}

/// "mon" or "mon-fri", also across the end of the week.
bool addDays(const QString& word, std::array<bool, 7>& days)
{
    const QStringList ends = word.split(QLatin1Char('-'));
    const int first = dayNamed(ends.first());
    const int last = dayNamed(ends.last());
    if (first < 0 || last < 0 || ends.size() > 2)
        return false;
    for (int day = first;; day = (day + 1) % 7) {
        days[static_cast<std::size_t>(day)] = true;
        if (day == last)
            return true;
    }
}

} // namespace

QString daysText(const std::array<bool, 7>& days)
{
    constexpr std::array<bool, 7> all{true, true, true, true, true, true, true};
    constexpr std::array<bool, 7> working{true, true, true, true, true, false, false};
    if (days == all)
        return everyDay();
    if (days == working)
        return Words::tr("mon – fri");
    QStringList words;
    for (std::size_t i = 0; i < days.size(); ++i) {
        if (days[i])
            words << dayNames()[static_cast<qsizetype>(i)];
    }
    return words.join(QLatin1Char(' '));
}

std::optional<std::array<bool, 7>> typedDays(const QString& text)
{
    static const QRegularExpression dashes(QStringLiteral("\\s*[-\u2013]\\s*"));
    static const QRegularExpression gaps(QStringLiteral("[\\s,;]+"));
    QString plain = text.trimmed().toLower();
    if (plain == everyDay().toLower() || plain == Words::tr("all").toLower())
        return std::array<bool, 7>{true, true, true, true, true, true, true};
    plain.replace(dashes, QStringLiteral("-"));
    std::array<bool, 7> days{};
    const QStringList words = plain.split(gaps, Qt::SkipEmptyParts);
    for (const QString& word : words) {
        if (!addDays(word, days))
            return std::nullopt;
    }
    return words.isEmpty() ? std::nullopt : std::optional(days);
}

std::optional<int> typedMinute(const QString& text)
{
    static const QRegularExpression form(QStringLiteral("^\\s*(\\d{1,2}):(\\d{2})\\s*$"));
    const QRegularExpressionMatch match = form.match(text);
    if (!match.hasMatch())
        return std::nullopt;
    const int hour = match.captured(1).toInt();
    const int minute = match.captured(2).toInt();
    const int whole = hour * 60 + minute;
    return minute < 60 && whole <= 24 * 60 ? std::optional(whole) : std::nullopt;
}

QString minuteCell(int minute)
{
    return QStringLiteral("%1:%2")
        .arg(minute / 60, 2, 10, QLatin1Char('0'))
        .arg(minute % 60, 2, 10, QLatin1Char('0'));
}

std::vector<EditColumn> windowColumns(const UnitFormat& format)
{
    EditColumn days{Words::tr("Days"), everyDay()};
    days.refusal = [](const QStringList& row) {
        return typedDays(row[windowDays]) ? QString()
                                          : Words::tr("write days such as mon – fri, or sat "
                                                      "sun");
    };
    EditColumn price{Words::tr("A kWh costs"), {}, {}, true};
    price.refusal = quantityRefusal(windowPrice, Quantity::money, false, format, priceRule);
    return {days, clockColumn(Words::tr("From"), windowFrom),
            clockColumn(Words::tr("To"), windowTo), price};
}

std::vector<EditRow> windowRows(const std::vector<TariffWindow>& windows, const UnitFormat& format)
{
    std::vector<EditRow> rows;
    for (const TariffWindow& window : windows)
        rows.push_back(
            {{daysText(window.days), minuteCell(window.fromMinute), minuteCell(window.toMinute),
              typedText(Quantity::money, window.pricePerKwh, format)},
             static_cast<int>(rows.size())});
    return rows;
}

Result<std::vector<TariffWindow>> windowsOf(const std::vector<EditRow>& rows,
                                            const std::vector<TariffWindow>& origin,
                                            const UnitFormat& format)
{
    std::vector<TariffWindow> windows;
    for (const EditRow& row : rows) {
        const std::string place = Phrase::tr("window %1").with(std::to_string(windows.size() + 1));
        const TariffWindow* before = originOf(row, origin);
        const auto days = typedDays(row.cells[windowDays]);
        const auto from = typedMinute(row.cells[windowFrom]);
        const auto to = typedMinute(row.cells[windowTo]);
        if (!days || !from || !to || *from == 24 * 60)
            return dataProblem(Phrase::tr("its days and times can't be read"), place,
                               Phrase::tr("write them such as mon – fri, 16:00, 21:00"));
        const auto price = quantityIn(row.cells[windowPrice], Quantity::money,
                                      before ? std::optional(before->pricePerKwh) : std::nullopt,
                                      format, priceRule);
        HOLDBAND_TRY(price);
        windows.push_back({*days, *from, *to, *price});
    }
    return windows;
}

} // namespace holdband::ui
