// The first rows of a log as they are, and a guess for what each column means, with its reason.
// Fast, whatever the file's size: only its beginning is read.
#pragma once

#include "core/intake/log/column_map.h"
#include "core/intake/time/time_pattern.h"
#include "core/store/logbook_file.h"

#include <cstdint>
#include <memory>
#include <string>
#include <vector>

namespace holdband::intake {

struct PreviewRow {
    std::int64_t line = 1;
    std::vector<std::string> cells; ///< shortened where they are long

    bool operator==(const PreviewRow&) const = default;
};

/// What one column is taken for, and why.
struct ColumnGuess {
    std::string header;
    ColumnChoice choice;
    std::string reason;     ///< "its rows are times", "its header is the sensor's name"
    std::string unitReason; ///< "the header says °F"; empty where it has no unit
};

struct NameGuess {
    NameChoice choice;
    std::string reason;
};

/// A log's layout as it was found, whatever was wished for.
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
    LogLayout layout;
    std::string layoutReason;         ///< "the header is in line 4: times follow below it"
    LayoutWish asked;                 ///< what was wished for
    std::optional<FoundLayout> found; ///< absent where only the wish makes a log of it
    std::string shape;
    std::vector<PreviewRow> rows; ///< at most mostPreviewRows, also what stands before the header
    std::vector<ColumnGuess> columns;
    std::vector<NameGuess> names; ///< of a long log: those in the first rows
    std::string orderReason;      ///< of the dates; empty where they leave it open, or need none

    /// The guesses as choices.
    ColumnMap map() const;
};

inline constexpr std::size_t mostPreviewRows = 50;

/// What to look at: a file, or bytes with a name.
struct LogSource {
    std::string path;
    std::shared_ptr<const std::string> text = {};
};

/// Problem (file): it can't be read. Problem (data): it is empty, or no text in rows. A log in
/// which no column of times is found is no Problem: it is guessed that there is none. With a wish
/// also Problem (data): the header isn't in that line, or nothing is parted by that delimiter.
Result<LogPreview> previewLog(const store::LogbookFile& logbook, const LogSource& source,
                              const LayoutWish& wish = {});

/// The columns' guesses with the remembered choices in their place. Names that the logbook no
/// longer has are left out.
void applyMap(const store::LogbookFile& logbook, const ColumnMap& map, LogPreview& preview);

/// The first rows of the time's columns held against a pattern. Problem (data): it is none.
Result<std::vector<PatternTry>> tryPattern(const LogPreview& preview, const ColumnMap& map,
                                           const std::string& pattern);

} // namespace holdband::intake
