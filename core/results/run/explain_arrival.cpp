// Explains the forecast of an arrival.
#include "core/results/run/explain_text.h"
#include "core/text/phrase.h"

namespace holdband::results {

using analysis::ArrivalAnswer;
using analysis::ArrivalSource;
using analysis::Turned;

namespace {

std::string fromPast(const ExplainText& words, const ArrivalReview& arrival)
{
    const std::size_t count = arrival.forecast.pastCrashes;
    const Phrase from =
        arrival.turned == Turned::down
            ? Phrase::counted("From %n past crashes on %1: the hours that each took from %2, where "
                              "the beer is now, to %3, the edge of its band.",
                              "From %n past crash on %1: the hours that it took from %2, where the "
                              "beer is now, to %3, the edge of its band.",
                              count)
            : Phrase::counted("From %n past warm-ups on %1: the hours that each took from %2, "
                              "where the beer is now, to %3, the edge of its band.",
                              "From %n past warm-up on %1: the hours that it took from %2, where "
                              "the beer is now, to %3, the edge of its band.",
                              count);
    const Phrase scaled = arrival.forecast.byPace
                              ? Phrase::tr("They are scaled by the pace of this one so far.")
                              : Phrase::tr("They are scaled by volume, where both are known.");
    return from.with(words.review().setup.name, words.temperature(arrival.beer),
                     words.temperature(arrival.edge)) +
           " " + scaled.text() + " " +
           Phrase::tr("The interval is meant to hold nine times in ten; by how much one differs "
                      "from another is partly assumed.")
               .text();
}

std::string fromCurve(const ExplainText& words, const ArrivalReview& arrival)
{
    const bool down = arrival.turned == Turned::down;
    std::string text =
        (down ? Phrase::tr("From the beer's last readings: curves of cooling that fit them, and "
                           "when each reaches %1, the edge of the band. No past crash on %2 helps: "
                           "none came from %3 to there.")
              : Phrase::tr("From the beer's last readings: curves of warming that fit them, and "
                           "when each reaches %1, the edge of the band. No past warm-up on %2 "
                           "helps: none came from %3 to there."))
            .with(words.temperature(arrival.edge), words.review().setup.name,
                  words.temperature(arrival.beer));
    if (arrival.shared)
        text +=
            " " +
            Phrase::tr("Another batch ran on the setup meanwhile, so the rate may change.").text();
    switch (arrival.forecast.answer) {
    case ArrivalAnswer::openTop:
        return text + " " +
               Phrase::tr("The readings also fit curves that never get there, so there is no "
                          "latest time.")
                   .text();
    case ArrivalAnswer::willNotArrive:
        return text + " " +
               Phrase::tr("None of them gets there; the best one levels off at %1.")
                   .with(words.temperature(Temperature::celsius(*arrival.forecast.levelsOffC)));
    default:
        return text + " " + Phrase::tr("The interval is meant to hold nine times in ten.").text();
    }
}

std::string whyTooEarly(const ExplainText& words)
{
    return Phrase::tr("A forecast needs half an hour of readings where a past crash or warm-up of "
                      "the setup passed the same temperatures; else an hour and a half, readings "
                      "spread over it, and a beer that has moved by %1 and a tenth of its way.")
        .with(words.difference(1.0));
}

} // namespace

std::string explainArrival(const ExplainText& words)
{
    const auto& arrival = words.review().arrival;
    if (!arrival)
        return Phrase::tr("There is nothing to forecast: the batch has ended, its stage has no new "
                          "target, or the beer came into its band.");
    if (arrival->forecast.answer == ArrivalAnswer::notYet)
        return whyTooEarly(words);
    return arrival->forecast.source == ArrivalSource::pastCrashes ? fromPast(words, *arrival)
                                                                  : fromCurve(words, *arrival);
}

} // namespace holdband::results
