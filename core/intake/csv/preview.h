// The first rows of a log as they are, and a guess for each column, with its reason. Fast for
// files of any size, because only the beginning is read.
#pragma once

#include "core/intake/log/column_map.h"
#include "core/intake/time/time_pattern.h"
#include "core/store/logbook_file.h"

#include <cstdint>
#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace holdband::intake {

struct PreviewRow {
    std::int64_t line = 1;
    std::vector<std::string> cells; ///< shortened where they are long

    bool operator==(const PreviewRow&) const = default;
};

/// The guess for one column, and the reason.
struct ColumnGuess {
    std::string header;
    ColumnChoice choice;
    std::string reason;     ///< "its rows are times", "its header is the sensor's name"
    std::string unitReason; ///< "the header says °F"; empty where it has no unit
    /// The guess leaves it out, though it looks like a temperature.
    bool mayBeTemperature = false;
};

struct NameGuess {
    NameChoice choice;
    std::string reason;
};

/// The layout of a log as found without the user's requested settings.
struct FoundLayout {
    char delimiter = ',';
    std::string delimiterReason; ///< "it splits most rows into the same number of columns"
    std::int64_t headerLine = 1; ///< 0: there is no header
    std::string headerReason;    ///< "times and numbers follow"; may be empty
    std::string shape;
};

struct LogPreview {
    std::string fileName;
    std::string encoding;
    /// Of JSON lines: a header that was made for them. By as much the lines of `rows` and `layout`
    /// are greater than the file's own, which reports give.
    std::int64_t addedLines = 0;
    LogLayout layout;
    std::string layoutReason; ///< "the header is in line 4: times follow below it"
    LayoutRequest asked;      ///< the user's requested settings
    /// Absent where the file is a log only with the requested settings.
    std::optional<FoundLayout> found;
    std::string shape;
    std::vector<PreviewRow> rows; ///< at most mostPreviewRows, including those before the header
    std::vector<ColumnGuess> columns;
    std::vector<NameGuess> names; ///< of a long log: those in the first rows
    std::string orderReason;      ///< for the date order; empty if undecided or not needed

    /// The guesses as choices.
    ColumnMap map() const;
};

inline constexpr std::size_t mostPreviewRows = 50;

/// What to preview: a file, or bytes with a name.
struct LogSource {
    std::string path;
    std::shared_ptr<const std::string> text = {};
    std::optional<std::string> sheet = {}; ///< of a workbook; absent: the first one
};

/// The sheets of a workbook among which the user can choose; the first is read if none is chosen.
/// None for other files, and where it can't be read: previewLog then says why.
std::vector<std::string> sheetsOf(const LogSource& source);

/// Problem (file): it can't be read. Problem (data): it is empty, or not text in rows. A log
/// without a column of times is not a Problem: the guess then has none. With requested settings
/// also Problem (data): the header isn't in that line, or that delimiter splits nothing.
Result<LogPreview> previewLog(const store::LogbookFile& logbook, const LogSource& source,
                              const LayoutRequest& layoutRequest = {});

/// Replaces the columns' guesses with the remembered choices. Names that the logbook no longer has
/// are left out.
void applyMap(const store::LogbookFile& logbook, const ColumnMap& map, LogPreview& preview);

/// Tries a pattern on the time columns of the first rows. Problem (data): it is not a pattern.
Result<std::vector<PatternTry>> tryPattern(const LogPreview& preview, const ColumnMap& map,
                                           const std::string& pattern);

} // namespace holdband::intake
