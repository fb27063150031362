// Cleans names and notes for a report: typed text may contain line ends, control characters, or
// marks that change the direction of everything after them.
#pragma once

#include <QString>

namespace holdband::report {

/// As one line: control characters become spaces, direction overrides and embeddings are removed
/// (marks and letters of right-to-left scripts remain), and so is anything that XML forbids.
QString calm(const QString& text);

/// The same, cut to at most `most` characters, with an ellipsis as the last.
QString shortened(const QString& text, qsizetype most);

/// Prevents line breaks between a number and its unit, and between the two ends of a range.
QString unbroken(const QString& text);

inline constexpr qsizetype mostOfTitle = 160;
inline constexpr qsizetype mostOfCell = 400;

} // namespace holdband::report
