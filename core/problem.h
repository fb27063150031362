// What went wrong, for people: a sentence, the place, and how to fix it. Every fallible call
// returns Result<T>; nothing in Holdband throws across a module. No Qt.
#pragma once

#include <string>
#include <tl/expected.hpp>
#include <utility>
#include <vector>

namespace holdband {

/// Decides the exit status of a command and the tone of a message, nothing else.
enum class ProblemKind {
    data, ///< the data forbids it or needs a decision (exit status 1)
    call, ///< the call itself is wrong (exit status 2)
    file, ///< a file can't be read or written, is damaged, foreign or locked (exit status 3)
};

/// What the user has to decide before the work can go on.
enum class Decision {
    none,
    timeColumn,
    timeOfDay,   ///< the column of times holds dates alone
    timePattern, ///< how the times are written
    dateOrder,
    decimalSign,
    zone,
    unit,
    headerUnit,   ///< the unit in a column's header doesn't fit its values
    columns,      ///< what each column of a log is
    layout,       ///< how a log's columns are separated, and where its header is
    registerDrop, ///< why a register reads less than before
    timeUnit,     ///< what the numbers in a log's column of times count
    start,        ///< when a log began whose times count from its start
};

struct Problem {
    ProblemKind kind = ProblemKind::data;
    std::string what;   ///< a sentence without its full stop: "the date 03/04/26 fits two orders"
    std::string place;  ///< "loop.csv, line 12, column Logged"; empty where there is none
    std::string remedy; ///< "say --date-order mdy or dmy"; empty where there is none
    Decision decision = Decision::none;
    /// What the decision is between, as the settings of an import spell it: "mdy" and "dmy", "c"
    /// and "f" (the likelier first), two zones, the names of the columns. Empty where nothing is
    /// proposed.
    std::vector<std::string> options = {};

    /// Such as "loop.csv, line 12: the date … fits two orders; say --date-order mdy or dmy."
    std::string sentence() const
    {
        std::string text = place.empty() ? what : place + ": " + what;
        if (!remedy.empty())
            text += "; " + remedy;
        return text.ends_with('?') ? text : text + ".";
    }
};

template <typename T>
using Result = tl::expected<T, Problem>;
using Done = Result<void>;

/// Without the middle of a text that is too long for a message, such as a quoted value of a megabyte.
inline std::string withoutItsMiddle(std::string text)
{
    constexpr std::size_t most = 1'000;
    constexpr std::size_t begin = 500;
    constexpr std::size_t end = 300;
    if (text.size() <= most)
        return text;
    const auto startsCharacter = [&](std::size_t at) {
        return (static_cast<unsigned char>(text[at]) & 0xc0) != 0x80;
    };
    std::size_t from = begin;
    while (from > 0 && !startsCharacter(from))
        --from;
    std::size_t to = text.size() - end;
    while (to < text.size() && !startsCharacter(to))
        ++to;
    return text.replace(from, to - from, " … ");
}

inline tl::unexpected<Problem> failure(Problem problem)
{
    problem.what = withoutItsMiddle(std::move(problem.what));
    problem.place = withoutItsMiddle(std::move(problem.place));
    return tl::unexpected<Problem>(std::move(problem));
}

inline tl::unexpected<Problem> dataProblem(std::string what, std::string place = {},
                                           std::string remedy = {},
                                           Decision decision = Decision::none,
                                           std::vector<std::string> options = {})
{
    return failure({ProblemKind::data, std::move(what), std::move(place), std::move(remedy),
                    decision, std::move(options)});
}

inline tl::unexpected<Problem> fileProblem(std::string what, std::string place = {},
                                           std::string remedy = {})
{
    return failure({ProblemKind::file, std::move(what), std::move(place), std::move(remedy)});
}

} // namespace holdband

/// Evaluates a Result and returns its Problem from the enclosing function where it failed.
#define HOLDBAND_TRY(expression)                                                                   \
    do {                                                                                           \
        if (auto&& holdbandTried = (expression); !holdbandTried)                                   \
            return tl::unexpected(holdbandTried.error());                                          \
    } while (false)
