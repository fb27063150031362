// Sentences about a previewed or imported log.
#pragma once

#include "core/intake/log/import.h"

#include <QString>
#include <QStringList>

namespace holdband::ui {

struct LogState;

/// "loop.csv: 10,185 rows read, 30,555 readings new, …"
QString countsSentence(const intake::ImportReport& report);

/// The Problem with the remedy that this page offers.
QString problemText(const Problem& problem);

/// The page's sentence about the log's current state.
QString stateSentence(const LogState& log);
/// A short text for the list of logs: "ready", "asks".
QString stateWord(const LogState& log);

/// How the text was read, what was skipped, and what is odd.
QStringList remarksOn(const LogState& log);

QString countText(std::int64_t count);

} // namespace holdband::ui
