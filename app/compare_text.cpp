#include "app/compare_text.h"

#include "app/table.h"
#include "core/text/name_suggestions.h"
#include "core/text/numbers.h"

#include <algorithm>

namespace holdband::app {

namespace {

using results::SideBySide;

constexpr std::size_t batchesListed = 12;
constexpr int costRows = 6;

std::string indented(const std::vector<std::string>& lines)
{
    std::string text;
    for (const std::string& line : lines)
        text += "  " + line + (line.ends_with('.') ? "\n" : ".\n");
    return text;
}

std::string headText(const SideBySide& review)
{
    std::string text = "A is " + review.a + ", B is " + review.b + ".\n" + review.headline + "\n" +
                       review.belowHeadline + "\n";
    if (!review.ofSetups && review.alignment.stage)
        text += "Counted from " + review.alignment.words + ".\n";
    if (!review.alignment.scope.empty())
        text += review.alignment.scope + "\n";
    if (review.ofSetups)
        text += "Batches of " + review.a + ": " + joined(review.batchesA) + ". Of " + review.b +
                ": " + joined(review.batchesB) + ".\n";
    return text;
}

std::string measuresText(const SideBySide& review)
{
    Table table({"measure", "A", "B", "A − B", "A ÷ B", "ahead", ""}, true);
    for (const results::MeasureWords& line : review.lines)
        table.add(
            {line.title, line.a, line.b, line.difference, line.ratio, line.ahead, line.remark});
    return "\n" + table.text();
}

std::string notesText(const SideBySide& review)
{
    if (review.notes.empty())
        return {};
    std::string text = "\nHow fair is this?\n";
    for (const results::NoteWords& note : review.notes)
        text += "  " + note.title + ": " + note.note + "; " + note.effect + ".\n";
    return text;
}

std::string figuresOf(const results::SetupFigures& figures)
{
    std::vector<std::string> texts;
    for (const results::BatchFigure& batch : figures.batches) {
        if (texts.size() == batchesListed) {
            texts.push_back("and " + std::to_string(figures.batches.size() - batchesListed) +
                            " more");
            break;
        }
        texts.push_back(batch.batch + " " + batch.text);
    }
    return texts.empty() ? "–" : joined(texts);
}

std::string batchesText(const SideBySide& review)
{
    if (review.batchFigures.empty())
        return {};
    Table table({"each batch", "A", "B"});
    for (std::size_t i = 0; i < review.batchFigures.size(); ++i)
        table.add({review.lines[i].title, figuresOf(review.batchFigures[i].a),
                   figuresOf(review.batchFigures[i].b)});
    std::string text = "\n" + table.text();
    for (const results::IdleFigures& idle : review.idle)
        text += "\n" + idle.sentence;
    return text + "\n";
}

std::string sideText(const results::ModelWords& side)
{
    std::string text = "  " + side.side + ":\n";
    for (const auto* lines : {&side.figures, &side.cautions, &side.remarks}) {
        for (const std::string& line : *lines)
            text += "    " + line + (line.ends_with('.') ? "\n" : ".\n");
    }
    return text;
}

std::string weatherText(const SideBySide& review)
{
    const results::SameWeather& weather = review.weather;
    std::string text = "\nIn the same weather\n" + indented({weather.sentence});
    if (weather.any)
        text += indented({weather.energySentence});
    return text + sideText(weather.a) + sideText(weather.b) + indented(weather.remarks);
}

/// Totals after some numbers of batches, up to the end of the chart.
std::string totalsTable(const SideBySide& review)
{
    const results::MoneyWords& money = review.money;
    Table table({"batches", "A", "B"});
    for (int row = 0; row <= costRows; ++row) {
        const int batches = money.lastBatch * row / costRows;
        const auto& scenario = money.scenarios.front();
        table.add({std::to_string(batches), fixedText(scenario.a.after(batches), 2),
                   fixedText(scenario.b.after(batches), 2)});
    }
    return table.text();
}

std::string totalCostText(const SideBySide& review)
{
    const results::MoneyWords& money = review.money;
    std::string text =
        "\nMoney\n  Parts: " + money.partsTextA + " for A, " + money.partsTextB + " for B.\n";
    for (const results::CostScenario& scenario : money.scenarios)
        text += "  Energy of a batch " + scenario.name + ": " + scenario.perBatchA + " for A, " +
                scenario.perBatchB + " for B. " + scenario.sentence +
                (scenario.yearSentence.empty() ? "" : " " + scenario.yearSentence) + "\n";
    for (const std::string& sentence : {money.why, money.timeOfUse}) {
        if (!sentence.empty())
            text += "  " + sentence + "\n";
    }
    return money.scenarios.empty() ? text : text + totalsTable(review);
}

std::string judgementText(const SideBySide& review)
{
    const results::JudgementWords& judgement = review.judgement;
    Table table({"criterion", "weight", "A", "B", "how"}, true);
    for (const results::CriterionWords& criterion : judgement.criteria)
        table.add({criterion.title, shortestText(criterion.weight), criterion.textA,
                   criterion.textB, criterion.how});
    return "\nJudgement\n" + indented({judgement.sentence}) + indented(judgement.turning) +
           table.text() + indented({judgement.rule});
}

} // namespace

std::string compareText(const SideBySide& review)
{
    return headText(review) + measuresText(review) + notesText(review) + batchesText(review) +
           weatherText(review) + totalCostText(review) + judgementText(review);
}

} // namespace holdband::app
