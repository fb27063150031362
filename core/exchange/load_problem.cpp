#include "core/exchange/load_problem.h"

#include "core/text/name_suggestions.h"
#include "core/text/phrase.h"

namespace holdband::exchange {

namespace {

std::string unitKeys(const std::string& likely, const std::string& place)
{
    return likely == "f" ? Phrase::tr("say \"unit\": \"f\" if they are in °F, or \"unit\": \"c\" "
                                      "if they are right (in %1)")
                               .with(place)
                         : Phrase::tr("say \"unit\": \"c\" if they are in °C, or \"unit\": \"f\" "
                                      "if they are right (in %1)")
                               .with(place);
}

std::vector<std::string> inQuotes(std::vector<std::string> values)
{
    for (std::string& value : values)
        value = '"' + value + '"';
    return values;
}

/// Names the description's keys that fix the problem; empty if there are none.
std::string keysFor(const Problem& problem, const std::string& place)
{
    const std::vector<std::string>& options = problem.options;
    switch (problem.decision) {
    case Decision::unit:
        return options.empty() || (options.front() != "c" && options.front() != "f")
                   ? Phrase::tr("write the right unit in the header, in brackets")
                   : unitKeys(options.front(), place);
    case Decision::headerUnit:
        return Phrase::tr("correct the header, or take the file out of the description and import "
                          "it with --unit");
    case Decision::dateOrder:
        return Phrase::tr("say \"date_order\": %1 (in %2)")
            .with(alternatives(inQuotes(options)), place);
    case Decision::zone:
        return Phrase::tr(
                   "write offsets in the file, or give the zone of the logger's clock, such as "
                   "\"zone\": %1 (in %2)")
            .with(alternatives(inQuotes(options)), place);
    case Decision::columns:
        return Phrase::tr("say which is which with \"columns\" (in %2); the file has: %1")
            .with(joined(options), place);
    case Decision::timeColumn:
        return Phrase::tr("name it with \"time\": \"COLUMN\" or \"time\": \"DATE COLUMN+TIME "
                          "COLUMN\" (in %2); the first row has: %1")
            .with(joined(options), place);
    case Decision::timeOfDay:
        return Phrase::tr("say which column has the time of day with \"time\": \"%1+TIME COLUMN\" "
                          "(in %2), or write it behind the date")
            .with(options.front(), place);
    case Decision::timePattern:
        return Phrase::tr("take the file out of the description and import it with --time and "
                          "--pattern, or name another column of times in %1")
            .with(place);
    case Decision::decimalSign:
        return Phrase::tr("take the file out of the description and import it with --decimal "
                          "comma or --decimal point");
    case Decision::registerDrop:
        return Phrase::tr("take the file out of the description and import it with --event "
                          "rollover (it passed its top) or --event reset (it restarted at 0)");
    case Decision::timeUnit:
        return Phrase::tr("take the file out of the description and import it with --time-unit");
    case Decision::start:
        return Phrase::tr("take the file out of the description and import it with --start");
    case Decision::none:
    case Decision::layout:
        break;
    }
    return {};
}

} // namespace

Problem solvedInDescription(Problem problem, const std::string& place)
{
    if (problem.options.empty() && problem.decision != Decision::start)
        return problem;
    if (std::string keys = keysFor(problem, place); !keys.empty())
        problem.remedy = std::move(keys);
    return problem;
}

} // namespace holdband::exchange
