#include "ui/run/deviation_card.h"

#include "core/results/run/explain.h"
#include "core/text/quantities.h"
#include "ui/words/words.h"

#include <QVBoxLayout>
#include <algorithm>

namespace holdband::ui {

namespace {

double inUnit(double kelvins, TemperatureUnit unit)
{
    return valueIn(TemperatureDifference::kelvins(kelvins), unit);
}

QString degrees(double kelvins, TemperatureUnit unit)
{
    return signedText(inUnit(kelvins, unit), 2) + QLatin1Char(' ') + shown(unitText(unit));
}

} // namespace

TableText deviationTable(const results::RunReview& review)
{
    TableText table;
    table.header = {{}, {}};
    table.numeric = {false, true};
    const analysis::TimeMoments& deviation = review.figures.judged.deviation;
    if (deviation.empty())
        return table;
    const TemperatureUnit unit = review.settings.temperatureUnit();
    const auto add = [&](const QString& what, const QString& figure, results::Figure how) {
        const QString why = shown(results::explain(review, how, decimalSign()));
        table.rows.push_back({{what, why, false}, {figure, why, true}});
    };
    const auto size = [&](double kelvins) {
        return numberText(inUnit(kelvins, unit), 2) + QLatin1Char(' ') + shown(unitText(unit));
    };
    add(Words::tr("mean"), degrees(deviation.mean(), unit), results::Figure::meanDeviation);
    add(Words::tr("spread (standard deviation)"), size(deviation.standardDeviation()),
        results::Figure::spread);
    add(Words::tr("size (root mean square)"), size(deviation.rootMeanSquare()),
        results::Figure::rmsDeviation);
    return table;
}

DeviationCard::DeviationCard(QWidget* parent)
    : TableCard(Words::tr("How far from target"), 0, parent),
      m_histogram(new DeviationHistogram(this))
{
    contents()->insertWidget(0, m_histogram);
    setHeaderShown(false);
}

void DeviationCard::setReview(const results::RunReview& review)
{
    m_histogram->setBars(deviationBars(review));
    setWords(deviationTable(review));
    setVisible(!review.figures.judged.deviation.empty());
}

} // namespace holdband::ui
