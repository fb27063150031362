// Names and notes made fit to stand in a report: what people typed may hold line ends, control
// characters, or marks that turn the direction of all that follows.
#pragma once

#include <QString>

namespace holdband::report {

/// On one line: control characters as spaces, direction overrides and embeddings left out (marks
/// and letters of right-to-left scripts stay), nothing that XML forbids.
QString calm(const QString& text);

/// The same, and no longer than `most` characters, the last then an ellipsis.
QString shortened(const QString& text, qsizetype most);

/// A number and its unit, and the two ends of a range, stay on one line.
QString unbroken(const QString& text);

inline constexpr qsizetype mostOfTitle = 160;
inline constexpr qsizetype mostOfCell = 400;

} // namespace holdband::report
