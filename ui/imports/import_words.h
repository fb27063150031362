// Sentences about a log that was looked at or kept.
#pragma once

#include "core/intake/log/import.h"

#include <QString>
#include <QStringList>

namespace holdband::ui {

struct LogState;

/// "loop.csv: 10,185 rows read, 30,555 readings new, …"
QString countsSentence(const intake::ImportReport& report);

/// The Problem with the way out that this page offers.
QString problemWords(const Problem& problem);

/// What the page says of the log as it stands.
QString stateSentence(const LogState& log);
/// A word or two for the list of logs: "ready", "asks".
QString stateWord(const LogState& log);

/// How the text was read, what was passed over, and what is odd.
QStringList remarksOn(const LogState& log);

QString countText(std::int64_t count);

} // namespace holdband::ui
