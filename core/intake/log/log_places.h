// Names a part of a log as the place of a Problem.
#pragma once

#include "core/problem.h"
#include "core/text/phrase.h"

#include <cstdint>
#include <filesystem>
#include <string>
#include <string_view>

namespace holdband {

/// "beer.csv" of "logs/beer.csv"
inline std::string fileName(const std::string& path)
{
    return std::filesystem::path(path).filename().string();
}

/// "line 12"
inline std::string linePlace(std::int64_t line)
{
    return Phrase::tr("line %1").with(std::to_string(line));
}

/// "column Logged"
inline std::string columnPlace(std::string_view header)
{
    return Phrase::tr("column %1").with(header);
}

/// Of a problem with the layout of a table that was made of a file: its lines are the table's.
inline tl::unexpected<Problem> inTable(Problem problem)
{
    if (!problem.place.empty())
        problem.place = Phrase::tr("read as a table, %1").with(problem.place);
    return failure(std::move(problem));
}

/// Puts the file's name before the place of a problem with its data.
inline tl::unexpected<Problem> inFile(Problem problem, const std::string& path)
{
    if (problem.kind == ProblemKind::data)
        problem.place =
            problem.place.empty() ? fileName(path) : fileName(path) + ", " + problem.place;
    return failure(std::move(problem));
}

} // namespace holdband
