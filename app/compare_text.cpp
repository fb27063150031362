#include "app/compare_text.h"

#include "app/colors.h"
#include "app/table.h"
#include "core/text/name_suggestions.h"
#include "core/text/numbers.h"

#include <algorithm>

namespace holdband::app {

namespace {

using results::SideBySide;

constexpr std::size_t batchesListed = 12;

std::string indented(const std::vector<std::string>& lines)
{
    std::string text;
    for (const std::string& line : lines)
        text += "  " + line + (line.ends_with('.') ? "\n" : ".\n");
    return text;
}

std::string headText(const SideBySide& review)
{
    std::string text =
        "A is " + review.a + ", B is " + review.b + ".\n" + emphasized(review.glance.answer) + "\n";
    for (const std::string& sentence : {review.text.headline, review.text.belowHeadline}) {
        if (sentence != review.glance.answer)
            text += sentence + "\n";
    }
    if (!review.ofSetups && review.alignment.stage)
        text += "Counted from " + review.text.alignedFrom + ".\n";
    if (!review.text.scope.empty())
        text += review.text.scope + "\n";
    if (review.ofSetups)
        text += "Batches of " + review.a + ": " + joined(review.batchesA) + ". Of " + review.b +
                ": " + joined(review.batchesB) + ".\n";
    return text;
}

std::string measuresText(const SideBySide& review)
{
    Table table({"measure", "A", "B", "A − B", "A ÷ B", "ahead", ""}, true);
    for (const results::MeasureText& line : review.text.measures)
        table.add(
            {line.title, line.a, line.b, line.difference, line.ratio, line.ahead, line.remark});
    return "\n" + table.text();
}

std::string notesText(const SideBySide& review)
{
    if (review.text.notes.empty())
        return {};
    std::string text = "\nHow fair is this?\n";
    for (const results::NoteText& note : review.text.notes)
        text += "  " + note.title + ": " + note.note + "; " + note.effect + ".\n";
    return text;
}

std::string figuresOf(const results::SetupFigures& figures, const std::vector<std::string>& values)
{
    std::vector<std::string> texts;
    for (std::size_t i = 0; i < values.size(); ++i) {
        if (texts.size() == batchesListed) {
            texts.push_back("and " + std::to_string(values.size() - batchesListed) + " more");
            break;
        }
        texts.push_back(figures.batches[i].batch + " " + values[i]);
    }
    return texts.empty() ? "–" : joined(texts);
}

std::string batchesText(const SideBySide& review)
{
    if (review.batchFigures.empty())
        return {};
    Table table({"each batch", "A", "B"});
    for (std::size_t i = 0; i < review.batchFigures.size(); ++i) {
        const results::MeasureText& line = review.text.measures[i];
        table.add({line.title, figuresOf(review.batchFigures[i].a, line.batchesA),
                   figuresOf(review.batchFigures[i].b, line.batchesB)});
    }
    std::string text = "\n" + table.text();
    for (const std::string& sentence : review.text.idle)
        text += "\n" + sentence;
    return text + "\n";
}

std::string sideText(const std::string& name, const results::SideModelText& side)
{
    std::string text = "  " + name + ":\n";
    for (const auto* lines : {&side.figures, &side.cautions, &side.remarks}) {
        for (const std::string& line : *lines)
            text += "    " + line + (line.ends_with('.') ? "\n" : ".\n");
    }
    return text;
}

std::string weatherText(const SideBySide& review)
{
    const results::SameWeatherText& weather = review.text.weather;
    std::string text = "\nIn the same weather\n" + indented({weather.sentence});
    if (!weather.energySentence.empty())
        text += indented({weather.energySentence});
    return text + sideText(review.a, weather.a) + sideText(review.b, weather.b) +
           indented(weather.remarks);
}

/// The totals after several numbers of batches, up to the end of the chart.
std::string totalsTable(const SideBySide& review)
{
    const results::Money& money = review.money;
    const results::CostScenario& scenario = money.scenarios.front();
    Table table({"batches", "A", "B"});
    for (const int batches : money.batchesInTable) {
        table.add({std::to_string(batches), fixedText(scenario.a.after(batches), 2),
                   fixedText(scenario.b.after(batches), 2)});
    }
    return table.text();
}

std::string totalCostText(const SideBySide& review)
{
    const results::MoneyText& money = review.text.money;
    std::string text =
        "\nMoney\n  Parts: " + money.partsA + " for A, " + money.partsB + " for B.\n";
    for (const results::CostScenarioText& scenario : money.scenarios)
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
    const results::JudgementText& judgement = review.text.judgement;
    Table table({"criterion", "weight", "A", "B", "how"}, true);
    for (std::size_t i = 0; i < judgement.criteria.size(); ++i) {
        const results::CriterionText& criterion = judgement.criteria[i];
        table.add({criterion.title, shortestText(review.judgement.criteria[i].weight), criterion.a,
                   criterion.b, criterion.how});
    }
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
