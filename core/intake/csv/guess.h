// How a log that nobody has described yet may be laid out, and what its columns may be.
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

/// All that are in use; retired ones are left out.
Result<std::vector<Target>> readTargets(const store::LogbookFile& logbook);

struct GuessedDialect {
    Dialect dialect;
    std::string delimiterReason;
    std::string headerReason;
    bool hasTime = true; ///< else the time's columns are open

    /// "the header is in line 4: times and numbers follow"
    std::string reason() const;
};

/// As findDialect; where that finds no header or no times, the delimiter that parts most rows
/// alike, and a header if its first row holds words. What is wished for holds.
/// Problem (data): empty, no rows of columns, no row in the line that the header is wished for in.
Result<GuessedDialect> guessDialect(std::string_view text, bool isWhole,
                                    const LayoutWish& wish = {});

/// Fills in the columns and names. `rows`: the first rows, with what stands before the header.
void guessColumns(const GuessedDialect& guessed, const SampleRows& rows,
                  const std::vector<Target>& targets, LogPreview& preview);

} // namespace holdband::intake
