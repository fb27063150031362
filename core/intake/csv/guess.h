// Guesses the layout and the columns of a log that the user has not described yet.
#pragma once

#include "core/intake/csv/dialect.h"
#include "core/intake/csv/preview.h"
#include "core/intake/csv/sample.h"

#include <string>
#include <string_view>
#include <vector>

namespace holdband::intake {

/// A sensor or meter that a column can be.
struct Target {
    std::string name;
    SeriesKind kind = SeriesKind::temperature;
};

/// All targets in use; retired ones are left out.
Result<std::vector<Target>> readTargets(const store::LogbookFile& logbook);

struct GuessedDialect {
    Dialect dialect;
    std::string delimiterReason;
    std::string headerReason;
    bool hasTime = true; ///< else the time columns are unknown

    /// "the header is in line 4: times and numbers follow"
    std::string reason() const;
};

/// As findDialect; if that finds no header or no times, the delimiter that splits most rows alike,
/// and a header if the first row is text. Requested settings are always used. Problem (data):
/// empty, no rows of columns, no row in the requested header line.
Result<GuessedDialect> guessDialect(std::string_view text, bool isWhole,
                                    const LayoutRequest& layoutRequest = {});

/// Fills in the columns and names. `rows`: the first rows, including those before the header.
void guessColumns(const GuessedDialect& guessed, const SampleRows& rows,
                  const std::vector<Target>& targets, LogPreview& preview);

} // namespace holdband::intake
